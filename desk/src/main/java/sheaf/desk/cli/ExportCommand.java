package sheaf.desk.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import sheaf.core.energy.BowNumbers;
import sheaf.core.job.JobId;
import sheaf.desk.file.OutputFile;
import sheaf.desk.outcome.ExitStatus;
import sheaf.desk.report.JobCsv;
import sheaf.desk.report.Text;
import sheaf.desk.store.Store;
import sheaf.desk.store.StoredJob;

/** {@code sheaf export}: write everything for other programs, or for another store. */
@Command(
    name = "export",
    header = "Write everything for other programs, or for another store.",
    footer = {
      "",
      "Examples:",
      "  sheaf export all.zip",
      "      JSON lines and scans; 'sheaf import' takes it into any store",
      "  sheaf export all.jsonl",
      "      the lines without the scans",
      "  sheaf export all.csv",
      "      a table for spreadsheets, a line for each value of each job",
      "",
      "The lines are described in the README. They hold the keys of customers' records:",
      "keep them as safe as the store itself."
    })
final class ExportCommand implements Callable<Integer> {

  private final Desk desk;
  private final Sheaf sheaf;

  @Parameters(paramLabel = "FILE", description = "What to write: .zip, .jsonl or .csv.")
  private Path file;

  @Spec private CommandSpec spec;

  ExportCommand(Desk desk, Sheaf sheaf) {
    this.desk = desk;
    this.sheaf = sheaf;
  }

  @Override
  public Integer call() {
    String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
    Content content = content(name.substring(name.lastIndexOf('.') + 1));
    try (Store store = StoreThatIsThere.open(sheaf.store(), desk.clock())) {
      OutputFile.write(file, out -> content.write(store, out));
    }
    Text.wrap("Everything written to " + file + ".", desk.console().columns())
        .forEach(desk.console()::say);
    return ExitStatus.OK.number();
  }

  /** What to write. */
  @FunctionalInterface
  private interface Content {
    void write(Store store, OutputStream out) throws IOException;
  }

  private Content content(String end) {
    return switch (end) {
      case "zip" -> (store, out) -> store.archives().write(out, files -> {});
      case "jsonl" -> (store, out) -> store.archives().writeLines(out);
      case "csv" -> ExportCommand::table;
      default ->
          throw new ParameterException(
              spec.commandLine(), "The file's name must end in .zip, .jsonl or .csv, not " + file);
    };
  }

  private static void table(Store store, OutputStream out) throws IOException {
    boolean first = true;
    for (JobId job : store.jobs(Integer.MAX_VALUE)) {
      Optional<StoredJob> stored = store.job(job);
      if (stored.isPresent()) {
        BowNumbers numbers = BowNumbers.of(stored.get().record(), Optional.empty());
        String text = JobCsv.of(stored.get().record(), numbers);
        String lines = first ? text : text.substring(text.indexOf('\n') + 1);
        out.write(lines.getBytes(StandardCharsets.UTF_8));
        first = false;
      }
    }
  }
}
