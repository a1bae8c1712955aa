package sheaf.samples.scan;

/**
 * How a point of light is drawn out while the camera moves.
 *
 * @param reach farthest pixel that it touches, across or down
 * @param shares of the light, row by row
 */
record Streak(int reach, float[] shares) {

  /** A camera at rest. */
  static final Streak NONE = new Streak(0, new float[] {1});

  private static final int STEPS = 24;

  /** A straight and even move, in pixels. */
  static Streak of(double dx, double dy) {
    int reach = (int) Math.ceil(Math.max(Math.abs(dx), Math.abs(dy)) / 2);
    if (reach == 0) {
      return NONE;
    }
    Streak streak = new Streak(reach, new float[(2 * reach + 1) * (2 * reach + 1)]);
    for (int i = 0; i < STEPS; i++) {
      double way = (i + 0.5) / STEPS - 0.5;
      streak.drop(dx * way, dy * way);
    }
    return streak;
  }

  /** One step's light falls on the four pixels around it. */
  private void drop(double x, double y) {
    int left = (int) Math.floor(x);
    int top = (int) Math.floor(y);
    for (int i = 0; i < 4; i++) {
      int column = left + i % 2;
      int row = top + i / 2;
      double share = (1 - Math.abs(x - column)) * (1 - Math.abs(y - row)) / STEPS;
      if (share > 0) {
        shares[(row + reach) * (2 * reach + 1) + column + reach] += (float) share;
      }
    }
  }

  /** The share that a pixel gets which lies so far from the point. */
  float share(int dx, int dy) {
    return shares[(dy + reach) * (2 * reach + 1) + dx + reach];
  }
}
