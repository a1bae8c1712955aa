package sheaf.samples;

import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import sheaf.core.reading.ReadingState;
import sheaf.samples.Score.Match;

/**
 * Figures over many scores.
 *
 * @param pages read
 * @param shots that went through them
 * @param matches holes found where there is one
 * @param invented holes found where there is none
 * @param read pages that claim to be sure
 * @param check pages with doubts
 * @param refused pages
 * @param silent pages that claim to be sure and are wrong
 */
public record Figures(
    int pages,
    int shots,
    List<Match> matches,
    int invented,
    long read,
    long check,
    long refused,
    long silent) {

  /** Sums up scores. */
  public static Figures of(List<Score> scores) {
    return new Figures(
        scores.size(),
        scores.stream().mapToInt(score -> score.truth().shots().size()).sum(),
        scores.stream().flatMap(score -> score.matches().stream()).toList(),
        scores.stream().mapToInt(Score::invented).sum(),
        count(scores, ReadingState.READ),
        count(scores, ReadingState.CHECK),
        count(scores, ReadingState.REFUSED),
        scores.stream().filter(Score::silentlyWrong).count());
  }

  private static long count(List<Score> scores, ReadingState state) {
    return scores.stream().filter(score -> score.state() == state).count();
  }

  /** Share of the true holes that were found. */
  public double recall() {
    return matches.size() / (double) shots;
  }

  /** Share of the holes found that are true. */
  public double precision() {
    return matches.size() / (double) (matches.size() + invented);
  }

  /** Root mean square distance from the shaft's axis, in millimetres. */
  public double rms() {
    return rms(Match::error);
  }

  /** 95th percentile of the distance from the shaft's axis, in millimetres. */
  public double percentile() {
    return percentile(Match::error);
  }

  /** What {@link #rms} would be for the plain centroid of each opening. */
  public double plainRms() {
    return rms(Match::plainError);
  }

  /** What {@link #percentile} would be for the plain centroid of each opening. */
  public double plainPercentile() {
    return percentile(Match::plainError);
  }

  /** Share of the matched holes whose axis lies within the reading's own 95 % radius. */
  public double withinStated() {
    return share(match -> match.error() <= match.claimed());
  }

  /** Share of the matched holes whose head is right. */
  public double headsRight() {
    return share(Match::headRight);
  }

  /** Share of the matched holes whose number of blades is right. */
  public double bladesRight() {
    return share(Match::bladesRight);
  }

  /** The figures as a table for people. */
  public String table() {
    StringBuilder table = new StringBuilder();
    line(table, "pages / holes", "%d / %d", pages, shots);
    line(table, "recall / precision", "%.2f %% / %.2f %%", 100 * recall(), 100 * precision());
    line(table, "centre error RMS / 95 %", "%.3f / %.3f mm", rms(), percentile());
    line(table, "plain centroid RMS / 95 %", "%.3f / %.3f mm", plainRms(), plainPercentile());
    line(table, "true axis within claimed radius", "%.1f %%", 100 * withinStated());
    line(table, "head right", "%.2f %%", 100 * headsRight());
    line(table, "blades right", "%.2f %%", 100 * bladesRight());
    line(table, "read / check / refused", "%d / %d / %d", read, check, refused);
    line(table, "silently wrong", "%d", silent);
    return table.toString();
  }

  private static void line(StringBuilder table, String name, String format, Object... values) {
    table.append("%-32s ".formatted(name)).append(String.format(Locale.ROOT, format, values));
    table.append('\n');
  }

  private double rms(ToDoubleFunction<Match> error) {
    return Math.sqrt(
        matches.stream().mapToDouble(error).map(e -> e * e).average().orElse(Double.NaN));
  }

  private double percentile(ToDoubleFunction<Match> error) {
    double[] sorted = matches.stream().mapToDouble(error).sorted().toArray();
    return sorted.length == 0 ? Double.NaN : sorted[(int) (0.95 * (sorted.length - 1))];
  }

  private double share(Predicate<Match> right) {
    return matches.stream().filter(right).count() / (double) matches.size();
  }
}
