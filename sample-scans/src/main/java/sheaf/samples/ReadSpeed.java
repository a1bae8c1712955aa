package sheaf.samples;

import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import sheaf.samples.scene.Behind;
import sheaf.scanner.ReadPage;
import sheaf.scanner.SheetReader;

/**
 * How long reading takes once everything is warm, beside the least that it can take on this machine
 * ({@link Floor}): {@code ReadSpeed [ROUNDS]}.
 *
 * <p>Both take turns, so that whatever else the machine does falls on both alike. Each is timed in
 * processor time of all threads of the program, which other programs on the machine hardly change,
 * and by the clock. The pictures are made first; that counts for nothing.
 */
public final class ReadSpeed {

  private static final int USUAL_ROUNDS = 40;

  /** The first third of the rounds warms up. */
  private static final int WARM_UP = 3;

  private static final double NANOSECONDS = 1e6;

  private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

  private ReadSpeed() {}

  /** A picture to read. */
  private record Subject(String name, byte[] file, boolean colour) {}

  /** What each round took, in milliseconds: of the processor, and by the clock. */
  private record Times(double[] processor, double[] clock) {

    Times(int rounds) {
      this(new double[rounds], new double[rounds]);
    }

    /** Of each thread that lives; Java's own for compiling and tidying are not among them. */
    private static Map<Long, Long> processorTimes() {
      Map<Long, Long> times = new HashMap<>();
      for (long thread : THREADS.getAllThreadIds()) {
        times.put(thread, THREADS.getThreadCpuTime(thread));
      }
      return times;
    }

    void take(int round, Runnable work) {
      long clock = System.nanoTime();
      Map<Long, Long> before = processorTimes();
      work.run();
      this.processor[round] =
          processorTimes().entrySet().stream()
                  .mapToLong(each -> each.getValue() - before.getOrDefault(each.getKey(), 0L))
                  .sum()
              / NANOSECONDS;
      this.clock[round] = (System.nanoTime() - clock) / NANOSECONDS;
    }
  }

  /** Prints a table: medians, and quartiles in brackets. */
  public static void main(String[] arguments) throws ExecutionException, InterruptedException {
    PrintStream out = Terminal.out();
    int rounds = arguments.length > 0 ? Integer.parseInt(arguments[0]) : USUAL_ROUNDS;
    SheetReader reader = new SheetReader();
    out.println("Milliseconds of processor time (and by the clock), median [quartiles].");
    for (Subject subject : subjects()) {
      compare(subject, rounds, reader, out);
    }
    twoCores(rounds, reader, out);
  }

  private static List<Subject> subjects() {
    return List.of(
        new Subject("grey scan, black behind", SpeedSheets.scan(Behind.BLACK, false), false),
        new Subject("grey scan, white lid", SpeedSheets.scan(Behind.WHITE, false), false),
        new Subject("colour scan, backing", SpeedSheets.scan(Behind.BACKING, true), true),
        new Subject("12 MP photo, backing", SpeedSheets.photo(Behind.BACKING), true),
        new Subject("12 MP photo, foam", SpeedSheets.photo(Behind.FOAM), true));
  }

  private static void compare(Subject subject, int rounds, SheetReader reader, PrintStream out) {
    Times floor = new Times(rounds);
    Times reading = new Times(rounds);
    int[] holes = new int[1];
    for (int i = 0; i < rounds; i++) {
      floor.take(i, () -> Floor.of(subject.file(), subject.colour()));
      reading.take(i, () -> holes[0] = holes(reader, subject.file()));
    }
    double ratio = middle(warm(reading.processor), 0.5) / middle(warm(floor.processor), 0.5);
    out.printf(
        "%-24s floor %s, reading %s, %d holes: %.2f times the floor%n",
        subject.name(), text(floor), text(reading), holes[0], ratio);
  }

  private static String text(Times times) {
    double[] processor = warm(times.processor);
    return "%.0f [%.0f-%.0f] (%.0f)"
        .formatted(
            middle(processor, 0.5),
            middle(processor, 0.25),
            middle(processor, 0.75),
            middle(warm(times.clock), 0.5));
  }

  private static int holes(SheetReader reader, byte[] file) {
    List<ReadPage> pages = new ArrayList<>();
    reader.read("speed", file, SheetReader.Proof.SKIP, pages::add);
    return pages.get(0).reading().holes().size();
  }

  /** The same stack by one thread and by two, in turns. */
  private static void twoCores(int rounds, SheetReader reader, PrintStream out)
      throws ExecutionException, InterruptedException {
    byte[] file = SpeedSheets.scan(Behind.BLACK, false);
    double[] gains = new double[Math.max(WARM_UP, rounds / 4)];
    for (int i = 0; i < gains.length; i++) {
      double one = clock(1, () -> holes(reader, file));
      double two = clock(2, () -> holes(reader, file));
      gains[i] = one / two;
    }
    double[] warm = warm(gains);
    out.printf(
        "two cores read %.2f [%.2f-%.2f] times as many pages as one%n",
        middle(warm, 0.5), middle(warm, 0.25), middle(warm, 0.75));
  }

  private static double clock(int threads, Runnable page)
      throws ExecutionException, InterruptedException {
    int pages = 8;
    ExecutorService workers = Executors.newFixedThreadPool(threads);
    try {
      long start = System.nanoTime();
      List<Future<?>> pending = new ArrayList<>();
      for (int i = 0; i < pages; i++) {
        pending.add(workers.submit(page));
      }
      for (Future<?> each : pending) {
        each.get();
      }
      return (System.nanoTime() - start) / NANOSECONDS;
    } finally {
      workers.shutdown();
    }
  }

  private static double[] warm(double[] all) {
    double[] warm = Arrays.copyOfRange(all, all.length / WARM_UP, all.length);
    Arrays.sort(warm);
    return warm;
  }

  private static double middle(double[] sorted, double share) {
    return sorted[(int) (share * (sorted.length - 1))];
  }
}
