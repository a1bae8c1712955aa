package sheaf.scanner.hole;

import java.util.Arrays;

/**
 * What is open around a place.
 *
 * <p>Its middle is found by moving to the centroid of a disc again and again (mean shift; Comaniciu
 * and Meer, IEEE PAMI 24(5), 2002). Where print hides a part of the disc, the centroid of the part
 * that is free is taken out of it, so that a hole half on print does not drift off the print.
 *
 * @param x of its middle, in pixels of the whole sheet
 * @param y of its middle, in pixels of the whole sheet
 * @param share of the disc that is open, of what can be seen of it
 * @param seen share of the disc that print does not hide
 * @param reach how far from the middle the opening goes in most directions, in pixels
 */
record Opening(double x, double y, double share, double seen, double reach) {

  private static final int STEPS = 20;

  /** Moves smaller than this many reduced pixels end the search. */
  private static final double SETTLED = 0.05;

  private static final int ANGLES = 72;

  /**
   * In this share of the directions the opening ends nearer: the rest are where flaps are gone and
   * the shaft's own circle is the edge.
   */
  private static final double MOST = 0.8;

  /** From this on a place counts as open. */
  private static final double OPEN = 0.5;

  /**
   * Settles on a middle.
   *
   * @param radius of the disc, a little more than the shaft's, in pixels of the whole sheet
   */
  static Opening near(Seeds seeds, double x, double y, double radius) {
    double scale = Seeds.REDUCTION;
    double small = radius / scale;
    double cx = (x + 0.5) / scale - 0.5;
    double cy = (y + 0.5) / scale - 0.5;
    Grid open = Grid.around(seeds.map(), cx, cy, 4 * small);
    Grid free = Grid.around(seeds.free(), cx, cy, 4 * small);
    Disc disc = Disc.of(open, free, cx, cy, small);
    for (int i = 0; i < STEPS && disc.open > 0; i++) {
      double dx = disc.openX / disc.open - disc.freeX / disc.free;
      double dy = disc.openY / disc.open - disc.freeY / disc.free;
      cx += dx;
      cy += dy;
      disc = Disc.of(open, free, cx, cy, small);
      if (Math.hypot(dx, dy) < SETTLED) {
        break;
      }
    }
    return new Opening(
        (cx + 0.5) * scale - 0.5,
        (cy + 0.5) * scale - 0.5,
        disc.free > 0 ? disc.open / disc.free : 0,
        disc.free / disc.all,
        scale * reach(open, free, cx, cy, 2 * small));
  }

  /** Sums over a disc: of all, of what is free, of what is open, and their first moments. */
  private record Disc(
      double all,
      double free,
      double freeX,
      double freeY,
      double open,
      double openX,
      double openY) {

    static Disc of(Grid open, Grid free, double cx, double cy, double radius) {
      double[] sums = new double[7];
      int reach = (int) Math.ceil(radius);
      for (int dy = -reach; dy <= reach; dy++) {
        for (int dx = -reach; dx <= reach; dx++) {
          if (dx * dx + dy * dy <= radius * radius) {
            double f = free.at(cx + dx, cy + dy);
            double o = Math.min(f, open.at(cx + dx, cy + dy));
            sums[0]++;
            sums[1] += f;
            sums[2] += f * dx;
            sums[3] += f * dy;
            sums[4] += o;
            sums[5] += o * dx;
            sums[6] += o * dy;
          }
        }
      }
      return new Disc(sums[0], sums[1], sums[2], sums[3], sums[4], sums[5], sums[6]);
    }
  }

  private static double reach(Grid open, Grid free, double cx, double cy, double farthest) {
    double[] ends = new double[ANGLES];
    int count = 0;
    for (int a = 0; a < ANGLES; a++) {
      double cos = Math.cos(2 * Math.PI * a / ANGLES);
      double sin = Math.sin(2 * Math.PI * a / ANGLES);
      double end = 0;
      boolean hidden = false;
      for (double r = 1; r < farthest; r += 0.25) {
        double px = cx + r * cos;
        double py = cy + r * sin;
        if (free.at(px, py) < OPEN) {
          hidden = true;
          break;
        }
        if (open.at(px, py) >= OPEN) {
          end = r;
        } else if (r > end + 2) {
          break;
        }
      }
      if (!hidden) {
        ends[count++] = end;
      }
    }
    if (count == 0) {
      return 0;
    }
    double[] sorted = Arrays.copyOf(ends, count);
    Arrays.sort(sorted);
    return sorted[(int) (MOST * (count - 1))];
  }
}
