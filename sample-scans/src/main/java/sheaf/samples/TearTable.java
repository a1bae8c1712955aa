package sheaf.samples;

import java.util.List;
import java.util.Locale;
import java.util.TreeMap;
import java.util.stream.Collectors;

/** How well tear sheets are read, as a table in Markdown: all of them, and by what lay behind. */
final class TearTable {

  private static final List<String> COLUMNS =
      List.of(
          "tear sheets",
          "pages / tears / found",
          "point RMS / 95 % mm",
          "tail RMS / 95 % mm",
          "point / tail within stated error %",
          "vanes told / of them right %",
          "check + refused, unless hit twice %",
          "silent errors");

  private TearTable() {}

  /** The table of some scores. */
  static String of(List<TearScore> scores) {
    StringBuilder table = new StringBuilder(MarkdownTable.head(COLUMNS));
    table.append(row("all", scores));
    scores.stream()
        .collect(Collectors.groupingBy(s -> s.truth().behind(), TreeMap::new, Collectors.toList()))
        .forEach((behind, group) -> table.append(row(behind + " behind", group)));
    return table.toString();
  }

  private static String row(String name, List<TearScore> scores) {
    TearFigures figures = new TearFigures(scores);
    return MarkdownTable.row(
        List.of(
            name,
            text("%d / %d / %d", scores.size(), figures.tears(), figures.matches().size()),
            text("%.2f / %.2f", figures.pointRms(), figures.pointPercentile()),
            text("%.2f / %.2f", figures.tailRms(), figures.tailPercentile()),
            text("%.1f / %.1f", 100 * figures.pointsWithin(), 100 * figures.tailsWithin()),
            text("%.1f / %.1f", 100 * figures.vanesTold(), 100 * figures.vanesRight()),
            text("%.1f", 100 * figures.unsure()),
            text("%d", figures.silent())));
  }

  private static String text(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }
}
