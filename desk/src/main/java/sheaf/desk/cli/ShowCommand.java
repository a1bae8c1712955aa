package sheaf.desk.cli;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import sheaf.core.answer.History;
import sheaf.core.answer.ReadAt;
import sheaf.core.answer.Revision;
import sheaf.core.energy.BowNumbers;
import sheaf.core.flight.BowFlight;
import sheaf.core.job.JobId;
import sheaf.core.record.Drifted;
import sheaf.core.result.JobSummary;
import sheaf.desk.json.HistoryJson;
import sheaf.desk.json.JobJson;
import sheaf.desk.outcome.ExitStatus;
import sheaf.desk.profile.DriftMeasure;
import sheaf.desk.report.BenchCardText;
import sheaf.desk.report.HistoryText;
import sheaf.desk.report.JobCsv;
import sheaf.desk.report.JobReport;
import sheaf.desk.report.NumbersText;
import sheaf.desk.report.PageTable;
import sheaf.desk.report.PictureText;
import sheaf.desk.report.RecordText;
import sheaf.desk.store.ImportedRecord;
import sheaf.desk.store.KeptReading;
import sheaf.desk.store.Store;
import sheaf.desk.store.StoredJob;

/** {@code sheaf show}: all that a job's papers say. */
@Command(
    name = "show",
    header = "Show what a job's papers say.",
    footer = {
      "",
      "Examples:",
      "  sheaf show 7G4KQ-2M8XE-0",
      "      its sheets, the bench card, and what the sheets shot at came to",
      "  sheaf show 7g4kq2m8xe0 --json",
      "      the same for programs, as one JSON object; --csv for a spreadsheet",
      "  sheaf show 7G4KQ-2M8XE-0 --history",
      "      each value with what it was before, where it came from, when and by whom",
      "  sheaf show 7G4KQ-2M8XE-0 --since 2TR1Z-Q9KHC-A",
      "      what moved since the bow was last here, in the order to restore it",
      "  sheaf show 7G4KQ-2M8XE-0 --pulls 0,14,29,43,55,60,60,58,49,33,15",
      "      with the energy that the bow stores, from a pull every inch"
    })
final class ShowCommand implements Callable<Integer> {

  private final Desk desk;
  private final Sheaf sheaf;

  @Parameters(
      paramLabel = "JOB",
      converter = JobWord.class,
      description = "The id printed on its papers.")
  private JobId job;

  @ArgGroup private Form form = new Form();

  @Option(
      names = "--since",
      paramLabel = "JOB",
      converter = JobWord.class,
      description =
          "Tell what moved since this earlier job of the same bow. Default: the visit before, where"
              + " that is known.")
  private JobId since;

  @Option(
      names = "--history",
      description = "Tell how each value came to be instead; as JSON with --json.")
  private boolean history;

  @Mixin private ComputeOptions compute;

  /** For whom it is. */
  static final class Form {
    @Option(names = "--json", description = "One JSON object for programs.")
    private boolean json;

    @Option(names = "--csv", description = "A table for spreadsheets, a line for each value.")
    private boolean csv;
  }

  ShowCommand(Desk desk, Sheaf sheaf) {
    this.desk = desk;
    this.sheaf = sheaf;
  }

  @Override
  public Integer call() {
    Console console = desk.console();
    if (history) {
      sayHistory();
      console.flush();
      return ExitStatus.OK.number();
    }
    StoredJob stored = StoredJob.find(job, sheaf.store(), desk.clock());
    BowNumbers numbers = compute.numbers(stored);
    if (form.csv) {
      console.utf8(JobCsv.of(stored.record(), numbers));
    } else if (form.json) {
      console.json(
          JobJson.line(
              stored.summary(), stored.record(), numbers, flight(stored), drifted(stored)));
    } else {
      say(stored, numbers, console.columns());
    }
    console.flush();
    return ExitStatus.OK.number();
  }

  private void sayHistory() {
    Console console = desk.console();
    try (Store store = StoredJob.toAnswer(job, sheaf.store(), desk.clock())) {
      List<ReadAt> readings = store.everyReading(job).stream().map(KeptReading::read).toList();
      List<List<Revision>> told = History.of(readings, store.answers(job));
      if (form.json) {
        console.json(HistoryJson.line(job, told));
      } else {
        console.out().print(HistoryText.of(told, desk.clock().getZone(), console.columns()));
      }
    }
  }

  private void say(StoredJob stored, BowNumbers numbers, int width) {
    if (stored.importCounts()) {
      sayImported(stored.imported().orElseThrow(), width);
      sayNumbers(stored, numbers, width);
    } else {
      sayPapers(stored, numbers, width);
    }
  }

  private void sayPapers(StoredJob stored, BowNumbers numbers, int width) {
    JobSummary summary = stored.summary();
    String benchCard = BenchCardText.of(summary);
    Console console = desk.console();
    console.out().println(PageTable.of(summary.sheets(), width));
    console.out().print(benchCard.isEmpty() ? "" : benchCard + "\n");
    sayNumbers(stored, numbers, width);
    String pictures = PictureText.of(summary, sheaf.profile().tolerance(DriftMeasure.TEAR), width);
    console.out().print(pictures.isEmpty() ? "" : pictures + "\n");
    console.out().print(JobReport.of(summary, sheaf.homeWords(), width));
  }

  private void sayNumbers(StoredJob stored, BowNumbers numbers, int width) {
    Console console = desk.console();
    String text = NumbersText.of(numbers, width);
    console.out().print(text.isEmpty() ? "" : text + "\n");
    flight(stored)
        .map(flight -> NumbersText.of(flight, sheaf.profile().units(), width))
        .ifPresent(console.out()::println);
    drifted(stored)
        .map(drifted -> NumbersText.of(drifted, since().orElseThrow().spoken(), width))
        .ifPresent(console.out()::println);
  }

  private Optional<BowFlight> flight(StoredJob stored) {
    return compute.flight(stored.record(), sheaf.profile());
  }

  /** The visit before this one: the one that was named, or else the one that is known. */
  private Optional<JobId> since() {
    return Optional.ofNullable(since)
        .or(
            () ->
                Store.openExisting(sheaf.store(), desk.clock())
                    .flatMap(
                        existing -> {
                          try (Store store = existing) {
                            return store
                                .before(job)
                                .filter(earlier -> store.recordKey(earlier).isPresent());
                          }
                        }));
  }

  private Optional<List<Drifted>> drifted(StoredJob stored) {
    return since()
        .map(
            earlier ->
                Drifted.between(
                    StoredJob.find(earlier, sheaf.store(), desk.clock()).record().last(),
                    stored.record().last(),
                    sheaf.profile().driftTolerances()));
  }

  private void sayImported(ImportedRecord imported, int width) {
    LocalDate day = LocalDate.ofInstant(imported.at(), desk.clock().getZone());
    String origin = "From the card " + imported.file() + ", imported on " + day + ".";
    desk.console().out().print(RecordText.of(imported.record(), origin, width));
  }
}
