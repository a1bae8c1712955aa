package sheaf.core.group;

import java.util.OptionalDouble;

/**
 * A number found from few arrows, and how far the true one may be from it.
 *
 * @param value what was found, finite
 * @param margin the true number lies within this much of the value with 95 % confidence; finite and
 *     zero or more; empty when the arrows are too few to say
 */
public record Estimate(double value, OptionalDouble margin) {

  /** Throws when a component is out of the range it is described with. */
  public Estimate {
    if (!Double.isFinite(value) || !(margin.orElse(0) >= 0) || !Double.isFinite(margin.orElse(0))) {
      throw new IllegalArgumentException(
          "an estimate must be finite and its margin not negative: " + value + ", " + margin);
    }
  }

  /** The same in another unit. */
  public Estimate times(double factor) {
    return new Estimate(
        value * factor,
        margin.isPresent()
            ? OptionalDouble.of(margin.getAsDouble() * Math.abs(factor))
            : OptionalDouble.empty());
  }

  /** The lower end of the interval; the value itself without a margin. */
  public double low() {
    return value - margin.orElse(0);
  }

  /** The upper end of the interval; the value itself without a margin. */
  public double high() {
    return value + margin.orElse(0);
  }

  /**
   * Whether the true number is shown to differ from zero.
   *
   * @param tolerance the largest number that does not matter, in the value's unit
   */
  public Claim differsFromZero(double tolerance) {
    if (margin.isEmpty()) {
      return Claim.NOT_ENOUGH_ARROWS;
    }
    if (low() > 0 || high() < 0) {
      return Claim.SHOWN;
    }
    boolean small = low() >= -tolerance && high() <= tolerance;
    return small ? Claim.NOT_SHOWN : Claim.NOT_ENOUGH_ARROWS;
  }
}
