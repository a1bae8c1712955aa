package sheaf.samples;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.ExecutionException;

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

  private final long first;
  private final long last;
  private final StringBuilder report = new StringBuilder();
  private final StringBuilder wrong = new StringBuilder();

  private AccuracyReport(long first, long last) {
    this.first = first;
    this.last = last;
    report.append(HEAD.formatted(first, last));
  }

  /** Runs the measurement of all conditions, or of those named, over a range of seeds. */
  public static void main(String[] arguments)
      throws IOException, ExecutionException, InterruptedException {
    List<String> named = List.of(arguments).subList(3, arguments.length);
    List<Condition> conditions =
        Arrays.stream(Condition.values())
            .filter(condition -> named.isEmpty() || named.contains(condition.label()))
            .toList();
    AccuracyReport report =
        new AccuracyReport(Long.parseLong(arguments[0]), Long.parseLong(arguments[1]));
    report.holes(conditions.stream().filter(condition -> condition != Condition.TEARS).toList());
    if (conditions.contains(Condition.TEARS)) {
      report.tears();
    }
    Files.writeString(Path.of(arguments[2]), report.text());
  }

  private void holes(List<Condition> conditions) throws ExecutionException, InterruptedException {
    if (!conditions.isEmpty()) {
      report.append(MarkdownTable.head(COLUMNS));
    }
    for (Condition condition : conditions) {
      List<Score> scores = Accuracy.measure(first, last, processors(), condition::make);
      report.append(MarkdownTable.row(cells(condition, Figures.of(scores))));
      scores.stream().filter(Score::silentlyWrong).forEach(this::wrong);
    }
  }

  private void tears() throws ExecutionException, InterruptedException {
    List<TearScore> scores = TearAccuracy.measure(first, last, processors(), Condition.TEARS::make);
    report.append('\n').append(TearTable.of(scores));
    scores.stream().filter(TearScore::silentlyWrong).forEach(this::wrong);
  }

  private static int processors() {
    return Runtime.getRuntime().availableProcessors();
  }

  private void wrong(Object score) {
    wrong.append("- ").append(score).append('\n');
  }

  private String text() {
    return wrong.isEmpty() ? report.toString() : report + "\nSilently wrong:\n\n" + wrong;
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
