package sheaf.core.measure;

import java.math.BigDecimal;

/**
 * How far away the target stood, in the unit it was told in.
 *
 * @param value greater than zero, in {@code unit}
 * @param unit {@link Unit#YARD} or {@link Unit#METRE}
 */
public record Distance(double value, Unit unit) {

  /** Throws when the value is not finite and positive, or the unit is neither yards nor metres. */
  public Distance {
    if (unit != Unit.YARD && unit != Unit.METRE) {
      throw new IllegalArgumentException("a distance is told in yards or metres, not " + unit);
    }
    if (!(value > 0) || !Double.isFinite(value)) {
      throw new IllegalArgumentException("a distance must be finite and above zero: " + value);
    }
  }

  /** The distance in millimetres. */
  public double millimetres() {
    return unit.convert(value, Unit.MILLIMETRE);
  }

  /** As people write it: {@code 20 yd}, {@code 18.5 m}. */
  @Override
  public String toString() {
    String number = BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
    return number + " " + unit.symbol();
  }
}
