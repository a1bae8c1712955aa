package sheaf.core.page;

/**
 * A place on a page as designed, in millimetres from the page's top-left corner.
 *
 * @param x millimetres to the right
 * @param y millimetres down
 */
public record MmPoint(double x, double y) {

  /** Throws when a coordinate is not a finite number. */
  public MmPoint {
    if (!Double.isFinite(x) || !Double.isFinite(y)) {
      throw new IllegalArgumentException("a place on a page must be finite: " + x + ", " + y);
    }
  }

  /** This place moved by a vector. */
  public MmPoint plus(MmVector move) {
    return new MmPoint(x + move.dx(), y + move.dy());
  }

  /** The vector that leads from another place to this one. */
  public MmVector minus(MmPoint from) {
    return new MmVector(x - from.x, y - from.y);
  }

  /** The straight distance to another place, in millimetres. */
  public double distanceTo(MmPoint other) {
    return Math.hypot(x - other.x, y - other.y);
  }
}
