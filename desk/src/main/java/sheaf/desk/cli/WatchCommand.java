package sheaf.desk.cli;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import sheaf.core.reading.PageReading;
import sheaf.desk.intake.PageSource;
import sheaf.desk.store.Scans;
import sheaf.desk.store.StorePlace;
import sheaf.desk.watch.Readers;
import sheaf.desk.watch.ScanFolder;
import sheaf.desk.watch.Watch;
import sheaf.scanner.SheetReader.Proof;

/** {@code sheaf watch}: reads whatever a scanner drops into a folder. */
@Command(
    name = "watch",
    header = "Read whatever a scanner drops into a folder, for as long as it runs.",
    footer = {
      "",
      "Examples:",
      "  sheaf watch /srv/scans",
      "      reads what comes, prints a line a page, and moves each file to the folder",
      "      'done' or 'doubt' in it",
      "  sheaf watch /srv/scans --once",
      "      reads what is there, then ends; for a timer",
      "  sheaf watch --only-read --store jdbc:postgresql://server/sheaf",
      "      only helps to read what other desks took in",
      "",
      "A file is taken in when it is complete by its own structure and has stopped",
      "changing; one that is busy or unfinished is tried for as long as it is there.",
      "It stays a while after it was read, as a scanner may add a page to it; what was",
      "read before is not counted twice. It may be stopped at any moment."
    })
final class WatchCommand implements Callable<Integer> {

  /** How often the folders are looked through, in milliseconds. */
  private static final long PAUSE = 1_000;

  /** The same where nobody will add anything. */
  private static final long PAUSE_ONCE = 100;

  private static final int MOST_STILL = 3_600;

  private final Desk desk;
  private final Sheaf sheaf;

  @Spec private CommandSpec spec;

  @Parameters(
      arity = "0..*",
      paramLabel = "DIR",
      description = "Folders to look after. By default the one in the shop profile.")
  private List<Path> folders = new ArrayList<>();

  @Option(names = "--json", description = "One JSON object a line, one a page.")
  private boolean json;

  @Option(names = "--once", description = "End when nothing is left to read.")
  private boolean once;

  @Option(names = "--only-read", description = "Look after no folder; read what others took in.")
  private boolean onlyRead;

  @Option(
      names = "--still",
      paramLabel = "SECONDS",
      defaultValue = "20",
      description = "How long a file stays after it stopped changing. Default: 20.")
  private int still;

  @Option(
      names = "--readers",
      paramLabel = "N",
      description = "How many files are read at a time. Default: as many as processors.")
  private Integer readers;

  WatchCommand(Desk desk, Sheaf sheaf) {
    this.desk = desk;
    this.sheaf = sheaf;
  }

  @Override
  public Integer call() {
    check(still >= 0 && still <= MOST_STILL, "--still must be 0 to " + MOST_STILL + " seconds");
    int processors = Runtime.getRuntime().availableProcessors();
    int count = readers == null ? processors : readers;
    check(!onlyRead || folders.isEmpty(), "--only-read looks after no folder");
    check(count >= 1 && count <= 64, "--readers must be 1 to 64");
    WatchTelling telling = new WatchTelling(desk.console(), json);
    StorePlace place = sheaf.store();
    Duration stay = once ? Duration.ZERO : Duration.ofSeconds(still);
    if (folders.isEmpty() && !onlyRead) {
      folders = sheaf.profile().scans().stream().toList();
      check(!folders.isEmpty(), "Which folder? Name one, or set it in the shop profile");
    }
    List<ScanFolder> looked =
        folders.stream()
            .map(dir -> new ScanFolder(dir, stay, desk.clock(), telling, Version.number()))
            .toList();
    PageSource source = desk.reader().apply(sheaf.profile().sure());
    try (Readers reading =
            new Readers(count, place, desk.clock(), reader(source), Version.number(), telling);
        Watch watch = new Watch(place, desk.clock(), looked, reading, telling)) {
      if (!once) {
        telling.say(beginning());
      }
      while (watch.look() || !once) {
        pause();
      }
    }
    desk.console().flush();
    return telling.status().number();
  }

  private void check(boolean holds, String complaint) {
    if (!holds) {
      throw new ParameterException(spec.commandLine(), complaint);
    }
  }

  private String beginning() {
    return folders.isEmpty()
        ? "Reading what other desks take in. Ctrl-C ends it."
        : "Watching "
            + String.join(", ", folders.stream().map(Path::toString).toList())
            + ". Ctrl-C ends it.";
  }

  private static Scans.Reader reader(PageSource source) {
    return (name, content) -> {
      List<PageReading> pages = new ArrayList<>();
      source.read(name, content, Proof.SKIP, page -> pages.add(page.reading()));
      return pages;
    };
  }

  private void pause() {
    try {
      Thread.sleep(once ? PAUSE_ONCE : PAUSE);
    } catch (InterruptedException e) {
      once = true;
    }
  }
}
