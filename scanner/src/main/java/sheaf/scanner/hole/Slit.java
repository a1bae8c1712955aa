package sheaf.scanner.hole;

/**
 * A line that runs outward from a hole.
 *
 * @param angle of its end as seen from the axis, in radians
 * @param length from the axis to its end, in pixels
 * @param strength share of its way on which it was seen, 0 to 1
 */
public record Slit(double angle, double length, double strength) {

  /** The angle between two slits, 0 to pi. */
  public double angleTo(Slit other) {
    double difference = Math.abs(angle - other.angle) % (2 * Math.PI);
    return Math.min(difference, 2 * Math.PI - difference);
  }
}
