package sheaf.desk.cli;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
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
 * <p>{@code java -cp desk/target/sheaf.jar sheaf.desk.cli.DesksSpeed DIR ADDRESS 200 SCAN...}
 *
 * <p>DIR is made; ADDRESS is that of a database for this alone. The scans are taken in again and
 * again, each time with some blanks behind their end, so that every page is one of its own.
 */
public final class DesksSpeed {

  private final StorePlace place;
  private final String address;
  private final int pages;
  private final List<byte[]> scans = new ArrayList<>();
  private int made;

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
    speed.seconds(2, 8);
    double one = speed.seconds(1, speed.pages);
    double two = speed.seconds(2, speed.pages);
    System.out.printf(
        Locale.ROOT,
        "%d pages: one desk %.1f s, two desks %.1f s, %.2f times as fast%n",
        speed.pages,
        one,
        two,
        one / two);
  }

  private double seconds(int desks, int count) throws IOException, InterruptedException {
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
      for (Process process : all) {
        process.waitFor();
      }
      if (store.scans().waiting() > 0) {
        throw new IllegalStateException("some pages were not read");
      }
      return (System.nanoTime() - start) / 1e9;
    }
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
