package sheaf.desk.cli;

import java.util.concurrent.Callable;
import picocli.AutoComplete;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import sheaf.desk.outcome.ExitStatus;

/** {@code sheaf completion}: lets the tab key finish words in bash and zsh. */
@Command(
    name = "completion",
    header = "Print a script that lets the tab key finish words, for bash and zsh.",
    footer = {
      "",
      "Examples:",
      "  source <(sheaf completion)",
      "      for this terminal; put the line into ~/.bashrc or ~/.zshrc for all"
    })
final class CompletionCommand implements Callable<Integer> {

  private final Desk desk;

  @Spec private CommandSpec spec;

  CompletionCommand(Desk desk) {
    this.desk = desk;
  }

  @Override
  public Integer call() {
    desk.console().out().println(AutoComplete.bash("sheaf", spec.root().commandLine()));
    desk.console().flush();
    return ExitStatus.OK.number();
  }
}
