package sheaf.scanner.hole;

/**
 * A circle on the flat sheet, in its pixels.
 *
 * @param x of its centre
 * @param y of its centre
 * @param radius of the shaft
 */
public record Circle(double x, double y, double radius) {

  /** The distance between two centres, in pixels. */
  public double distanceTo(Circle other) {
    return Math.hypot(x - other.x, y - other.y);
  }
}
