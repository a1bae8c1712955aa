package sheaf.samples;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import sheaf.core.reading.PageReading;
import sheaf.scanner.ReadPage;
import sheaf.scanner.SheetReader;

/**
 * Measures how well made flatbed scans are read: {@code Accuracy FIRST-SEED LAST-SEED}.
 *
 * <p>Prints a table of figures, and a line for each sheet on which anything was wrong.
 */
public final class Accuracy {

  private Accuracy() {}

  /** Runs the measurement over a range of seeds, two numbers. */
  public static void main(String[] arguments) throws ExecutionException, InterruptedException {
    long first = Long.parseLong(arguments[0]);
    long last = Long.parseLong(arguments[1]);
    report(measure(first, last), new PrintStream(new FileOutputStream(FileDescriptor.out)));
  }

  /** Makes, reads and scores the sheet of every seed. */
  public static List<Score> measure(long first, long last)
      throws ExecutionException, InterruptedException {
    SheetReader reader = new SheetReader();
    ExecutorService workers =
        Executors.newFixedThreadPool(Runtime.getRuntime().availableProcessors());
    try {
      List<Future<Score>> pending = new ArrayList<>();
      for (long seed = first; seed <= last; seed++) {
        long own = seed;
        pending.add(workers.submit(() -> score(own, reader)));
      }
      List<Score> scores = new ArrayList<>();
      for (Future<Score> score : pending) {
        scores.add(score.get());
      }
      return scores;
    } finally {
      workers.shutdown();
    }
  }

  private static Score score(long seed, SheetReader reader) {
    Sample sample = FlatbedMix.make(seed);
    List<PageReading> readings = new ArrayList<>();
    reader.read(
        "seed " + seed,
        sample.file(),
        SheetReader.Proof.SKIP,
        (ReadPage page) -> readings.add(page.reading()));
    return Score.of(seed, readings.get(0), sample.truth());
  }

  /** Prints the figures. */
  public static void report(List<Score> scores, PrintStream out) {
    Figures figures = Figures.of(scores);
    out.print(figures.table());
    scores.stream().filter(score -> !score.faults().isEmpty()).forEach(out::println);
  }
}
