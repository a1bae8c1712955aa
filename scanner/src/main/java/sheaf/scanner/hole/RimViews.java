package sheaf.scanner.hole;

/**
 * How likely the shaft's axis is at each pixel around a place where a hole may be, as its rim
 * tells. What was looked at once is remembered: a first search settles the radius, a second one
 * looks again from much the same centres.
 */
final class RimViews {

  /** Shafts are 4 to 10.4 mm thick: their radii in pixels. */
  static final int LEAST_RADIUS = 20;

  static final int MOST_RADIUS = 52;

  private final Closeup closeup;
  private final RimOdds odds;
  private final int left;
  private final int top;
  private final float[][] seen;
  private final int side;

  private RimViews(Closeup closeup, RimOdds odds, int left, int top, int side) {
    this.closeup = closeup;
    this.odds = odds;
    this.left = left;
    this.top = top;
    this.side = side;
    this.seen = new float[side * side][];
  }

  /**
   * Looks around a place.
   *
   * @param x of it, in pixels of the sheet
   * @param y of it
   * @param reach how far from it centres may lie, in pixels
   */
  static RimViews around(Surface surface, Seeds.Kind kind, double x, double y, int reach) {
    double needed = reach + RimProfile.LAST + RimProfile.MARGIN;
    return new RimViews(
        Closeup.of(surface, kind, x, y, needed),
        RimOdds.of(kind),
        (int) Math.round(x) - reach,
        (int) Math.round(y) - reach,
        2 * reach + 1);
  }

  /** The pixel in the middle of all that can be looked from. */
  int x() {
    return left + side / 2;
  }

  /** The same, down. */
  int y() {
    return top + side / 2;
  }

  /** Whether all centres within so many pixels of a place can be looked from. */
  boolean reach(double x, double y, int reach) {
    return x - reach >= left
        && y - reach >= top
        && x + reach <= left + side - 1
        && y + reach <= top + side - 1;
  }

  /** Log of how likely the axis is here for each radius, without the way off the middle. */
  float[] where(int x, int y) {
    int index = (y - top) * side + x - left;
    if (seen[index] == null) {
      seen[index] = odds.where(rim(x, y), LEAST_RADIUS, MOST_RADIUS);
    }
    return seen[index];
  }

  /** The rim as seen from a pixel. */
  RimProfile rim(int x, int y) {
    return RimProfile.around(closeup, x, y);
  }

  /** The odds that rims are judged by. */
  RimOdds odds() {
    return odds;
  }
}
