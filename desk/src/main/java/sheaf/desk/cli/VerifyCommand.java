package sheaf.desk.cli;

import java.io.IOException;
import java.util.Locale;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import sheaf.desk.outcome.ExitStatus;
import sheaf.desk.outcome.Trouble;
import sheaf.desk.report.Text;
import sheaf.desk.store.Store;
import sheaf.desk.store.Verification;

/** {@code sheaf verify}: look whether everything that is kept is sound. */
@Command(
    name = "verify",
    header = "Look whether everything that is kept is sound.",
    footer = {
      "",
      "Examples:",
      "  sheaf verify",
      "      the database, every reading and record, and each scan against its digest",
      "",
      "Exit status: 0 all is sound, 1 something is damaged or gone."
    })
final class VerifyCommand implements Callable<Integer> {

  private final Desk desk;
  private final Sheaf sheaf;

  VerifyCommand(Desk desk, Sheaf sheaf) {
    this.desk = desk;
    this.sheaf = sheaf;
  }

  @Override
  public Integer call() {
    Console console = desk.console();
    try (Store store = StoreThatIsThere.open(sheaf.store(), desk.clock())) {
      Counted progress = new Counted(console);
      Verification found =
          store.archives().verify(bytes -> progress.show(megabytes(bytes) + " looked at"));
      progress.clear();
      found.faults().forEach(fault -> console.say("sheaf: " + fault));
      console
          .out()
          .println(
              "%s (%s) and %s looked at: %s"
                  .formatted(
                      Text.count(found.files(), "scan"),
                      megabytes(found.bytes()),
                      Text.count(found.readings(), "reading"),
                      found.isSound() ? "all is sound." : remedy(found)));
      console.flush();
      return (found.isSound() ? ExitStatus.OK : ExitStatus.ENVIRONMENT).number();
    } catch (IOException e) {
      throw Trouble.cannotRead("The store", e);
    }
  }

  private static String remedy(Verification found) {
    return Text.count(found.faults().size(), "fault")
        + ". 'sheaf import' of a backup brings back scans that are gone; 'sheaf restore' with"
        + " --replace puts a whole backup in place.";
  }

  private static String megabytes(long bytes) {
    return String.format(Locale.ROOT, "%,.1f MB", bytes / 1e6);
  }
}
