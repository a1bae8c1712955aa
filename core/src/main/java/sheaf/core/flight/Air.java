package sheaf.core.flight;

/**
 * Air, as far as it slows an arrow.
 *
 * @param kilogramsPerCubicMetre density, zero or more; zero is a vacuum
 */
public record Air(double kilogramsPerCubicMetre) {

  /** At sea level and 15 °C: 1.225 kg/m³ (ISO 2533, Standard Atmosphere). */
  public static final Air STANDARD = new Air(1.225);

  /** No air at all. */
  public static final Air NONE = new Air(0);

  /** Specific gas constants of dry air and of water vapour, J/(kg K). */
  private static final double DRY = 287.05;

  private static final double VAPOUR = 461.5;
  private static final double ZERO_CELSIUS = 273.15;

  /** Throws when the density is negative or not finite. */
  public Air {
    if (!(kilogramsPerCubicMetre >= 0) || !Double.isFinite(kilogramsPerCubicMetre)) {
      throw new IllegalArgumentException(
          "a density must be finite and not negative: " + kilogramsPerCubicMetre);
    }
  }

  /**
   * The density of moist air as a mixture of ideal gases. The pressure of saturated vapour is 611.2
   * Pa · exp(17.62 t / (243.12 + t)) by Magnus (WMO-No. 8, Guide to Meteorological Instruments and
   * Methods of Observation, annex 4.B).
   *
   * @param celsius from -45 to 60, where Magnus's formula holds
   * @param pascals pressure at the place itself, above zero
   * @param humidity relative, from 0 to 1
   */
  public static Air of(double celsius, double pascals, double humidity) {
    if (!(celsius >= -45 && celsius <= 60)
        || !(pascals > 0)
        || !Double.isFinite(pascals)
        || !(humidity >= 0 && humidity <= 1)) {
      throw new IllegalArgumentException(
          "air needs -45 to 60 °C, a pressure above zero and a humidity of 0 to 1: "
              + (celsius + ", " + pascals + ", " + humidity));
    }
    double vapour = humidity * 611.2 * Math.exp(17.62 * celsius / (243.12 + celsius));
    double kelvin = celsius + ZERO_CELSIUS;
    return new Air((pascals - vapour) / (DRY * kelvin) + vapour / (VAPOUR * kelvin));
  }
}
