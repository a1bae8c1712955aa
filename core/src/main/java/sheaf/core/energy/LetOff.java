package sheaf.core.energy;

/** How much less a compound holds than it peaks. */
public final class LetOff {

  private LetOff() {}

  /**
   * Let-off in percent: 100 (peak - holding) / peak (ASTM F1880, by its title; the worked example
   * 44 and 16 lb gives 63.6 %).
   *
   * @param peak draw weight, above zero, in any unit
   * @param holding weight in the same unit, from zero to the peak
   * @throws IllegalArgumentException when a weight is out of range
   */
  public static double percent(double peak, double holding) {
    if (!(peak > 0) || !(holding >= 0 && holding <= peak)) {
      throw new IllegalArgumentException(
          "a bow holds at most its peak: " + holding + " of " + peak);
    }
    return 100 * (peak - holding) / peak;
  }
}
