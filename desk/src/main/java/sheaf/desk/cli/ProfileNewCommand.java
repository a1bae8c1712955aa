package sheaf.desk.cli;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import sheaf.desk.outcome.ExitStatus;
import sheaf.desk.profile.NewProfile;
import sheaf.desk.report.Text;

/** {@code sheaf profile new}: a profile to fill in. */
@Command(
    name = "new",
    header = "Write a shop profile to fill in, with every setting explained.",
    footer = {
      "",
      "Examples:",
      "  sheaf profile new",
      "      writes sheaf.toml into the folder where Sheaf keeps everything; what an",
      "      older sheaf.properties says there is carried over",
      "  sheaf profile new --force",
      "      in place of the one that is there, which is kept as sheaf.toml.old"
    })
final class ProfileNewCommand implements Callable<Integer> {

  private final Desk desk;
  private final Sheaf sheaf;

  @Option(names = "--force", description = "Even when there is a profile already.")
  private boolean force;

  ProfileNewCommand(Desk desk, Sheaf sheaf) {
    this.desk = desk;
    this.sheaf = sheaf;
  }

  @Override
  public Integer call() {
    NewProfile made = NewProfile.write(sheaf.home(), force);
    String sentence =
        "Shop profile written to %s.%s Open it in a text editor, then: %s"
            .formatted(
                made.file(),
                made.kept()
                    .map(kept -> " What was there before is kept as " + kept + ".")
                    .orElse(""),
                sheaf.commandWords("profile check"));
    Text.wrap(sentence, desk.console().columns()).forEach(desk.console()::say);
    return ExitStatus.OK.number();
  }
}
