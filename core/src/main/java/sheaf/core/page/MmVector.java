package sheaf.core.page;

/**
 * A move on a page, in millimetres.
 *
 * @param dx millimetres to the right
 * @param dy millimetres down
 */
public record MmVector(double dx, double dy) {

  /** Length in millimetres, zero or more. */
  public double length() {
    return Math.hypot(dx, dy);
  }

  /** The same direction, {@code factor} times as long. */
  public MmVector times(double factor) {
    return new MmVector(dx * factor, dy * factor);
  }
}
