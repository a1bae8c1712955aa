package sheaf.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import sheaf.core.reading.PageReading;
import sheaf.desk.Pages;
import sheaf.desk.Scanned;
import sheaf.desk.home.HomeFolder;
import sheaf.desk.json.PageJson;
import sheaf.desk.store.PostgresDatabases;
import sheaf.desk.store.Store;
import sheaf.desk.store.StorePlace;
import sheaf.desk.store.Verification;

/**
 * Commands that are killed, as by a power cut of their process, at moments drawn by chance: 200 in
 * all. Whatever page was acknowledged is there exactly once, and the store is sound each time.
 */
@Tag("slow")
class KillTest {

  /** Kills of each: together 200. */
  private static final int WATCHES_OF_A_FILE = 60;

  private static final int WATCHES_OF_A_SERVER = 30;
  private static final int READS = 60;
  private static final int IMPORTS = 50;

  /** Independent of each other, so that a machine with several processors is sooner done. */
  private static final int SIDE_BY_SIDE = 3;

  @TempDir Path folder;

  @Test
  void watchLosesAndDoublesNothing() throws Exception {
    sideBySide(lane -> watch(lane, WATCHES_OF_A_FILE / SIDE_BY_SIDE, Optional.empty()));
  }

  @Test
  void watchOverAServerLosesAndDoublesNothing() throws Exception {
    sideBySide(
        lane ->
            watch(
                lane,
                WATCHES_OF_A_SERVER / SIDE_BY_SIDE,
                Optional.of(PostgresDatabases.address())));
  }

  @Test
  void readLosesAndDoublesNothing() throws Exception {
    sideBySide(lane -> read(lane, READS / SIDE_BY_SIDE));
  }

  @Test
  void importIsTakenUpAgain() throws Exception {
    Path archive = archive();
    sideBySide(lane -> takeIn(lane, archive, IMPORTS / SIDE_BY_SIDE + 1));
  }

  /** Some lane's work. */
  private interface Lane {
    boolean run(int lane) throws Exception;
  }

  private static void sideBySide(Lane work) throws Exception {
    ExecutorService lanes = Executors.newFixedThreadPool(SIDE_BY_SIDE);
    try {
      List<Callable<Boolean>> all =
          IntStream.range(0, SIDE_BY_SIDE)
              .mapToObj(lane -> (Callable<Boolean>) () -> work.run(lane))
              .toList();
      for (Future<Boolean> done : lanes.invokeAll(all)) {
        assertThat(done.get()).isTrue();
      }
    } finally {
      lanes.shutdownNow();
    }
  }

  private boolean watch(int lane, int kills, Optional<String> address) throws Exception {
    Path home = folder.resolve("watch" + lane + address.isPresent());
    Path in = Files.createDirectories(folder.resolve("in" + lane + address.isPresent()));
    StorePlace place = place(home, address);
    List<String> words = new ArrayList<>(List.of("watch", in.toString(), "--once", "--json"));
    address.ifPresent(to -> words.addAll(List.of("--store", to)));
    Killer killer = new Killer(lane);
    Set<Integer> acknowledged = new TreeSet<>();
    int number = 0;
    int files = 0;
    while (killer.hits < kills) {
      Files.write(in.resolve("a" + files + ".png"), Scanned.sheets(++number));
      Files.write(in.resolve("b" + files++ + ".png"), Scanned.sheets(++number, ++number));
      acknowledged.addAll(killer.run(home, words));
      assertSound(place, acknowledged);
    }
    CommandRun.of(home, Scanned.READER, words.toArray(String[]::new));
    Set<Integer> all = IntStream.rangeClosed(1, number).boxed().collect(Collectors.toSet());
    assertSound(place, all);
    try (Stream<Path> left = Files.list(in).filter(Files::isRegularFile);
        Stream<Path> done = Files.list(in.resolve("done"))) {
      assertThat(left).isEmpty();
      assertThat(done).hasSize(2 * files);
    }
    return true;
  }

  private boolean read(int lane, int kills) throws Exception {
    Path home = folder.resolve("read" + lane);
    StorePlace place = place(home, Optional.empty());
    Killer killer = new Killer(100 + lane);
    Set<Integer> acknowledged = new TreeSet<>();
    List<String> last = List.of();
    int number = 0;
    while (killer.hits < kills) {
      List<String> words = new ArrayList<>(List.of("read", "--json"));
      // What was broken off before is read once more.
      words.addAll(last);
      last = new ArrayList<>();
      for (int i = 0; i < 4; i++) {
        Path file = folder.resolve("read" + lane + "-" + number + ".png");
        last.add(Files.write(file, Scanned.sheets(++number, ++number)).toString());
      }
      words.addAll(last);
      acknowledged.addAll(killer.run(home, words));
      assertSound(place, acknowledged);
    }
    return true;
  }

