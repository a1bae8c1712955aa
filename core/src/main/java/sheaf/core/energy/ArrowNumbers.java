package sheaf.core.energy;

import sheaf.core.measure.Unit;

/**
 * Energy and momentum of an arrow: ½ m v² and m v, in SI units from exact definitions. The trade's
 * divisors 450 240 and 225 400 for grains and feet per second take two different values of free
 * fall; the exact ones are 450 436.68 and 225 218.34.
 *
 * @param grains mass with its point, above zero
 * @param feetPerSecond speed, above zero
 */
public record ArrowNumbers(double grains, double feetPerSecond) {

  private static final double KILOGRAMS_PER_GRAIN = Unit.GRAIN.siFactor().doubleValue();
  private static final double METRES_PER_FOOT = Unit.FEET_PER_SECOND.siFactor().doubleValue();
  private static final double NEWTONS_PER_POUND = Unit.POUND_FORCE.siFactor().doubleValue();

  /** Joules in a foot-pound: 0.3048 m times 4.448 221 615 260 5 N. */
  public static final double JOULES_PER_FOOT_POUND =
      Unit.POUND_FORCE.siFactor().multiply(Unit.FEET_PER_SECOND.siFactor()).doubleValue();

  /**
   * Below so many grains for each pound of peak weight bow makers do not let their bows be shot:
   * close to a dry fire. Also the rating arrow of ASTM F1544-11.
   */
  public static final double LEAST_GRAINS_PER_POUND = 5;

  /** Throws when a component is out of the range it is described with. */
  public ArrowNumbers {
    if (!(grains > 0) || !(feetPerSecond > 0)) {
      throw new IllegalArgumentException(
          "an arrow needs a mass and a speed: " + grains + ", " + feetPerSecond);
    }
  }

  private double kilograms() {
    return grains * KILOGRAMS_PER_GRAIN;
  }

  private double metresPerSecond() {
    return feetPerSecond * METRES_PER_FOOT;
  }

  /** Kinetic energy in joules. */
  public double joules() {
    return kilograms() * metresPerSecond() * metresPerSecond() / 2;
  }

  /** Kinetic energy in foot-pounds. */
  public double footPounds() {
    return joules() / JOULES_PER_FOOT_POUND;
  }

  /** Momentum in kilogram metres per second. */
  public double kilogramMetresPerSecond() {
    return kilograms() * metresPerSecond();
  }

  /** Momentum in pound-force seconds, which is slug feet per second. */
  public double poundSeconds() {
    return kilogramMetresPerSecond() / NEWTONS_PER_POUND;
  }

  /**
   * Mass for each pound of peak weight. From {@value #LEAST_GRAINS_PER_POUND} up is not said to be
   * safe: the bow maker's own limit holds.
   *
   * @param pounds peak draw weight, above zero
   */
  public static double grainsPerPound(double grains, double pounds) {
    return grains / pounds;
  }
}
