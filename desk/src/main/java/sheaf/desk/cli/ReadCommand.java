package sheaf.desk.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import sheaf.desk.cli.ReadingRun.Telling;
import sheaf.desk.intake.Intake;
import sheaf.desk.intake.ProofFolder;
import sheaf.desk.store.Store;

/** {@code sheaf read}: scanned sheets in, readings and results out. */
@Command(
    name = "read",
    header = "Read scanned or photographed sheets, file them, and say what they came to.",
    footer = {
      "",
      "Examples:",
      "  sheaf read stack.pdf",
      "      every page of a scan from the sheet feeder",
      "  sheaf read IMG_2041.jpg IMG_2042.jpg --proof look",
      "      two photos, with a picture in the folder 'look' of what was found on each",
      "  sheaf read *.jpg --json > readings.jsonl",
      "      for programs: one JSON object a line, one a page",
      "",
      "The files are kept, byte for byte, with what was read. Reading a file again",
      "changes nothing; of two scans of one sheet, the later one counts.",
      "",
      "Exit status: 0 every page was read, 3 some need a person's look,",
      "             4 some were refused, 2 a file is not there or cannot be taken,",
      "             1 the machine would not do it."
    })
final class ReadCommand implements Callable<Integer> {

  private final Desk desk;
  private final Sheaf sheaf;

  @Parameters(arity = "1..*", paramLabel = "FILE", description = "JPEG, PNG, TIFF or PDF.")
  private List<Path> files;

  @Option(names = "--json", description = "One JSON object a line, one a page.")
  private boolean json;

  @Option(
      names = "--proof",
      paramLabel = "DIR",
      description = "Write a picture of each sheet with what was found on it.")
  private Path proof;

  ReadCommand(Desk desk, Sheaf sheaf) {
    this.desk = desk;
    this.sheaf = sheaf;
  }

  @Override
  public Integer call() {
    Optional<ProofFolder> proofs = Optional.ofNullable(proof).map(ProofFolder::new);
    try (Store store = Store.open(sheaf.store(), desk.clock())) {
      Intake intake =
          new Intake(desk.reader().apply(sheaf.profile().sure()), Version.number(), store, proofs);
      Telling telling = json ? Telling.FOR_PROGRAMS : Telling.FOR_PEOPLE;
      return new ReadingRun(desk, intake, telling, files).run(sheaf.homeWords()).number();
    }
  }
}
