package sheaf.samples;

import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import sheaf.core.reading.ReadingState;
import sheaf.core.reading.TearReading;
import sheaf.samples.TearScore.Match;

/**
 * Figures over many scores of tear sheets.
 *
 * @param scores of the sheets
 */
public record TearFigures(List<TearScore> scores) {

  /** Copies the list. */
  public TearFigures {
    scores = List.copyOf(scores);
  }

  /** Root mean square error of the point's end, in millimetres. */
  public double pointRms() {
    return rms(Match::point);
  }

  /** Root mean square error of the tail's end, in millimetres. */
  public double tailRms() {
    return rms(Match::tail);
  }

  /**
   * Share of the sheets without a zone hit twice on which a person must look, or that are refused.
   */
  public double unsure() {
    List<TearScore> ordinary = scores.stream().filter(score -> !score.mustBeChecked()).toList();
    return ordinary.stream().filter(score -> score.state() != ReadingState.READ).count()
        / (double) ordinary.size();
  }

  /** Sheets that claim to be sure and are wrong. */
  public long silent() {
    return scores.stream().filter(TearScore::silentlyWrong).count();
  }

  /** Of nineteen tears in twenty the point's end is not farther off, in millimetres. */
  public double pointPercentile() {
    return percentile(Match::point);
  }

  /** The same of the tail's end. */
  public double tailPercentile() {
    return percentile(Match::tail);
  }

  /** Share of the true points that lie within the error stated. */
  public double pointsWithin() {
    return share(Match::pointWithin);
  }

  /** Share of the true tails that lie within the error stated. */
  public double tailsWithin() {
    return share(Match::tailWithin);
  }

  /** Share of the tears whose vanes are told. */
  public double vanesTold() {
    return share(match -> match.vanes() != TearReading.UNKNOWN_VANES);
  }

  /** Share of those told whose number is right. */
  public double vanesRight() {
    List<Match> told =
        matches().stream().filter(m -> m.vanes() != TearReading.UNKNOWN_VANES).toList();
    return told.stream().filter(Match::vanesRight).count() / (double) told.size();
  }

  /** How many arrows tore the sheets. */
  public long tears() {
    return scores.stream().mapToLong(score -> score.truth().tears().size()).sum();
  }

  /** Tears found where one arrow tore its zone. */
  public List<Match> matches() {
    return scores.stream().flatMap(score -> score.matches().stream()).toList();
  }

  /** The figures as a table for people. */
  public String table() {
    StringBuilder table = new StringBuilder();
    line(
        table,
        "sheets / tears / matched",
        "%d / %d / %d",
        scores.size(),
        tears(),
        matches().size());
    line(table, "point RMS / 95 % / worst", "%s", spread(Match::point));
    line(table, "tail RMS / 95 % / worst", "%s", spread(Match::tail));
    line(table, "length RMS / 95 % / worst", "%s", spread(m -> Math.abs(m.found() - m.length())));
    line(
        table,
        "within stated error",
        "point %.1f %%, tail %.1f %%",
        100 * pointsWithin(),
        100 * tailsWithin());
    line(
        table,
        "vanes told / of them right",
        "%.1f / %.1f %%",
        100 * vanesTold(),
        100 * vanesRight());
    line(
        table,
        "read / check / refused",
        "%d / %d / %d",
        count(ReadingState.READ),
        count(ReadingState.CHECK),
        count(ReadingState.REFUSED));
    line(table, "check or refused, unless hit twice", "%.1f %%", 100 * unsure());
    line(table, "silently wrong", "%d", silent());
    return table.toString();
  }

  private long count(ReadingState state) {
    return scores.stream().filter(score -> score.state() == state).count();
  }

  private static void line(StringBuilder table, String name, String format, Object... values) {
    table.append("%-36s ".formatted(name)).append(String.format(Locale.ROOT, format, values));
    table.append('\n');
  }

  private String spread(ToDoubleFunction<Match> error) {
    double worst = matches().stream().mapToDouble(error).max().orElse(Double.NaN);
    return String.format(
        Locale.ROOT, "%.2f / %.2f / %.2f mm", rms(error), percentile(error), worst);
  }

  private double percentile(ToDoubleFunction<Match> error) {
    double[] sorted = matches().stream().mapToDouble(error).sorted().toArray();
    return sorted.length == 0 ? Double.NaN : sorted[(int) (0.95 * (sorted.length - 1))];
  }

  private double rms(ToDoubleFunction<Match> error) {
    return Math.sqrt(
        matches().stream().mapToDouble(error).map(e -> e * e).average().orElse(Double.NaN));
  }

  private double share(Predicate<Match> right) {
    return matches().stream().filter(right).count() / (double) matches().size();
  }
}
