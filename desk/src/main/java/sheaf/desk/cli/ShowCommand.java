package sheaf.desk.cli;

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

/** {@code sheaf show}: all that a job's papers say. */
@Command(
    name = "show",
    header = "Show what a job's papers say.",
    footer = {
      "",
      "Examples:",
      "  sheaf show 7G4KQ-2M8XE-0",
      "      its sheets, the bench card, and what the pair sheets came to",
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
    JobSummary summary = StoredJob.find(job, sheaf.home(), desk.clock()).summary();
    if (json) {
      console.json(JobJson.line(summary));
    } else {
      int width = console.columns();
      String benchCard = BenchCardText.of(summary);
      console.out().println(PageTable.of(summary.sheets(), width));
      console.out().print(benchCard.isEmpty() ? "" : benchCard + "\n");
      console.out().print(JobReport.of(summary, sheaf.homeWords(), width));
    }
    console.flush();
    return ExitStatus.OK.number();
  }
}
