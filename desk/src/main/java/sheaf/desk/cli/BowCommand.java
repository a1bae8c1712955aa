package sheaf.desk.cli;

import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import sheaf.core.job.JobId;
import sheaf.desk.outcome.ExitStatus;
import sheaf.desk.outcome.Trouble;
import sheaf.desk.report.BowText;
import sheaf.desk.store.BowVisits;
import sheaf.desk.store.Store;
import sheaf.desk.store.StoredJob;

/** {@code sheaf bow}: show a bow over its visits, and what moved in between. */
@Command(
    name = "bow",
    header = "Show a bow over its visits, and what moved in between.",
    footer = {
      "",
      "Examples:",
      "  sheaf bow 7G4KQ-2M8XE-0",
      "      all visits of the bow that this job belongs to",
      "  sheaf bow 7G4KQ-2M8XE-0 --after 2TR1Z-Q9KHC-A",
      "      tells that this visit came after that one of the same bow",
      "",
      "Visits belong together by themselves when a return card was printed from the",
      "earlier job, or when one record holds them."
    })
final class BowCommand implements Callable<Integer> {

  private final Desk desk;
  private final Sheaf sheaf;

  @Parameters(paramLabel = "JOB", converter = JobWord.class, description = "Any visit's job id.")
  private JobId job;

  @Option(
      names = "--after",
      paramLabel = "JOB",
      converter = JobWord.class,
      description = "First note that the bow was here before, with this job.")
  private JobId after;

  BowCommand(Desk desk, Sheaf sheaf) {
    this.desk = desk;
    this.sheaf = sheaf;
  }

  @Override
  public Integer call() {
    Console console = desk.console();
    StoredJob known = StoredJob.find(job, sheaf.store(), desk.clock());
    try (Store store = StoreThatIsThere.open(sheaf.store(), desk.clock())) {
      if (after != null) {
        link(store);
      }
      BowVisits bow = BowVisits.of(job, store, known);
      console.out().print(BowText.of(bow, sheaf.profile().driftTolerances(), console.columns()));
    }
    console.flush();
    return ExitStatus.OK.number();
  }

  private void link(Store store) {
    if (after.equals(job)) {
      throw Trouble.misuse("A visit cannot come after itself: --after takes another job.");
    }
    if (store.recordKey(after).isEmpty()) {
      throw Trouble.misuse("Job " + after + " is not known, so nothing was noted.");
    }
    if (!store.before(job).equals(Optional.of(after))) {
      store.visits(job, Optional.of(after), Version.number());
    }
  }
}
