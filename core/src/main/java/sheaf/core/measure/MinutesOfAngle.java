package sheaf.core.measure;

/**
 * Offsets on a target as angles, in minutes: 1/60 of a degree (SI Brochure, 9th edition, table 8).
 *
 * <p>The rule of thumb "one inch at 100 yards" is 4.5 % less than a true minute, which is 1.0472 in
 * there.
 */
public final class MinutesOfAngle {

  private static final double MINUTES_PER_DEGREE = 60;

  private MinutesOfAngle() {}

  /**
   * The angle between the line to the aim and the line to a place beside it: atan(offset/distance).
   *
   * @param offsetMm along the target, square to the line of sight, in millimetres; finite, and its
   *     sign is kept
   * @param distance to the target
   * @return minutes of angle, between -5400 and 5400
   * @throws IllegalArgumentException when the offset is not finite
   */
  public static double of(double offsetMm, Distance distance) {
    if (!Double.isFinite(offsetMm)) {
      throw new IllegalArgumentException("an offset must be finite: " + offsetMm);
    }
    return Math.toDegrees(Math.atan(offsetMm / distance.millimetres())) * MINUTES_PER_DEGREE;
  }
}
