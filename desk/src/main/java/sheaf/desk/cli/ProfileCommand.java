package sheaf.desk.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import sheaf.desk.outcome.ExitStatus;
import sheaf.desk.profile.ProfileInForce;
import sheaf.desk.report.ProfileText;

/** {@code sheaf profile}: what a shop sets once. */
@Command(
    name = "profile",
    header = "Show the shop profile: name, logo, paper, units, tolerances and more.",
    commandListHeading = "%nCommands:%n",
    footer = {
      "",
      "Examples:",
      "  sheaf profile new",
      "      write sheaf.toml, in which every setting is explained, to be filled in",
      "  sheaf profile check",
      "      after a change: does all of it make sense?",
      "  sheaf profile",
      "      what holds now, and where the file lies"
    })
final class ProfileCommand implements Callable<Integer> {

  private final Desk desk;
  private final Sheaf sheaf;

  ProfileCommand(Desk desk, Sheaf sheaf) {
    this.desk = desk;
    this.sheaf = sheaf;
  }

  @Override
  public Integer call() {
    Console console = desk.console();
    ProfileInForce inForce = ProfileInForce.of(sheaf.home());
    String text = ProfileText.of(inForce, sheaf.commandWords("profile new"), console.columns());
    console.out().print(text);
    console.flush();
    return ExitStatus.OK.number();
  }
}
