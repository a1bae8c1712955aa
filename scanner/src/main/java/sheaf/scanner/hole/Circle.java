package sheaf.scanner.hole;

/**
 * A circle on the flat sheet, in its pixels.
 *
 * @param x of its centre
 * @param y of its centre
 * @param radius of the shaft
 */
record Circle(double x, double y, double radius) {

  double distanceTo(Circle other) {
    return Math.hypot(x - other.x, y - other.y);
  }
}
