package sheaf.desk.profile;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import sheaf.core.measure.Unit;

/**
 * How far a measure may drift between two visits before it is worth telling.
 *
 * @param value above zero, in {@code unit}; a drift of more than this is told
 * @param unit the unit it was written in
 */
public record Tolerance(double value, Unit unit) {

  private static final Pattern WRITTEN =
      Pattern.compile(
          "(?:(?:(?<whole>\\d{1,4})\\s+)?(?<top>\\d{1,4})/(?<bottom>\\d{1,4})"
              + "|(?<decimal>\\d{1,6}(?:\\.\\d{1,6})?))\\s*(?<unit>\\p{L}[\\p{L}/]*)");

  /** Inches are read to no finer fraction than this in the trade. */
  private static final int FINEST_FRACTION = 64;

  /** Throws when the value is not finite and above zero. */
  public Tolerance {
    if (!(value > 0) || !Double.isFinite(value)) {
      throw new IllegalArgumentException("must be above zero");
    }
  }

  /**
   * Reads a number and its unit as people write them: {@code 1/16 in}, {@code 1 1/8 in}, {@code 1.5
   * mm}, {@code 3 ft/s}; {@code fps} is the trade's word for {@code ft/s}.
   *
   * @throws IllegalArgumentException when it is none, in words that go behind what it is for
   */
  public static Tolerance of(String text) {
    Matcher written = WRITTEN.matcher(text.strip());
    if (!written.matches()) {
      throw new IllegalArgumentException(
          "must be a number and a unit such as \"1/16 in\" or \"1.5 mm\", not '" + text + "'");
    }
    return new Tolerance(
        number(written),
        unit(written.group("unit"))
            .orElseThrow(
                () ->
                    new IllegalArgumentException(
                        "has a unit that is not known, '" + written.group("unit") + "'")));
  }

  private static double number(Matcher written) {
    if (written.group("decimal") != null) {
      return Double.parseDouble(written.group("decimal"));
    }
    double bottom = Double.parseDouble(written.group("bottom"));
    if (bottom == 0) {
      throw new IllegalArgumentException("has a fraction with nothing under its line");
    }
    String whole = written.group("whole");
    double top = Double.parseDouble(written.group("top"));
    return (whole == null ? 0 : Double.parseDouble(whole)) + top / bottom;
  }

  private static Optional<Unit> unit(String symbol) {
    return switch (symbol) {
      case "fps" -> Optional.of(Unit.FEET_PER_SECOND);
      case "turn" -> Optional.of(Unit.TURN);
      default -> Unit.ofSymbol(symbol);
    };
  }

  /**
   * The tolerance in another unit.
   *
   * @throws IllegalArgumentException when {@code other} measures something else
   */
  public double in(Unit other) {
    return unit.convert(value, other);
  }

  /** As people write it: {@code 1/16 in}, {@code 1.5 mm}. */
  @Override
  public String toString() {
    double parts = value * FINEST_FRACTION;
    String number =
        unit == Unit.INCH && parts == Math.rint(parts)
            ? fraction((long) parts)
            : BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    return number + " " + unit.symbol();
  }

  private static String fraction(long parts) {
    long whole = parts / FINEST_FRACTION;
    long rest = parts % FINEST_FRACTION;
    if (rest == 0) {
      return Long.toString(whole);
    }
    long divisor = Long.lowestOneBit(rest);
    String fraction = rest / divisor + "/" + FINEST_FRACTION / divisor;
    return whole == 0 ? fraction : whole + " " + fraction;
  }
}
