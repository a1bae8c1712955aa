package sheaf.desk.cli;

import java.util.List;
import sheaf.core.result.Overview;
import sheaf.desk.json.OverviewJson;
import sheaf.desk.report.JobTable;

/** Tells of jobs, to people or programs. */
final class JobListing {

  private JobListing() {}

  /**
   * Writes them.
   *
   * @param none what to say when there is none
   * @param more what to say when there may be more than these; empty for nothing
   */
  static void write(Console console, List<Overview> jobs, boolean json, String none, String more) {
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
