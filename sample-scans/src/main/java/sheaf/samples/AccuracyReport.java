package sheaf.samples;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.ExecutionException;
import java.util.stream.Collectors;

/**
 * Writes how well every sort of picture is read as a table in Markdown: {@code AccuracyReport
 * FIRST-SEED LAST-SEED FILE [CONDITION…]}.
 */
public final class AccuracyReport {

  private static final String HEAD =
      """
      # How well sheets are read

      Made by `java -cp desk/target/sheaf.jar sheaf.samples.AccuracyReport %d %d FILE`: the made
      pictures of those seeds, each read once and held against what they were made with. What is
      in them, and what a silent error is, stands in `README.md`.

      """;

  private static final List<String> COLUMNS =
      List.of(
          "condition",
          "pages / holes",
          "recall / precision %",
          "centre RMS / 95 % mm",
          "plain centroid RMS / 95 % mm",
          "better by %",
          "axis within stated error %",
          "head / blades %",
          "check + refused %",
          "silent errors");

  private AccuracyReport() {}

  /** Runs the measurement of all conditions, or of those named, over a range of seeds. */
  public static void main(String[] arguments)
      throws IOException, ExecutionException, InterruptedException {
    long first = Long.parseLong(arguments[0]);
    long last = Long.parseLong(arguments[1]);
    List<String> named = List.of(arguments).subList(3, arguments.length);
    List<Condition> conditions =
        Arrays.stream(Condition.values())
            .filter(condition -> named.isEmpty() || named.contains(condition.label()))
            .toList();
    StringBuilder report = new StringBuilder(HEAD.formatted(first, last));
    report.append(row(COLUMNS)).append(row(COLUMNS.stream().map(column -> "---").toList()));
    StringBuilder wrong = new StringBuilder();
    for (Condition condition : conditions) {
      List<Score> scores =
          Accuracy.measure(
              first, last, Runtime.getRuntime().availableProcessors(), condition::make);
      report.append(row(cells(condition, Figures.of(scores))));
      scores.stream()
          .filter(Score::silentlyWrong)
          .forEach(score -> wrong.append("- ").append(score).append('\n'));
    }
    if (!wrong.isEmpty()) {
      report.append("\nSilently wrong:\n\n").append(wrong);
    }
    Files.writeString(Path.of(arguments[2]), report);
  }

  private static String row(List<String> cells) {
    return cells.stream().collect(Collectors.joining(" | ", "| ", " |\n"));
  }

  private static List<String> cells(Condition condition, Figures figures) {
    return List.of(
        condition.title(),
        text("%d / %d", figures.pages(), figures.shots()),
        text("%.2f / %.2f", 100 * figures.recall(), 100 * figures.precision()),
        text("%.3f / %.3f", figures.rms(), figures.percentile()),
        text("%.3f / %.3f", figures.plainRms(), figures.plainPercentile()),
        text("%.0f", 100 * (1 - figures.rms() / figures.plainRms())),
        text("%.1f", 100 * figures.withinStated()),
        text("%.2f / %.2f", 100 * figures.headsRight(), 100 * figures.bladesRight()),
        text("%.1f", 100.0 * (figures.check() + figures.refused()) / figures.pages()),
        text("%d", figures.silent()));
  }

  private static String text(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }
}
