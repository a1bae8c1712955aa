package sheaf.desk.demo;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntConsumer;
import sheaf.core.job.JobId;
import sheaf.core.job.SheetCode;
import sheaf.core.layout.UnitSystem;
import sheaf.core.page.Paper;
import sheaf.core.reading.PageReading;
import sheaf.core.record.BowRecord;
import sheaf.core.record.RecordOfSheets;
import sheaf.core.result.JobSummary;
import sheaf.desk.file.OutputFile;
import sheaf.desk.intake.Intake;
import sheaf.desk.intake.PageSource;
import sheaf.desk.intake.ProofFolder;
import sheaf.desk.json.RecordJson;
import sheaf.desk.store.Store;
import sheaf.forms.BlankSheets;
import sheaf.forms.CardDetails;
import sheaf.forms.CardForm;
import sheaf.forms.CardPaper;
import sheaf.forms.FinishedCard;
import sheaf.forms.Pack;
import sheaf.forms.Shop;
import sheaf.samples.CommittedSamples;
import sheaf.samples.CommittedSamples.CommittedSample;

/**
 * Prints papers, reads the sample scans that come with Sheaf, and prints a finished card.
 *
 * @param source reads the scans
 * @param version of what reads them
 * @param folder where everything goes
 * @param clock the time, and the date on the card
 */
public record Demo(PageSource source, String version, DemoFolder folder, Clock clock) {

  private static final String SHOP = "The bow bench";

  /**
   * What came of it.
   *
   * @param tried every sample, in order
   * @param job the one whose card was printed; empty when no job was shot with both heads
   */
  public record Result(List<Tried> tried, Optional<JobSummary> job) {

    /** Whether every sample ended as it should. */
    public boolean asExpected() {
      return tried.stream().allMatch(Tried::asExpected);
    }
  }

  /** How many samples will be read. */
  public static int samples() {
    return CommittedSamples.all().size();
  }

  /**
   * Runs it.
   *
   * @param progress is told after each sample how many are done
   */
  public Result run(IntConsumer progress) {
    printPack();
    try (Store store = Store.open(folder.home(), clock)) {
      List<Tried> tried = readSamples(store, progress);
      Optional<JobSummary> job = shown(store, tried);
      job.ifPresent(this::printCard);
      return new Result(tried, job);
    }
  }

  private void printPack() {
    JobId job = JobId.random(new SecureRandom());
    OutputFile.folder(folder.path());
    OutputFile.write(
        folder.pack(),
        out -> BlankSheets.write(Pack.sheets(job, Paper.LETTER, UnitSystem.INCHES), out));
  }

  private List<Tried> readSamples(Store store, IntConsumer progress) {
    ProofFolder proofs = new ProofFolder(folder.proofs());
    Intake intake = new Intake(source, version, store, Optional.of(proofs));
    OutputFile.folder(folder.scans());
    List<Tried> tried = new ArrayList<>();
    for (CommittedSample sample : CommittedSamples.all()) {
      Path scan = folder.scans().resolve(sample.name());
      OutputFile.write(scan, out -> out.write(sample.file()));
      intake.take(
          scan, sample.file(), page -> tried.add(new Tried(sample.name(), sample.truth(), page)));
      progress.accept(tried.size());
    }
    return tried;
  }

  /** Of the jobs that were shot with both heads, the one of which most sheets were read. */
  private static Optional<JobSummary> shown(Store store, List<Tried> tried) {
    Set<JobId> jobs = new LinkedHashSet<>();
    tried.stream()
        .map(Tried::reading)
        .map(PageReading::sheet)
        .flatMap(Optional::stream)
        .map(SheetCode::job)
        .forEach(jobs::add);
    return jobs.stream()
        .map(job -> JobSummary.of(job, store.readings(job)))
        .filter(job -> job.asLeft().isPresent())
        .max(Comparator.comparingInt(job -> job.sheets().size()));
  }

  private void printCard(JobSummary job) {
    LocalDate today = LocalDate.now(clock);
    CardDetails details =
        new CardDetails(
            CardForm.CARD, CardPaper.HALF_LETTER, today, Shop.named(SHOP), Optional.empty());
    BowRecord record = RecordOfSheets.of(job, Optional.of(today));
    byte[] json = RecordJson.line(record).getBytes(StandardCharsets.UTF_8);
    OutputFile.write(folder.card(), out -> FinishedCard.write(record, details, json, out));
  }
}
