package sheaf.scanner.hole;

import sheaf.scanner.sheet.FlatSheet;

/**
 * The line on which a slit runs, from what was seen of it nearest to its hole and what was seen
 * farthest out. A blade cuts straight out from the axis, so the axis lies near that line.
 *
 * @param x of a place on it, in pixels of the sheet
 * @param y of that place
 * @param angle of its direction, in radians
 */
public record Heading(double x, double y, double angle) {

  /**
   * How far the axis lies beside the line of a blade's slit, in pixels, measured on made holes: the
   * paper does not tear quite where it is cut.
   */
  private static final double BESIDE = 0.45 * FlatSheet.PIXELS_PER_MM;

  /** The same of a line that is a tear's or a pen's in part, and the share of such lines. */
  private static final double ASTRAY = 1.2 * FlatSheet.PIXELS_PER_MM;

  private static final double STRAYS = 0.2;

  /** Log of how likely the axis is at a place, up to a constant. */
  double axisAt(double px, double py) {
    double aside = (px - x) * Math.sin(angle) - (py - y) * Math.cos(angle);
    return Math.log((1 - STRAYS) * bell(aside, BESIDE) + STRAYS * bell(aside, ASTRAY));
  }

  private static double bell(double off, double deviation) {
    double share = off / deviation;
    return Math.exp(-share * share / 2) / deviation;
  }
}
