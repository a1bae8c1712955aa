package sheaf.core.page;

/**
 * An upright rectangle on a page, in millimetres from the page's top-left corner.
 *
 * @param x left edge
 * @param y top edge
 * @param width greater than zero
 * @param height greater than zero
 */
public record MmRect(double x, double y, double width, double height) {

  /** Throws when the rectangle is empty or not finite. */
  public MmRect {
    if (!(width > 0) || !(height > 0) || !Double.isFinite(x + y + width + height)) {
      throw new IllegalArgumentException(
          "a rectangle must have a finite, positive size: " + width + " x " + height);
    }
  }

  /** A square around its centre. */
  public static MmRect square(MmPoint centre, double side) {
    return new MmRect(centre.x() - side / 2, centre.y() - side / 2, side, side);
  }

  /** Right edge. */
  public double right() {
    return x + width;
  }

  /** Bottom edge. */
  public double bottom() {
    return y + height;
  }

  /** The middle. */
  public MmPoint centre() {
    return new MmPoint(x + width / 2, y + height / 2);
  }

  /** The rectangle with every edge moved outward by {@code margin}; inward when negative. */
  public MmRect grow(double margin) {
    return new MmRect(x - margin, y - margin, width + 2 * margin, height + 2 * margin);
  }

  /** Whether a place lies inside or on the edge. */
  public boolean contains(MmPoint p) {
    return p.x() >= x && p.x() <= right() && p.y() >= y && p.y() <= bottom();
  }

  /** How far a place lies outside, in millimetres; 0 inside and on the edge. */
  public double distanceTo(MmPoint p) {
    double across = Math.max(0, Math.max(x - p.x(), p.x() - right()));
    double down = Math.max(0, Math.max(y - p.y(), p.y() - bottom()));
    return Math.hypot(across, down);
  }

  /** Whether another rectangle lies wholly inside. */
  public boolean contains(MmRect other) {
    return other.x >= x && other.y >= y && other.right() <= right() && other.bottom() <= bottom();
  }

  /** Whether the insides share any area; rectangles that only touch do not overlap. */
  public boolean overlaps(MmRect other) {
    return x < other.right() && other.x < right() && y < other.bottom() && other.y < bottom();
  }
}
