package sheaf.samples.scene;

import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;

/** An office punch by ISO 838: round holes of 6 mm, 80 mm apart, 12 mm from the edge. */
public final class OfficePunch {

  /** Between the middles of a pair, in millimetres. */
  public static final double APART = 80;

  /** From the edge to the middles, in millimetres. */
  public static final double INSET = 12;

  private static final double RADIUS = 3;

  private OfficePunch() {}

  /**
   * Punches a hole.
   *
   * @param light angle from which the light comes, in radians
   */
  public static void through(Page page, MmPoint at, Backdrop behind, double light) {
    page.take(
        MmRect.square(at, 2 * RADIUS + 2),
        (x, y) -> RADIUS - Math.hypot(x - at.x(), y - at.y()),
        behind,
        light);
  }
}
