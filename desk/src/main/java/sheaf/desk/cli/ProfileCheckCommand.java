package sheaf.desk.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import sheaf.desk.outcome.ExitStatus;
import sheaf.desk.profile.ProfileFile;
import sheaf.desk.profile.ProfileInForce;
import sheaf.desk.report.Text;

/** {@code sheaf profile check}: does a profile make sense? */
@Command(
    name = "check",
    header = "Say whether a shop profile makes sense: everything that is wrong, with its line.",
    footer = {
      "",
      "Examples:",
      "  sheaf profile check",
      "      the profile in the folder where Sheaf keeps everything",
      "  sheaf profile check draft.toml",
      "      another one, before it is put there",
      "",
      "Exit status: 0 all makes sense, 2 something does not."
    })
final class ProfileCheckCommand implements Callable<Integer> {

  private final Desk desk;
  private final Sheaf sheaf;

  @Parameters(paramLabel = "FILE", arity = "0..1", description = "By default the profile in force.")
  private Path file;

  ProfileCheckCommand(Desk desk, Sheaf sheaf) {
    this.desk = desk;
    this.sheaf = sheaf;
  }

  @Override
  public Integer call() {
    Text.wrap(sentence(), desk.console().columns()).forEach(desk.console()::say);
    return ExitStatus.OK.number();
  }

  private String sentence() {
    if (file != null) {
      ProfileFile.read(file);
      return file + " makes sense.";
    }
    ProfileInForce inForce = ProfileInForce.of(sheaf.home());
    return inForce.origin() == ProfileInForce.Origin.NOTHING
        ? "There is no "
            + inForce.file()
            + " yet, so usual values hold. To have one: "
            + sheaf.commandWords("profile new")
        : inForce.file() + " makes sense.";
  }
}
