package sheaf.desk.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import sheaf.core.job.JobId;
import sheaf.core.record.BowRecord;
import sheaf.desk.file.InputFile;
import sheaf.desk.json.RecordJson;
import sheaf.desk.outcome.ExitStatus;
import sheaf.desk.outcome.Trouble;
import sheaf.desk.report.Text;
import sheaf.desk.store.Archives;
import sheaf.desk.store.Store;
import sheaf.desk.store.StoredJob;
import sheaf.forms.CarriedRecord;
import sheaf.forms.FinishedCard;

/** {@code sheaf import}: restores a record from a finished card alone. */
@Command(
    name = "import",
    header = "Restore a job's record from its finished card, or take in another store.",
    footer = {
      "",
      "Examples:",
      "  sheaf import card.pdf",
      "      from the PDF that 'sheaf card' wrote; a scan of it does not do",
      "  sheaf import card.pdf --replace",
      "      even where something else is known of the job: the card counts then,",
      "      and what was known is kept",
      "  sheaf import all.zip",
      "      what 'sheaf export' or 'sheaf backup' wrote: adds what is not known here",
      "",
      "A card whose record was damaged or changed since is refused. That is found",
      "by a digest beside it, which tells damage, not forgery: it is no signature."
    })
final class ImportCommand implements Callable<Integer> {

  private final Desk desk;
  private final Sheaf sheaf;

  @Parameters(paramLabel = "FILE", description = "A finished card as a PDF, or an export.")
  private Path file;

  @Option(
      names = "--replace",
      description = "Let the card count where something else is known of its job.")
  private boolean replace;

  ImportCommand(Desk desk, Sheaf sheaf) {
    this.desk = desk;
    this.sheaf = sheaf;
  }

  @Override
  public Integer call() {
    return Archives.isOne(file) ? takeIn() : restoreRecord();
  }

  /** What another store exported, or a backup. */
  private int takeIn() {
    try (Store store = Store.open(sheaf.store(), desk.clock())) {
      int rows = store.archives().takeIn(file);
      say(
          rows == 0
              ? "All that is in " + file + " is known here: nothing was changed."
              : Text.count(rows, "line")
                  + " of "
                  + file
                  + " taken in. What was known is as it was.");
    }
    return ExitStatus.OK.number();
  }

  private int restoreRecord() {
    byte[] content = InputFile.content(file);
    BowRecord record = record(content);
    JobId job = record.last().job();
    try (Store store = Store.open(sheaf.store(), desk.clock())) {
      Optional<StoredJob> known = store.job(job);
      if (known.filter(stored -> stored.record().equals(record)).isPresent()) {
        say("Job " + job + " is known here exactly as the card says: nothing was changed.");
        return ExitStatus.OK.number();
      }
      if (known.isPresent() && !replace) {
        throw different(job);
      }
      String name = file.getFileName().toString();
      store.importCard(name, content, record, Version.number());
    }
    String show = (" See it: sheaf show " + job + " " + sheaf.homeWords()).stripTrailing();
    say("Record of job " + job + " restored from " + file + "." + show);
    return ExitStatus.OK.number();
  }

  private BowRecord record(byte[] content) {
    CarriedRecord carried = FinishedCard.carried(content);
    if (carried instanceof CarriedRecord.None none) {
      throw Trouble.refused(file + " " + none.why());
    }
    String json = new String(((CarriedRecord.Whole) carried).json(), UTF_8);
    try {
      return RecordJson.parse(json);
    } catch (IllegalArgumentException e) {
      throw Trouble.refused(
          file
              + " carries a record that this Sheaf cannot read ("
              + e.getMessage()
              + "): try a newer one.");
    }
  }

  private static Trouble different(JobId job) {
    return Trouble.refused(
        "Job "
            + job
            + " is known here, and differently: nothing was changed. Compare 'sheaf show "
            + job
            + "' with the card; --replace lets the card count and keeps what is known.");
  }

  private void say(String text) {
    Text.wrap(text, desk.console().columns()).forEach(desk.console()::say);
  }
}
