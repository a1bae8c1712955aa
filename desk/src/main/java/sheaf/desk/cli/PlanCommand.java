package sheaf.desk.cli;

import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import sheaf.core.job.JobId;
import sheaf.core.tune.BowSetup;
import sheaf.core.tune.Plan;
import sheaf.desk.json.PlanJson;
import sheaf.desk.outcome.ExitStatus;
import sheaf.desk.report.PlanText;
import sheaf.desk.store.Store;
import sheaf.desk.store.StoredJob;
import sheaf.desk.work.NextMove;

/** {@code sheaf plan}: what to move next. */
@Command(
    name = "plan",
    header = "Say what to move next on a bow, and why.",
    footer = {
      "",
      "Examples:",
      "  sheaf plan 7G4KQ-2M8XE-0",
      "      the next move, from how this bow answered to the moves before",
      "  sheaf plan 7G4KQ-2M8XE-0 --cables split-yoke",
      "      with what else there is to move on such a bow",
      "  sheaf plan 7G4KQ-2M8XE-0 --json",
      "      the same for programs, as one JSON object",
      "",
      "Tick on each sheet what was changed before it, which way and by how much:",
      "that is what it learns from. Of a bow's first move it says what is common",
      "practice, unless the shop's earlier bows of the same hand and release taught",
      "more. The bow maker's instructions and limits come first."
    })
final class PlanCommand implements Callable<Integer> {

  private final Desk desk;
  private final Sheaf sheaf;

  @Parameters(
      paramLabel = "JOB",
      converter = JobWord.class,
      description = "The id printed on its papers.")
  private JobId job;

  @Option(
      names = "--cables",
      paramLabel = "split-yoke|shims|single-cam|hybrid",
      converter = Choices.OfCables.class,
      completionCandidates = Choices.OfCables.class,
      description = "How a compound's cams are held, which no card asks.")
  private BowSetup.Cables cables;

  @Option(names = "--json", description = "One JSON object for programs.")
  private boolean json;

  PlanCommand(Desk desk, Sheaf sheaf) {
    this.desk = desk;
    this.sheaf = sheaf;
  }

  @Override
  public Integer call() {
    Console console = desk.console();
    StoredJob stored = StoredJob.find(job, sheaf.store(), desk.clock());
    BowSetup setup = BowSetup.of(stored.record(), Optional.ofNullable(cables));
    Plan plan = plan(setup, stored);
    if (json) {
      console.json(PlanJson.line(job, plan));
    } else {
      console.out().print(PlanText.of(job, plan, setup.units(), console.columns()));
    }
    console.flush();
    return ExitStatus.OK.number();
  }

  private Plan plan(BowSetup setup, StoredJob stored) {
    try (Store store = StoreThatIsThere.open(sheaf.store(), desk.clock())) {
      return NextMove.of(job, setup, stored, store);
    }
  }
}
