package sheaf.desk.cli;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import sheaf.desk.home.HomeFolder;
import sheaf.desk.store.Store;
import sheaf.desk.store.StorePlace;

/**
 * Measures what a second desk gains: a backlog of pages on a PostgreSQL server, read by one process
 * and by two, each pinned to a processor of its own (with {@code taskset}, so on Linux only).
 *
 * <p>How much of the time each process computed is told besides: what is missing from the whole it
 * waited for the server or for the other desk. Where other programs run too, only this says much.
 *
 * <p>{@code java -cp desk/target/sheaf.jar sheaf.desk.cli.DesksSpeed DIR ADDRESS 200 SCAN...}
 *
 * <p>DIR is made; ADDRESS is that of a database for this alone. The scans are taken in again and
 * again, each time with some blanks behind their end, so that every page is one of its own.
 */
public final class DesksSpeed {

  /** In milliseconds. */
  private static final long BETWEEN_LOOKS = 200;

  private final StorePlace place;
  private final String address;
  private final int pages;
  private final List<byte[]> scans = new ArrayList<>();
  private int made;

  /**
   * How a backlog was read.
   *
   * @param seconds until all was read
   * @param computing share of that time in which a desk computed, on the average
   */
  private record Run(double seconds, double computing) {}

  private DesksSpeed(Path folder, String address, int pages) {
    this.address = address;
    this.pages = pages;
    this.place =
        new StorePlace(new HomeFolder(folder), Optional.of(address), Optional.empty(), "speed");
  }

  /** Prints how long each takes; the first round, in which everything is loaded, does not count. */
  public static void main(String[] arguments) throws IOException, InterruptedException {
    DesksSpeed speed =
        new DesksSpeed(Path.of(arguments[0]), arguments[1], Integer.parseInt(arguments[2]));
    for (String scan : Arrays.copyOfRange(arguments, 3, arguments.length)) {
      speed.scans.add(Files.readAllBytes(Path.of(scan)));
    }
    speed.run(2, 8);
    Run one = speed.run(1, speed.pages);
    Run two = speed.run(2, speed.pages);
    System.out.printf(
        Locale.ROOT,
        "%d pages: one desk %.1f s (computing %.0f %% of it), two desks %.1f s (%.0f %%), %.2f times as fast%n",
        speed.pages,
        one.seconds(),
        one.computing() * 100,
        two.seconds(),
        two.computing() * 100,
        one.seconds() / two.seconds());
  }

  private Run run(int desks, int count) throws IOException, InterruptedException {
    try (Store store = Store.open(place, Clock.systemUTC())) {
      for (int i = 0; i < count; i++) {
        byte[] scan = scans.get(i % scans.size());
        made++;
        String blanks = " ".repeat(made % 100 + 1) + "\n".repeat(made / 100 + 1);
        byte[] own = Arrays.copyOf(scan, scan.length + blanks.length());
        System.arraycopy(blanks.getBytes(), 0, own, scan.length, blanks.length());
        store.scans().arrive("page" + made + ".jpg", own, Version.number());
      }
      long start = System.nanoTime();
      List<Process> all = new ArrayList<>();
      for (int desk = 0; desk < desks; desk++) {
        all.add(start(desk));
      }
      Duration computed = computed(all);
      if (store.scans().waiting() > 0) {
        throw new IllegalStateException("some pages were not read");
      }
      double seconds = (System.nanoTime() - start) / 1e9;
      return new Run(seconds, computed.toNanos() / 1e9 / desks / seconds);
    }
  }

  /** Waits for them; what they computed, as far as it was seen before their end. */
  private static Duration computed(List<Process> desks) throws InterruptedException {
    Duration all = Duration.ZERO;
    Duration now = Duration.ZERO;
    while (desks.stream().anyMatch(Process::isAlive)) {
      all = now.compareTo(all) > 0 ? now : all;
      Thread.sleep(BETWEEN_LOOKS);
      now =
          desks.stream()
              .map(process -> process.info().totalCpuDuration().orElse(Duration.ZERO))
              .reduce(Duration.ZERO, Duration::plus);
    }
    return all;
  }

  private Process start(int desk) throws IOException {
    return new ProcessBuilder(
            "taskset",
            "-c",
            String.valueOf(desk),
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-XX:+UseSerialGC",
            "-cp",
            System.getProperty("java.class.path"),
            Main.class.getName(),
            "watch",
            "--only-read",
            "--once",
            "--readers",
            "1",
            "--home",
            place.home().path().toString(),
            "--store",
            address)
        .redirectOutput(new File("/dev/null"))
        .redirectError(ProcessBuilder.Redirect.INHERIT)
        .start();
  }
}
