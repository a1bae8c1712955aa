package sheaf.core.energy;

/** Where an arrow's weight lies, and how stiff its shaft is told to be. */
public final class Balance {

  /** 2 lb over 26 in against 1.94 lb over 28 in, by beam theory; 0.825 in print. */
  private static final double OLDER_OVER_ASTM = 2.0 * 26 * 26 * 26 / (1.94 * 28 * 28 * 28);

  private Balance() {}

  /**
   * Front of centre in percent: 100 (B - L/2) / L, with the ATA length from the nock's groove to
   * the front of the shaft (ASTM F1435, by its abstract; the formula as commonly given). Other
   * lengths give other figures, so the length must be told beside it.
   *
   * @param balancePoint from the nock's groove, in any unit
   * @param length of the shaft from the nock's groove, in the same unit
   * @throws IllegalArgumentException when the balance point is not on the shaft
   */
  public static double frontOfCentrePercent(double balancePoint, double length) {
    if (!(length > 0) || !(balancePoint >= 0 && balancePoint <= length)) {
      throw new IllegalArgumentException(
          "a balance point lies on the shaft: " + balancePoint + " of " + length);
    }
    return 100 * (balancePoint - length / 2) / length;
  }

  /**
   * The spine number by the older AMO method, with a 2 lb weight on a 26 in span, of a shaft whose
   * number is by ASTM F2031, 1.94 lb on 28 in: deflection goes with the weight and the cube of the
   * span.
   */
  public static double olderSpine(double astmSpine) {
    return OLDER_OVER_ASTM * astmSpine;
  }
}
