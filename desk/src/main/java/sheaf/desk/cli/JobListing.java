package sheaf.desk.cli;

import java.util.List;
import picocli.CommandLine.Option;
import sheaf.core.result.Overview;
import sheaf.desk.json.OverviewJson;
import sheaf.desk.report.JobTable;

/** Options of commands that list jobs, and how they tell of them. */
final class JobListing {

  @Option(
      names = "--most",
      paramLabel = "N",
      defaultValue = "50",
      description = "No more than so many. Default: 50.")
  private int most;

  @Option(names = "--json", description = "One JSON object a line, one a job.")
  private boolean json;

  /** How many at most. */
  int most() {
    return Math.max(1, most);
  }

  /**
   * Writes them.
   *
   * @param none what to say when there is none
   * @param more what to say when there may be more than these; empty for nothing
   */
  void write(Console console, List<Overview> jobs, String none, String more) {
    if (json) {
      jobs.forEach(job -> console.json(OverviewJson.line(job)));
    } else if (jobs.isEmpty()) {
      console.say(none);
    } else {
      console.out().print(JobTable.of(jobs));
    }
    if (!more.isEmpty()) {
      console.say(more);
    }
    console.flush();
  }
}
