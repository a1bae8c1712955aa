package sheaf.desk.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import sheaf.core.job.JobId;
import sheaf.core.job.SheetCode;
import sheaf.core.layout.Layouts;
import sheaf.core.layout.UnitSystem;
import sheaf.core.layout.Variant;
import sheaf.core.page.Paper;
import sheaf.core.reading.FieldReading;
import sheaf.core.reading.PageReading;
import sheaf.desk.home.HomeFolder;
import sheaf.desk.store.Store;
import sheaf.desk.store.StorePlace;

/**
 * Measures what the store takes: filing a page durably, finding and viewing one of many jobs,
 * looking at every scan, and the memory that this needs. Everything is made up.
 *
 * <p>{@code java -Xmx512m -cp desk/target/sheaf.jar sheaf.desk.cli.StoreSpeed DIR 100000 [ADDRESS]}
 *
 * <p>DIR is made, and left as it is for a look at it; ADDRESS is that of an empty PostgreSQL
 * database.
 */
public final class StoreSpeed {

  private static final String READER = "speed";
  private static final int FILED = 300;
  private static final int WARM = 30;
  private static final int ASKED = 60;

  /** About what a commit writes. */
  private static final byte[] COMMIT = new byte[8_192];

  /** A grey letter scan as a JPEG has about so many bytes. */
  private static final int SCAN = 300_000;

  /** Jobs that are filed in one go. */
  private static final int AT_ONCE = 1_000;

  private static final int LARGE = 25_000_000;
  private static final int LARGE_FILES = 40;

  private final Random random = new Random(1);
  private final Store store;

  private StoreSpeed(Store store) {
    this.store = store;
  }

  /** Prints one line for each thing measured. */
  public static void main(String[] arguments) throws IOException {
    HomeFolder home = new HomeFolder(Path.of(arguments[0]));
    int jobs = Integer.parseInt(arguments[1]);
    Optional<String> address = Arrays.stream(arguments).skip(2).findFirst();
    StorePlace place = new StorePlace(home, address, Optional.empty(), READER);
    try (Store store = Store.open(place, Clock.systemUTC())) {
      StoreSpeed speed = new StoreSpeed(store);
      speed.filing(home.path().resolve("floor"));
      speed.finding(jobs);
      speed.verifying(home.path().resolve("copy.zip"));
    }
  }

  /** In turns with what the disk itself takes, since others may use it at the same time. */
  private void filing(Path folder) throws IOException {
    List<Double> floor = new ArrayList<>();
    List<Double> commit = new ArrayList<>();
    List<Double> reading = new ArrayList<>();
    List<Double> both = new ArrayList<>();
    Files.createDirectories(folder);
    for (int i = 0; i < FILED; i++) {
      JobId job = JobId.random(random);
      byte[] scan = bytes(SCAN);
      long start = System.nanoTime();
      synced(folder.resolve("log"), COMMIT, StandardOpenOption.APPEND);
      commit.add(milliseconds(start));
      synced(folder.resolve("scan" + i), scan, StandardOpenOption.WRITE);
      floor.add(milliseconds(start));
      start = System.nanoTime();
      store.file("page.jpg", scan, List.of(page(job, 1)), READER);
      both.add(milliseconds(start));
      start = System.nanoTime();
      store.file("page.jpg", scan, List.of(page(job, 2)), READER);
      reading.add(milliseconds(start));
    }
    report("the disk alone: 8 kB appended and synced", commit.subList(WARM, FILED));
    report("a page's reading filed durably", reading.subList(WARM, FILED));
    report("the disk alone: that and a scan of 0.3 MB", floor.subList(WARM, FILED));
    report("a page filed durably, with its scan of 0.3 MB", both.subList(WARM, FILED));
  }

  private static void synced(Path file, byte[] bytes, StandardOpenOption how) throws IOException {
    try (FileChannel channel = FileChannel.open(file, StandardOpenOption.CREATE, how)) {
      channel.write(ByteBuffer.wrap(bytes));
      channel.force(true);
    }
  }

