package sheaf.core.result;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import sheaf.core.answer.Answers;
import sheaf.core.answer.Rescan;
import sheaf.core.job.JobId;
import sheaf.core.job.SheetCode;
import sheaf.core.layout.SheetKind;
import sheaf.core.reading.FieldReading;
import sheaf.core.reading.PageReading;
import sheaf.core.reading.ReadingState;

/**
 * All that a job's papers say so far.
 *
 * @param job the job
 * @param sheets what each sheet says, with what people said of it, by sheet number
 * @param beside what people said of fields of a card that was not read
 */
public record JobSummary(JobId job, List<PageReading> sheets, List<FieldReading> beside) {

  private static final String INSPECTION = "inspect_";

  /** Copies the lists. */
  public JobSummary {
    sheets = List.copyOf(sheets);
    beside = List.copyOf(beside);
  }

  /** Sums up readings that nobody said anything of. */
  public static JobSummary of(JobId job, Collection<PageReading> readings) {
    return of(job, readings, Answers.NONE);
  }

  /**
   * Sums up readings in the order they were made: of one sheet the last counts, as {@link Rescan}
   * and {@link Answers} say; refused pages and pages of other jobs are left out.
   *
   * @param answers what people said of this job
   */
  public static JobSummary of(JobId job, Collection<PageReading> readings, Answers answers) {
    Map<Integer, List<PageReading>> bySheet = new TreeMap<>();
    for (PageReading reading : readings) {
      Optional<SheetCode> sheet = reading.sheet().filter(code -> code.job().equals(job));
      if (sheet.isPresent() && reading.state() != ReadingState.REFUSED) {
        bySheet.computeIfAbsent(sheet.get().number(), any -> new ArrayList<>()).add(reading);
      }
    }
    List<PageReading> sheets =
        bySheet.values().stream().map(Rescan::of).map(answers::over).toList();
    return new JobSummary(job, sheets, answers.beside(sheets));
  }

  /** The results of the pair sheets, in the order of their numbers. */
  public List<PairResult> pairs() {
    return sheets.stream().filter(page -> is(page, SheetKind.PAIR)).map(PairResult::of).toList();
  }

  /** The results of the line sheets, in the order of their numbers. */
  public List<LineResult> lines() {
    return sheets.stream().filter(page -> is(page, SheetKind.LINE)).map(LineResult::of).toList();
  }

  /** The results of the group sheets and sight-in sheets, in the order of their numbers. */
  public List<GroupResult> groups() {
    return sheets.stream()
        .filter(page -> is(page, SheetKind.GROUP) || is(page, SheetKind.SIGHT_IN))
        .map(GroupResult::of)
        .toList();
  }

  /** The last pair sheet on which both heads were shot: how the bow was left. */
  public Optional<PairResult> asLeft() {
    return pairs().stream()
        .filter(pair -> pair.offset().isPresent())
        .max(Comparator.comparingInt(pair -> pair.sheet().number()));
  }

  /**
   * A field of the bench card or return card; empty when there is no card or the field was left
   * blank.
   */
  public Optional<FieldReading> benchCard(String key) {
    return cardFields()
        .filter(field -> field.key().equals(key))
        .filter(field -> field.state() != FieldReading.State.BLANK)
        .reduce((earlier, later) -> later);
  }

  /**
   * The parts that the inspection did not clearly find sound although their row was marked: {@code
   * limbs}. Anything here means: do not shoot.
   */
  public List<String> notSound() {
    return cardFields()
        .filter(field -> field.key().startsWith(INSPECTION))
        .filter(field -> field.state() != FieldReading.State.BLANK && !field.says("sound"))
        .map(field -> field.key().substring(INSPECTION.length()).toLowerCase(Locale.ROOT))
        .distinct()
        .toList();
  }

  /** Whether any sheet still has doubts that a person must settle. */
  public boolean hasDoubts() {
    return sheets.stream().anyMatch(page -> page.state() == ReadingState.CHECK);
  }

  /** All fields of the cards, and what was said beside them. */
  public Stream<FieldReading> cardFields() {
    return Stream.concat(
        sheets.stream().filter(JobSummary::isCard).flatMap(page -> page.fields().stream()),
        beside.stream());
  }

  private static boolean isCard(PageReading page) {
    return page.sheet().filter(sheet -> sheet.layout().kind().isCard()).isPresent();
  }

  private static boolean is(PageReading page, SheetKind kind) {
    return page.sheet().map(code -> code.layout().kind() == kind).orElse(false);
  }
}