  private Path archive() throws Exception {
    Path home = folder.resolve("source");
    try (Store store = Store.open(new HomeFolder(home), Clock.systemUTC())) {
      for (int number = 1; number <= 30; number++) {
        byte[] scan = Scanned.sheets(number);
        store.file(number + ".png", scan, Scanned.pages(number + ".png", scan), "0.1.0");
      }
    }
    Path archive = folder.resolve("all.zip");
    assertThat(CommandRun.of(home, "export", archive.toString()).status()).isZero();
    return archive;
  }

  private boolean takeIn(int lane, Path archive, int kills) throws Exception {
    Killer killer = new Killer(200 + lane);
    List<String> words = List.of("import", archive.toString());
    String whole = lines(folder.resolve("source"));
    for (int round = 0; killer.hits < kills; round++) {
      Path home = folder.resolve("import" + lane + "-" + round);
      killer.run(home, words);
      assertSound(place(home, Optional.empty()), Set.of());
      assertThat(CommandRun.of(home, words.toArray(String[]::new)).status()).isZero();
      assertThat(lines(home)).isEqualTo(whole);
    }
    return true;
  }

  private String lines(Path home) throws IOException {
    Path file = home.resolve("lines.jsonl");
    assertThat(CommandRun.of(home, "export", file.toString()).status()).isZero();
    return Files.readString(file);
  }

  private static StorePlace place(Path home, Optional<String> address) {
    return new StorePlace(new HomeFolder(home), address, Optional.empty(), "a tester");
  }

  private static void assertSound(StorePlace place, Set<Integer> acknowledged) throws IOException {
    try (Store store = Store.open(place, Clock.systemUTC())) {
      Verification found = store.archives().verify(bytes -> {});
      assertThat(found.faults()).isEmpty();
      List<Integer> sheets =
          store.readings(Pages.JOB).stream()
              .map(page -> page.sheet().orElseThrow().number())
              .toList();
      assertThat(sheets).doesNotHaveDuplicates().containsAll(acknowledged);
      assertThat(found.readings()).isEqualTo(sheets.size());
    }
  }

  /** Starts commands and kills them, at a moment between their beginning and their usual end. */
  private static final class Killer {

    private final Random random;

    /** How often a process was killed before it ended by itself. */
    private int hits;

    /** How long such a command takes, in nanoseconds; at first a guess. */
    private long usual = TimeUnit.MILLISECONDS.toNanos(800);

    Killer(long seed) {
      this.random = new Random(seed);
    }

    /** Runs a command and kills it; the sheets that it said to be filed. */
    Set<Integer> run(Path home, List<String> words) throws Exception {
      List<String> command =
          new ArrayList<>(
              List.of(
                  Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                  "-XX:TieredStopAtLevel=1",
                  "-XX:+UseSerialGC",
                  "-cp",
                  System.getProperty("java.class.path"),
                  KilledCommand.class.getName(),
                  home.toString()));
      command.addAll(words);
      Path err = Files.createTempFile(home.getParent(), "err", ".txt");
      Path out = Files.createTempFile(home.getParent(), "out", ".txt");
      Process process =
          new ProcessBuilder(command)
              .redirectError(err.toFile())
              .redirectOutput(out.toFile())
              .start();
      while (process.isAlive() && Files.size(err) == 0) {
        Thread.sleep(2);
      }
      long start = System.nanoTime();
      if (process.waitFor((long) (random.nextDouble() * usual), TimeUnit.NANOSECONDS)) {
        // It ended by itself, so the next is killed sooner.
        usual = (usual + System.nanoTime() - start) / 2;
      } else {
        usual += usual / 20;
        hits++;
      }
      process.destroyForcibly().waitFor();
      return sheets(out);
    }

    private static Set<Integer> sheets(Path out) throws IOException {
      String text = Files.readString(out);
      Set<Integer> numbers = new TreeSet<>();
      // A line that was cut off says nothing.
      text.substring(0, text.lastIndexOf('\n') + 1)
          .lines()
          .map(PageJson::parse)
          .map(PageReading::sheet)
          .forEach(sheet -> numbers.add(sheet.orElseThrow().number()));
      return numbers;
    }
  }
}
