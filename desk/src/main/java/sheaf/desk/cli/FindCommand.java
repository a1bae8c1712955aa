package sheaf.desk.cli;

import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Parameters;
import sheaf.core.result.Overview;
import sheaf.desk.outcome.ExitStatus;
import sheaf.desk.store.Store;

/** {@code sheaf find}: find jobs by what is known of them. */
@Command(
    name = "find",
    header = "Find jobs by what is known of them.",
    footer = {
      "",
      "Examples:",
      "  sheaf find 7G4KQ",
      "      part of a job id",
      "  sheaf find 2026-09 crossbow",
      "      a day or month, and a word for the bow: both must be found",
      "  sheaf find AB doubts",
      "      initials or reference of a customer, and what is to be done: 'doubts' to",
      "      look at, 'sheets' that are missing, a 'card' to print; or 'done'",
      "",
      "Those that changed last come first."
    })
final class FindCommand implements Callable<Integer> {

  private final Desk desk;
  private final Sheaf sheaf;

  @Parameters(
      arity = "1..*",
      paramLabel = "TEXT",
      description = "All must be found, in any letters.")
  private List<String> words;

  @Mixin private JobListing listing;

  FindCommand(Desk desk, Sheaf sheaf) {
    this.desk = desk;
    this.sheaf = sheaf;
  }

  @Override
  public Integer call() {
    try (Store store = StoreThatIsThere.open(sheaf.store(), desk.clock())) {
      List<Overview> jobs = store.find(words, false, listing.most());
      String none = "No job has all of: " + String.join(", ", words) + ".";
      String more =
          jobs.size() < listing.most()
              ? ""
              : "There may be more: add a word, or --most with a number.";
      listing.write(desk.console(), jobs, none, more);
    }
    return ExitStatus.OK.number();
  }
}