  private void finding(int jobs) {
    List<JobId> known = new ArrayList<>();
    long start = System.nanoTime();
    while (known.size() < jobs) {
      List<PageReading> pages = new ArrayList<>();
      for (int i = 0; i < AT_ONCE; i++) {
        JobId job = JobId.random(random);
        known.add(job);
        pages.add(page(job, 1));
        pages.add(page(job, 2));
      }
      store.file("stack.pdf", bytes(1_000), pages, READER);
    }
    System.out.printf(Locale.ROOT, "%,d jobs made in %.0f s%n", jobs, milliseconds(start) / 1_000);
    ask("find by a part of the id", known, job -> store.find(words(job), false, 50));
    ask("find what is nowhere", known, job -> store.find(List.of("nowhere"), false, 50));
    ask("find two words, most jobs having both", known, job -> store.find(both(), false, 50));
    ask("list what is left to do", known, job -> store.find(List.of(), true, 50));
    ask("view a job", known, store::job);
  }

  private static List<String> words(JobId job) {
    return List.of(job.spoken().substring(3, 9));
  }

  private static List<String> both() {
    return List.of("20", "card");
  }

  /** Something asked of the store about a job. */
  private interface Question {
    Object ask(JobId job);
  }

  private void ask(String what, List<JobId> known, Question question) {
    List<Double> each = new ArrayList<>();
    for (int i = 0; i < WARM + ASKED; i++) {
      JobId job = known.get(random.nextInt(known.size()));
      long start = System.nanoTime();
      question.ask(job);
      each.add(milliseconds(start));
    }
    report(what, each.subList(WARM, each.size()));
  }

  private void verifying(Path copy) throws IOException {
    for (int i = 0; i < LARGE_FILES; i++) {
      store.file("large.pdf", bytes(LARGE), List.of(page(JobId.random(random), 1)), READER);
    }
    System.gc();
    long before = resident();
    long start = System.nanoTime();
    long[] seen = new long[2];
    store
        .archives()
        .verify(
            bytes -> {
              if (seen[1] == 0) {
                seen[1] = System.nanoTime();
              }
              seen[0] = bytes;
            });
    double files = milliseconds(seen[1]) / 1_000;
    System.out.printf(
        Locale.ROOT,
        "verify: rows in %.1f s, then %.0f MB of scans in %.1f s, %.0f MB/s%n",
        (seen[1] - start) / 1e9,
        seen[0] / 1e6,
        files,
        seen[0] / 1e6 / files);
    start = System.nanoTime();
    try (OutputStream out = Files.newOutputStream(copy)) {
      store.archives().write(out, count -> {});
    }
    System.out.printf(
        Locale.ROOT,
        "backup: %.0f MB in %.1f s%n",
        Files.size(copy) / 1e6,
        milliseconds(start) / 1_000);
    System.out.printf(
        Locale.ROOT,
        "resident memory: %d MB before verify and backup, %d MB after%n",
        before,
        resident());
  }

  private byte[] bytes(int count) {
    byte[] bytes = new byte[count];
    random.nextBytes(bytes);
    return bytes;
  }

  private static PageReading page(JobId job, int number) {
    SheetCode sheet =
        new SheetCode(
            job, number, Layouts.current(Variant.TWO_DOTS, Paper.LETTER, UnitSystem.INCHES).id());
    List<FieldReading> fields = new ArrayList<>();
    for (String key : List.of("distance", "arrows_field", "arrows_broadhead", "changed")) {
      fields.add(
          new FieldReading(
              key, FieldReading.State.BLANK, "", OptionalDouble.empty(), Optional.empty(), 1));
    }
    return new PageReading(
        "page.jpg",
        List.of(),
        Optional.of(sheet),
        OptionalDouble.of(11.81),
        Optional.empty(),
        List.of(),
        fields);
  }

  private static void report(String what, List<Double> milliseconds) {
    double[] sorted = milliseconds.stream().mapToDouble(each -> each).sorted().toArray();
    System.out.printf(
        Locale.ROOT,
        "%s: median %.1f ms, nine in ten within %.1f ms%n",
        what,
        sorted[sorted.length / 2],
        sorted[sorted.length * 9 / 10]);
  }

  private static double milliseconds(long since) {
    return (System.nanoTime() - since) / 1e6;
  }

  /** What the process holds, in megabytes, where the system tells it. */
  private static long resident() throws IOException {
    Path status = Path.of("/proc/self/status");
    if (!Files.exists(status)) {
      return 0;
    }
    return Files.readAllLines(status).stream()
        .filter(line -> line.startsWith("VmRSS:"))
        .mapToLong(line -> Long.parseLong(line.replaceAll("\\D", "")) / 1_000)
        .findFirst()
        .orElse(0);
  }
}
