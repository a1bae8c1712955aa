package sheaf.desk.cli;

import java.time.LocalDate;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import sheaf.core.job.JobId;
import sheaf.core.result.JobSummary;
import sheaf.desk.json.JobJson;
import sheaf.desk.outcome.ExitStatus;
import sheaf.desk.report.BenchCardText;
import sheaf.desk.report.JobReport;
import sheaf.desk.report.PageTable;
import sheaf.desk.report.RecordText;
import sheaf.desk.store.ImportedRecord;

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
      "      the same for programs, as one JSON object"
    })
final class ShowCommand implements Callable<Integer> {

  private final Desk desk;
  private final Sheaf sheaf;

  @Parameters(
      paramLabel = "JOB",
      converter = JobWord.class,
      description = "The id printed on its papers.")
  private JobId job;

  @Option(names = "--json", description = "One JSON object for programs.")
  private boolean json;

  ShowCommand(Desk desk, Sheaf sheaf) {
    this.desk = desk;
    this.sheaf = sheaf;
  }

  @Override
  public Integer call() {
    Console console = desk.console();
    StoredJob stored = StoredJob.find(job, sheaf.home(), desk.clock());
    if (json) {
      console.json(JobJson.line(stored.summary(), stored.record()));
    } else if (stored.importCounts()) {
      sayImported(stored.imported().orElseThrow(), console.columns());
    } else {
      sayPapers(stored.summary(), console.columns());
    }
    console.flush();
    return ExitStatus.OK.number();
  }

  private void sayPapers(JobSummary summary, int width) {
    String benchCard = BenchCardText.of(summary);
    Console console = desk.console();
    console.out().println(PageTable.of(summary.sheets(), width));
    console.out().print(benchCard.isEmpty() ? "" : benchCard + "\n");
    console.out().print(JobReport.of(summary, sheaf.homeWords(), width));
  }

  private void sayImported(ImportedRecord imported, int width) {
    LocalDate day = LocalDate.ofInstant(imported.at(), desk.clock().getZone());
    String origin = "From the card " + imported.file() + ", imported on " + day + ".";
    desk.console().out().print(RecordText.of(imported.record(), origin, width));
  }
}
