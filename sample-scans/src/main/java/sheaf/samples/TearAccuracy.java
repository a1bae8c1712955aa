package sheaf.samples;

import java.io.PrintStream;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ExecutionException;
import java.util.function.Function;
import java.util.function.LongFunction;
import java.util.stream.Collectors;
import sheaf.scanner.SheetReader;

/**
 * Reads made tear sheets and prints how well: {@code TearAccuracy FIRST-SEED LAST-SEED
 * [flatbed|photo]}.
 *
 * <p>Prints a table of figures, the same by what lay behind the sheet, and a line for each sheet on
 * which anything was wrong or unsure.
 */
public final class TearAccuracy {

  private TearAccuracy() {}

  /** Runs the measurement over a range of seeds. */
  public static void main(String[] arguments) throws ExecutionException, InterruptedException {
    PrintStream out = Terminal.out();
    if (arguments.length < 2) {
      out.println("usage: TearAccuracy FIRST-SEED LAST-SEED [flatbed|photo]");
      return;
    }
    boolean photo = arguments.length > 2 && arguments[2].equals("photo");
    LongFunction<Sample> maker = photo ? TearMix::photo : TearMix::make;
    int threads = Runtime.getRuntime().availableProcessors();
    long first = Long.parseLong(arguments[0]);
    long last = Long.parseLong(arguments[1]);
    report(measure(first, last, threads, maker), out);
  }

  /** Makes, reads and scores the sheet of every seed. */
  public static List<TearScore> measure(
      long first, long last, int threads, LongFunction<Sample> maker)
      throws ExecutionException, InterruptedException {
    SheetReader reader = new SheetReader();
    return Workers.each(first, last, threads, seed -> score(seed, maker.apply(seed), reader));
  }

  static TearScore score(long seed, Sample sample, SheetReader reader) {
    return TearScore.of(seed, sample.read("seed " + seed, reader), sample.truth());
  }

  /** Prints the figures. */
  public static void report(List<TearScore> scores, PrintStream out) {
    out.print(new TearFigures(scores).table());
    by(scores, score -> "behind: " + score.truth().behind(), out);
    by(scores, score -> "dpi: " + score.truth().dpi(), out);
    scores.stream()
        .filter(score -> !score.faults().isEmpty() || score.reasons().size() > 0)
        .forEach(out::println);
  }

  private static void by(
      List<TearScore> scores, Function<TearScore, String> setting, PrintStream out) {
    Map<String, List<TearScore>> groups =
        scores.stream().collect(Collectors.groupingBy(setting, TreeMap::new, Collectors.toList()));
    groups.forEach(
        (name, group) -> {
          TearFigures figures = new TearFigures(group);
          out.printf(
              "%-20s %4d sheets, point %.2f, tail %.2f mm, unsure %.1f %%, silent %d%n",
              name,
              group.size(),
              figures.pointRms(),
              figures.tailRms(),
              100 * figures.unsure(),
              figures.silent());
        });
  }
}
