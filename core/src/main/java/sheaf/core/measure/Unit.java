package sheaf.core.measure;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * The units that sheets are filled in with and results are told in.
 *
 * <p>Every factor is exact. Inch, yard, foot and grain follow from the international yard and pound
 * agreement of 1959 (1 yd = 0.9144 m, 1 lb = 0.453 592 37 kg, 7000 gr = 1 lb); the pound-force also
 * from the standard acceleration of free fall, 9.806 65 m/s² (3rd General Conference on Weights and
 * Measures, 1901).
 */
public enum Unit {
  /** Thousandth of a metre. */
  MILLIMETRE("mm", Dimension.LENGTH, exact("0.001")),
  /** One thirty-sixth of a yard: 25.4 mm. */
  INCH("in", Dimension.LENGTH, exact("0.0254")),
  /** International yard. */
  YARD("yd", Dimension.LENGTH, exact("0.9144")),
  /** SI base unit. */
  METRE("m", Dimension.LENGTH, BigDecimal.ONE),
  /** The weight of one pound under standard gravity, as draw weight is told. */
  POUND_FORCE("lb", Dimension.FORCE, exact("0.45359237").multiply(exact("9.80665"))),
  /** SI unit of force. */
  NEWTON("N", Dimension.FORCE, BigDecimal.ONE),
  /** One seven-thousandth of a pound, as arrow mass is told. */
  GRAIN("gr", Dimension.MASS, exact("0.45359237").divide(exact("7000"))),
  /** Thousandth of a kilogram. */
  GRAM("g", Dimension.MASS, exact("0.001")),
  /** One third of a yard each second. */
  FEET_PER_SECOND("ft/s", Dimension.SPEED, exact("0.9144").divide(exact("3"))),
  /** SI unit of speed. */
  METRES_PER_SECOND("m/s", Dimension.SPEED, BigDecimal.ONE),
  /** A whole turn of a screw, counted; deliberately not told as an angle in radians. */
  TURN("turns", Dimension.TURNS, BigDecimal.ONE);

  /** What a unit measures; only units of one dimension convert into each other. */
  public enum Dimension {
    /** In metres. */
    LENGTH,
    /** In newtons. */
    FORCE,
    /** In kilograms. */
    MASS,
    /** In metres per second. */
    SPEED,
    /** Counted turns. */
    TURNS
  }

  private final String symbol;
  private final Dimension dimension;
  private final BigDecimal siFactor;

  /**
   * By how many powers of ten it is smaller than its SI unit; empty where it is by another factor.
   */
  private final OptionalInt tenths;

  Unit(String symbol, Dimension dimension, BigDecimal siFactor) {
    this.symbol = symbol;
    this.dimension = dimension;
    this.siFactor = siFactor;
    boolean decimal = siFactor.unscaledValue().equals(BigInteger.ONE);
    this.tenths = decimal ? OptionalInt.of(siFactor.scale()) : OptionalInt.empty();
  }

  private static BigDecimal exact(String decimal) {
    return new BigDecimal(decimal);
  }

  /** The unit with exactly this symbol, such as {@code in}; empty when there is none. */
  public static Optional<Unit> ofSymbol(String symbol) {
    return Arrays.stream(values()).filter(unit -> unit.symbol.equals(symbol)).findFirst();
  }

  /** The symbol as printed after a number: {@code ft/s}. */
  public String symbol() {
    return symbol;
  }

  /** What this unit measures. */
  public Dimension dimension() {
    return dimension;
  }

  /** One of this unit in the SI unit of its dimension, without any rounding. */
  public BigDecimal siFactor() {
    return siFactor;
  }

  /**
   * Converts a value of this unit.
   *
   * @param value in this unit; any finite number, taken as the decimal that it prints as
   * @param to a unit of the same dimension
   * @return the value in {@code to}, exact but for the rounding to a double
   * @throws IllegalArgumentException when {@code to} has another dimension or the value is not
   *     finite
   */
  public double convert(double value, Unit to) {
    if (dimension != to.dimension) {
      throw new IllegalArgumentException(
          "cannot convert " + described() + " to " + to.described() + ": another dimension");
    }
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("a value to convert must be finite: " + value);
    }
    if (this == to) {
      return value;
    }
    BigDecimal inSi = BigDecimal.valueOf(value).multiply(siFactor);
    return to.tenths.isPresent()
        ? inSi.scaleByPowerOfTen(to.tenths.getAsInt()).doubleValue()
        : inSi.divide(to.siFactor, MathContext.DECIMAL128).doubleValue();
  }

  private String described() {
    return symbol + " (" + dimension.name().toLowerCase(Locale.ROOT) + ")";
  }
}
