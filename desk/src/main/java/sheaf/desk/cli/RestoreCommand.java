package sheaf.desk.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import sheaf.desk.outcome.ExitStatus;
import sheaf.desk.report.Text;
import sheaf.desk.store.Restoring;
import sheaf.desk.store.StorePlace;

/** {@code sheaf restore}: make the store anew from a backup. */
@Command(
    name = "restore",
    header = "Make the store anew from a backup.",
    footer = {
      "",
      "Examples:",
      "  sheaf restore sheaf-today.zip",
      "      on a computer where there is none yet",
      "  sheaf restore sheaf-today.zip --replace",
      "      in place of one that is damaged; it is put aside, not deleted",
      "  sheaf restore sheaf-today.zip --store jdbc:postgresql://server/sheaf",
      "      into a new, empty database",
      "",
      "Stop 'sheaf watch' first. Every scan is held against its digest."
    })
final class RestoreCommand implements Callable<Integer> {

  private final Desk desk;
  private final Sheaf sheaf;

  @Parameters(paramLabel = "FILE", description = "What 'sheaf backup' wrote.")
  private Path file;

  @Option(names = "--replace", description = "Put a store that is there aside first.")
  private boolean replace;

  RestoreCommand(Desk desk, Sheaf sheaf) {
    this.desk = desk;
    this.sheaf = sheaf;
  }

  @Override
  public Integer call() {
    StorePlace place = sheaf.store();
    Restoring done = Restoring.from(place, file, replace, desk.clock());
    String aside =
        done.aside().map(path -> " What was there before is " + path + " now.").orElse("");
    Text.wrap(
            "Restored from %s and looked through: all is sound.%s".formatted(file, aside),
            desk.console().columns())
        .forEach(desk.console()::say);
    return ExitStatus.OK.number();
  }
}
