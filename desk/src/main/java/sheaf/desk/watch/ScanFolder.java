package sheaf.desk.watch;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import sheaf.desk.file.InputFile;
import sheaf.desk.file.OutputFile;
import sheaf.desk.outcome.Trouble;
import sheaf.desk.store.Scans;

/**
 * A folder that scanners drop files into. It is looked through again and again, since folders of a
 * network tell nothing of what happens in them.
 *
 * <p>A file is taken in as soon as it is complete and has not changed from one look to the next. It
 * stays where it is until it was read and has been still for a while, so that a scanner may add a
 * page to it; then it goes to {@code done} or {@code doubt}. A file that grew in between is taken
 * in again. Files that are busy or unfinished are tried for as long as they are there.
 */
public final class ScanFolder {

  /** Something behind the end of a file may be the beginning of more; wait so long for the rest. */
  private static final Duration FOR_THE_REST = Duration.ofSeconds(30);

  /** A file that is not complete is told of once it has been still for so long. */
  private static final Duration UNTIL_TOLD = Duration.ofSeconds(60);

  /** A file that is not complete and looks the same is read again so often. */
  private static final Duration BETWEEN_TRIES = Duration.ofSeconds(10);

  private final Path folder;
  private final Duration still;
  private final Clock clock;
  private final Teller teller;
  private final String program;
  private final Map<Path, Seen> files = new HashMap<>();

  /** What is known of a file that lies in the folder. */
  private static final class Seen {
    private final Stamp stamp;
    private final Instant since;
    private Instant again = Instant.MIN;
    private Optional<String> digest = Optional.empty();
    private boolean told;

    Seen(Stamp stamp, Instant since) {
      this.stamp = stamp;
      this.since = since;
    }
  }

  /**
   * Begins to look after a folder, which is made unless it is there.
   *
   * @param folder with the two in it for files that were read
   * @param still how long a file that was read stays, in case it grows; with none, nobody waits for
   *     the rest of a file either
   * @param clock the time
   * @param teller hears of files that wait for something
   * @param program that takes them in: a version
   */
  public ScanFolder(Path folder, Duration still, Clock clock, Teller teller, String program) {
    this.folder = OutputFile.folder(folder);
    this.still = still;
    this.clock = clock;
    this.teller = teller;
    this.program = program;
    OutputFile.folder(done());
    OutputFile.folder(doubt());
  }

  private Path done() {
    return folder.resolve("done");
  }

  private Path doubt() {
    return folder.resolve("doubt");
  }

  /**
   * Looks through the folder once: takes in what is complete, moves what was read.
   *
   * @return whether anything is there that another look may do something with
   * @throws Trouble when the store cannot take scans in; all files are then where they were
   */
  public boolean look(Scans scans) {
    List<Path> there = list();
    files.keySet().retainAll(there);
    boolean more = false;
    for (Path file : there) {
      try {
        more |= look(file, scans);
      } catch (NoSuchFileException e) {
        files.remove(file);
      } catch (IOException e) {
        // Busy: whoever writes it may keep others out meanwhile.
        more = true;
        tellLater(file, "cannot be read yet (" + Trouble.inWords(e) + "); it is tried again.");
      }
    }
    return more;
  }

  private List<Path> list() {
    try (Stream<Path> all = Files.list(folder)) {
      return all.filter(ScanFolder::mayBeScan).filter(Files::isRegularFile).sorted().toList();
    } catch (IOException e) {
      throw Trouble.cannotRead(folder, e);
    }
  }

  /** Names that programs give to files which they have not finished. */
  private static boolean mayBeScan(Path file) {
    String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
    return !name.startsWith(".")
        && !name.startsWith("~")
        && !name.matches(".*(~|\\.(tmp|temp|part|partial|crdownload|lock))");
  }

  private boolean look(Path file, Scans scans) throws IOException {
    Stamp stamp = Stamp.of(file);
    Seen seen = files.get(file);
    if (seen == null || !seen.stamp.equals(stamp)) {
      files.put(file, new Seen(stamp, clock.instant()));
      return true;
    }
    if (seen.digest.isEmpty()) {
      return takeIn(file, seen, scans);
    }
    Scans.State state = scans.state(seen.digest.get()).orElse(Scans.State.WAITING);
    if (state != Scans.State.WAITING && isStill(seen, still)) {
      move(file, seen, state == Scans.State.DONE ? done() : doubt());
      return false;
    }
    return true;
  }

  private boolean isStill(Seen seen, Duration time) {
    return !clock.instant().isBefore(seen.since.plus(time));
  }

  /** Whether another look may do more for the file. */
  private boolean takeIn(Path file, Seen seen, Scans scans) throws IOException {
    if (clock.instant().isBefore(seen.again)) {
      return false;
    }
    Optional<byte[]> read = content(file);
    if (read.isEmpty()) {
      return false;
    }
    byte[] content = read.get();
    if (!Stamp.of(file).equals(seen.stamp) || content.length != seen.stamp.bytes()) {
      files.remove(file);
      return true;
    }
    FileEnd end = FileEnd.of(content);
    if (end == FileEnd.COMPLETE || end == FileEnd.FOLLOWED && isStill(seen, FOR_THE_REST)) {
      scans.arrive(file.getFileName().toString(), content, program);
      seen.digest = Optional.of(Scans.digest(content));
      return true;
    }
    seen.again = clock.instant().plus(BETWEEN_TRIES);
    tellLater(
        file,
        end == FileEnd.NO_SCAN
            ? "is no JPEG, PNG, TIFF or PDF; it is left where it is."
            : "is not complete yet; it is taken in when the rest has come.");
    return end == FileEnd.FOLLOWED;
  }

  /** Empty, and told of, for a file that cannot be taken in as it is. */
  private Optional<byte[]> content(Path file) {
    try {
      return Optional.of(InputFile.content(file));
    } catch (Trouble e) {
      tellLater(file, "waits. " + e.getMessage());
      return Optional.empty();
    }
  }

  private void tellLater(Path file, String what) {
    Seen seen = files.get(file);
    Duration patience = still.isZero() ? Duration.ZERO : UNTIL_TOLD;
    if (seen != null && !seen.told && isStill(seen, patience)) {
      seen.told = true;
      teller.say(file + " " + what);
    }
  }

  /** A file that grew at the last moment comes back, to be taken in again. */
  private void move(Path file, Seen seen, Path to) throws IOException {
    Path moved = moved(file, to);
    files.remove(file);
    if (!Stamp.of(moved).equals(seen.stamp)) {
      moved(moved, folder);
    }
  }

  /** Moves a file under its own name, or one with a number where another has that. */
  private static Path moved(Path file, Path to) throws IOException {
    String name = file.getFileName().toString();
    int dot = name.lastIndexOf('.') < 1 ? name.length() : name.lastIndexOf('.');
    for (int i = 1; ; i++) {
      String free = i == 1 ? name : name.substring(0, dot) + "~" + i + name.substring(dot);
      try {
        return Files.move(file, to.resolve(free));
      } catch (FileAlreadyExistsException e) {
        // Somebody's earlier file of that name.
        continue;
      }
    }
  }
}
