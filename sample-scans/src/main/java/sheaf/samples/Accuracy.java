package sheaf.samples;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.function.LongFunction;
import sheaf.core.reading.ReadingState;
import sheaf.samples.scene.TruthFile;
import sheaf.scanner.SheetReader;

/**
 * Measures how well made scans or photos are read: {@code Accuracy FIRST-SEED LAST-SEED [--of
 * CONDITION] [--threads N] [--dump DIR]}.
 *
 * <p>Prints a table of figures, the same by setting, and a line for each sheet on which anything
 * was wrong or doubtful. With {@code --dump} every picture and its truth are written into a folder,
 * to look at.
 */
public final class Accuracy {

  private Accuracy() {}

  /** Runs the measurement over a range of seeds. */
  public static void main(String[] arguments)
      throws ExecutionException, InterruptedException, IOException {
    PrintStream out = Terminal.out();
    if (arguments.length < 2 || arguments.length % 2 != 0) {
      out.println(
          "usage: Accuracy FIRST-SEED LAST-SEED [--of "
              + Condition.labels()
              + "] [--threads N] [--dump DIR]");
      return;
    }
    long first = Long.parseLong(arguments[0]);
    long last = Long.parseLong(arguments[1]);
    Condition condition =
        option("--of", arguments).flatMap(Condition::labelled).orElse(Condition.FLATBED);
    Optional<String> dump = option("--dump", arguments);
    if (dump.isPresent()) {
      dump(first, last, condition::make, Files.createDirectories(Path.of(dump.get())));
    }
    int threads =
        option("--threads", arguments)
            .map(Integer::valueOf)
            .orElse(Runtime.getRuntime().availableProcessors());
    if (condition == Condition.TEARS) {
      TearAccuracy.report(TearAccuracy.measure(first, last, threads, condition::make), out);
    } else {
      report(measure(first, last, threads, condition::make), out);
    }
  }

  private static Optional<String> option(String name, String[] arguments) {
    for (int i = 2; i + 1 < arguments.length; i += 2) {
      if (arguments[i].equals(name)) {
        return Optional.of(arguments[i + 1]);
      }
    }
    return Optional.empty();
  }

  private static void dump(long first, long last, LongFunction<Sample> maker, Path folder)
      throws IOException {
    for (long seed = first; seed <= last; seed++) {
      Sample sample = maker.apply(seed);
      Files.write(folder.resolve("seed-" + seed + ".jpg"), sample.file());
      Files.writeString(folder.resolve("seed-" + seed + ".json"), TruthFile.write(sample.truth()));
    }
  }

  /** Makes, reads and scores the sheet of every seed. */
  public static List<Score> measure(long first, long last, int threads, LongFunction<Sample> maker)
      throws ExecutionException, InterruptedException {
    SheetReader reader = new SheetReader();
    return Workers.each(first, last, threads, seed -> score(seed, maker.apply(seed), reader));
  }

  private static Score score(long seed, Sample sample, SheetReader reader) {
    return Score.of(seed, sample.read("seed " + seed, reader), sample.truth());
  }

  /** Prints the figures. */
  public static void report(List<Score> scores, PrintStream out) {
    out.print(Figures.of(scores).table());
    out.print(BySetting.table(scores));
    scores.stream()
        .filter(score -> !score.faults().isEmpty() || score.state() != ReadingState.READ)
        .forEach(out::println);
  }
}
