package sheaf.core.result;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
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
 * @param sheets the last reading of each sheet, by sheet number
 */
public record JobSummary(JobId job, List<PageReading> sheets) {

  private static final String INSPECTION = "inspect_";

  /** Copies the list. */
  public JobSummary {
    sheets = List.copyOf(sheets);
  }

  /**
   * Sums up readings in the order they were made: of one sheet the last counts; refused pages and
   * pages of other jobs are left out.
   */
  public static JobSummary of(JobId job, Collection<PageReading> readings) {
    Map<Integer, PageReading> last = new TreeMap<>();
    for (PageReading reading : readings) {
      Optional<SheetCode> sheet = reading.sheet().filter(code -> code.job().equals(job));
      if (sheet.isPresent() && reading.state() != ReadingState.REFUSED) {
        last.put(sheet.get().number(), reading);
      }
    }
    return new JobSummary(job, List.copyOf(last.values()));
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
    return sheets.stream()
        .filter(JobSummary::isCard)
        .flatMap(page -> page.field(key).stream())
        .filter(field -> field.state() != FieldReading.State.BLANK)
        .reduce((earlier, later) -> later);
  }

  /**
   * The parts that the inspection did not clearly find sound although their row was marked: {@code
   * limbs}. Anything here means: do not shoot.
   */
  public List<String> notSound() {
    return sheets.stream()
        .filter(JobSummary::isCard)
        .flatMap(page -> page.fields().stream())
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

  private static boolean isCard(PageReading page) {
    return page.sheet().filter(sheet -> sheet.layout().kind().isCard()).isPresent();
  }

  private static boolean is(PageReading page, SheetKind kind) {
    return page.sheet().map(code -> code.layout().kind() == kind).orElse(false);
  }
}
