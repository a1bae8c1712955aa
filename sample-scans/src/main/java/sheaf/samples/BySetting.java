package sheaf.samples;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import sheaf.samples.scene.Truth;

/** Figures for the sheets of each setting, so that one sees what makes reading hard. */
final class BySetting {

  private static final String ROW = "%-24s %5s %8s %10s %8s %7s %20s %7s%n";

  private BySetting() {}

  /** A line for each setting. */
  static String table(List<Score> scores) {
    StringBuilder table = new StringBuilder();
    table.append(
        String.format(
            Locale.ROOT,
            ROW,
            "setting",
            "pages",
            "recall %",
            "precision %",
            "RMS mm",
            "head %",
            "read/check/refused",
            "silent"));
    group(table, scores, truth -> "behind: " + truth.behind());
    group(table, scores, truth -> "dpi: " + truth.dpi());
    group(table, scores, truth -> truth.colour() ? "colour" : "grey scan");
    group(table, scores, truth -> truth.statesDpi() ? "dpi stated" : "dpi not stated");
    group(table, scores, truth -> truth.scaleX() == 1 ? "true size" : "print off size");
    return table.toString();
  }

  private static void group(
      StringBuilder table, List<Score> scores, Function<Truth, String> setting) {
    Map<String, List<Score>> groups =
        scores.stream()
            .collect(
                Collectors.groupingBy(
                    score -> setting.apply(score.truth()), TreeMap::new, Collectors.toList()));
    groups.forEach((name, group) -> table.append(row(name, Figures.of(group))));
  }

  private static String row(String name, Figures figures) {
    return String.format(
        Locale.ROOT,
        ROW,
        name,
        figures.pages(),
        percent(figures.recall()),
        percent(figures.precision()),
        String.format(Locale.ROOT, "%.3f", figures.rms()),
        percent(figures.headsRight()),
        figures.read() + "/" + figures.check() + "/" + figures.refused(),
        figures.silent());
  }

  private static String percent(double share) {
    return String.format(Locale.ROOT, "%.2f", 100 * share);
  }
}
