package sheaf.desk.report;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import sheaf.core.energy.BowNumbers;
import sheaf.core.energy.Figure;
import sheaf.core.flight.BowFlight;
import sheaf.core.layout.UnitSystem;
import sheaf.core.measure.Inches;
import sheaf.core.record.Drifted;
import sheaf.core.record.Taken;

/** What a record's measures come to, how its arrow flies, and what moved since another visit. */
public final class NumbersText {

  private NumbersText() {}

  /** A line for each number, cautions first; empty when nothing was measured to compute with. */
  public static String of(BowNumbers numbers, int width) {
    StringBuilder text = new StringBuilder();
    numbers.cautions().forEach(c -> text.append(Text.hanging("  CAUTION: ", c, width)));
    int widest = numbers.figures().stream().mapToInt(f -> f.label().length()).max().orElse(0);
    for (Figure figure : numbers.figures()) {
      String gap = " ".repeat(widest - figure.label().length());
      text.append("  ").append(figure.label()).append(gap).append("  ");
      text.append((value(figure) + " " + figure.unit()).stripTrailing()).append('\n');
    }
    return text.isEmpty() ? "" : "Numbers\n" + text;
  }

  /** A figure's value with the decimals that it deserves. */
  static String value(Figure figure) {
    return String.format(Locale.ROOT, "%." + figure.decimals() + "f", figure.value());
  }

  /** A table of an arrow's flight. */
  public static String of(BowFlight flight, UnitSystem units, int width) {
    boolean marks = flight.rows().stream().anyMatch(row -> row.mark().isPresent());
    StringBuilder text = new StringBuilder("Flight\n");
    text.append("  Distance  Height over the aim      Drop    Time   Speed  Falling")
        .append(marks ? "    Mark" : "");
    text.append('\n');
    for (BowFlight.Row row : flight.rows()) {
      text.append(
          String.format(
              Locale.ROOT,
              "  %8s  %19s  %8s  %5.2f s  %3.0f ft/s  %4.1f deg",
              row.distance(),
              height(row.heightMm(), units),
              length(row.dropMm(), units),
              row.seconds(),
              row.feetPerSecond(),
              row.fallDegrees()));
      row.mark().ifPresent(mark -> text.append(String.format(Locale.ROOT, "  %6.1f", mark)));
      text.append('\n');
    }
    String set =
        "Heights with the sight set for %s and the eye as far over the arrow as '--eye' says. With the same arrow, hits that differ say that peep or sight have moved."
            .formatted(flight.set());
    return text + Text.hanging("  ", set, width);
  }

  private static String height(double mm, UnitSystem units) {
    String length = length(Math.abs(mm), units);
    return Math.abs(mm) < 0.5 ? "0" : length + (mm < 0 ? " low" : " high");
  }

  private static String length(double mm, UnitSystem units) {
    return units == UnitSystem.INCHES
        ? Inches.decimal(mm)
        : String.format(Locale.ROOT, "%.0f mm", mm);
  }

  /**
   * What moved since an earlier visit, in the order in which to restore it.
   *
   * @param since the earlier job
   */
  public static String of(List<Drifted> drifted, String since, int width) {
    StringBuilder text = new StringBuilder("Since job " + since + "\n");
    if (drifted.isEmpty()) {
      return text
          + Text.hanging(
              "  ",
              "Nothing that was measured both times has moved more than the shop tolerates.",
              width);
    }
    text.append(Text.hanging("  ", "Restore in this order, and measure again after each:", width));
    int number = 1;
    for (Drifted one : drifted) {
      String was = words(one.was());
      String line =
          "%s: left at %s, found at %s%s".formatted(one.label(), was, words(one.is()), change(one));
      text.append(Text.hanging("  " + number++ + ". ", line + ".", width));
    }
    text.append(
        Text.hanging(
            "  ",
            "Strings and cables need a press: the maker's instructions, never with a damaged bow.",
            width));
    return text.toString();
  }

  private static String words(Taken taken) {
    return taken.words().orElse("?");
  }

  private static String change(Drifted drifted) {
    Optional<String> unit = drifted.was().unit().map(u -> " " + u.symbol());
    return drifted.change() == 0
        ? ""
        : String.format(Locale.ROOT, ", %+.3f%s", drifted.change(), unit.orElse(""))
            .replaceFirst("0+( |$)", "$1");
  }
}
