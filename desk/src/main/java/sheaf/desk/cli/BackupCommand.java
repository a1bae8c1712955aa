package sheaf.desk.cli;

import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import sheaf.desk.file.OutputFile;
import sheaf.desk.outcome.ExitStatus;
import sheaf.desk.report.Text;
import sheaf.desk.store.Store;

/** {@code sheaf backup}: copy everything into one file, while others go on working. */
@Command(
    name = "backup",
    header = "Copy everything into one file, while others go on working.",
    footer = {
      "",
      "Examples:",
      "  sheaf backup /media/stick/sheaf-today.zip",
      "      all scans, readings, records and the shop profile, as they are right now",
      "",
      "It holds the keys of customers' records: keep it as safe as the store itself.",
      "'sheaf restore' makes a store of it, here or on another computer, in a file or in",
      "a PostgreSQL database."
    })
final class BackupCommand implements Callable<Integer> {

  private final Desk desk;
  private final Sheaf sheaf;

  @Parameters(paramLabel = "FILE", description = "The file to write, such as backup.zip.")
  private Path file;

  BackupCommand(Desk desk, Sheaf sheaf) {
    this.desk = desk;
    this.sheaf = sheaf;
  }

  @Override
  public Integer call() {
    try (Store store = StoreThatIsThere.open(sheaf.store(), desk.clock())) {
      Counted progress = new Counted(desk.console());
      int[] files = new int[1];
      OutputFile.write(
          file,
          out ->
              files[0] =
                  store
                      .archives()
                      .write(out, count -> progress.show(Text.count(count, "scan") + " copied")));
      progress.clear();
      store.archives().backedUp();
      Text.wrap(
              "Everything, with %s, copied to %s.".formatted(Text.count(files[0], "scan"), file),
              desk.console().columns())
          .forEach(desk.console()::say);
    }
    return ExitStatus.OK.number();
  }
}
