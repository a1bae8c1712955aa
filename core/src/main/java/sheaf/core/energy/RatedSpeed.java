package sheaf.core.energy;

import sheaf.core.measure.Unit;

/**
 * What a bow would shoot under the conditions that speeds are rated at: 70 lb peak, 30 in ATA draw,
 * an arrow of 350 gr, that is 5 gr/lb (ASTM F1544-11, 2.1.4).
 *
 * <p>The bow's moving parts take energy as if they were a mass K that flies along with the arrow
 * (P. Klopsteg, Physics of bows and arrows, American Journal of Physics 11, 1943): ½ (m + K) v² is
 * what the string gave, and that is taken to grow with peak weight times power stroke. K is not
 * known without a draw curve, so the speed is told as the range that K from {@value
 * #LIGHTEST_GRAINS} to {@value #HEAVIEST_GRAINS} gr gives: our own assumption, by which a 350 gr
 * arrow takes 73 to 88 % of it.
 *
 * @param lowFeetPerSecond the lower end
 * @param highFeetPerSecond the upper end
 */
public record RatedSpeed(double lowFeetPerSecond, double highFeetPerSecond) {

  private static final double LIGHTEST_GRAINS = 50;
  private static final double HEAVIEST_GRAINS = 130;
  private static final double RATED_POUNDS = 70;
  private static final double RATED_GRAINS = 350;
  private static final double RATED_DRAW_MM = Unit.INCH.convert(30, Unit.MILLIMETRE);

  /**
   * The rated speed of a bow.
   *
   * @param arrow as it was shot
   * @param peakPounds above zero
   * @param ataDrawMm draw length by the ATA
   * @param braceMm brace height; the power stroke must be above zero
   */
  public static RatedSpeed of(
      ArrowNumbers arrow, double peakPounds, double ataDrawMm, double braceMm) {
    double stroke = DrawLength.powerStrokeMm(ataDrawMm, braceMm);
    if (!(peakPounds > 0) || !(stroke > 0)) {
      throw new IllegalArgumentException(
          "a rated speed needs a peak weight and a power stroke: " + peakPounds + ", " + stroke);
    }
    double energy =
        RATED_POUNDS * DrawLength.powerStrokeMm(RATED_DRAW_MM, braceMm) / (peakPounds * stroke);
    double one = speed(arrow, energy, LIGHTEST_GRAINS);
    double other = speed(arrow, energy, HEAVIEST_GRAINS);
    return new RatedSpeed(Math.min(one, other), Math.max(one, other));
  }

  private static double speed(ArrowNumbers arrow, double energy, double extraGrains) {
    double masses = (arrow.grains() + extraGrains) / (RATED_GRAINS + extraGrains);
    return arrow.feetPerSecond() * Math.sqrt(energy * masses);
  }
}
