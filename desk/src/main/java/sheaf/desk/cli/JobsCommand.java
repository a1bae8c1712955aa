package sheaf.desk.cli;

import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import sheaf.core.result.Overview;
import sheaf.desk.outcome.ExitStatus;
import sheaf.desk.report.Text;
import sheaf.desk.store.Store;

/** {@code sheaf jobs}: list the jobs, and what is to be done next for each. */
@Command(
    name = "jobs",
    header = "List the jobs, and what is to be done next for each.",
    footer = {
      "",
      "Examples:",
      "  sheaf jobs --open",
      "      what is left to do: sheets to look at, sheets missing, cards to print",
      "  sheaf jobs --most 5",
      "      the five that changed last",
      "",
      "A job is done when its finished card was made after its last sheet was read."
    })
final class JobsCommand implements Callable<Integer> {

  private final Desk desk;
  private final Sheaf sheaf;

  @Option(names = "--open", description = "Leave out those that are done.")
  private boolean open;

  @Mixin private JobListing listing;

  JobsCommand(Desk desk, Sheaf sheaf) {
    this.desk = desk;
    this.sheaf = sheaf;
  }

  @Override
  public Integer call() {
    try (Store store = StoreThatIsThere.open(sheaf.store(), desk.clock())) {
      List<Overview> jobs = store.find(List.of(), open, listing.most());
      String none = open ? "Nothing is left to do." : "There are no jobs yet.";
      String more = jobs.size() < listing.most() ? "" : "There may be more: --most shows them.";
      listing.write(desk.console(), jobs, none, more);
      int waiting = store.scans().waiting();
      if (waiting > 0) {
        desk.console()
            .say(Text.count(waiting, "scan") + " taken in and not read yet: sheaf watch.");
      }
    }
    return ExitStatus.OK.number();
  }
}
