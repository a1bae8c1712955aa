package sheaf.scanner.hole;

/**
 * What is open around a place.
 *
 * <p>Its middle is found by moving to the centroid of a disc again and again (mean shift; Comaniciu
 * and Meer, IEEE PAMI 24(5), 2002). Where print hides a part of the disc, the centroid of the part
 * that is free is taken out of it, so that a hole half on print does not drift off the print.
 *
 * @param x of its middle, in pixels of the whole sheet
 * @param y of its middle, in pixels of the whole sheet
 * @param share of the disc that is open or disturbed, of what can be seen of it
 */
record Opening(double x, double y, double share) {

  /** What is open is gathered in a disc this much larger than the shaft's. */
  private static final double GATHER = 1.15;

  private static final int STEPS = 20;

  /** Moves smaller than this many reduced pixels end the search. */
  private static final double SETTLED = 0.05;

  /**
   * Settles on a middle. Where no opening can be told from paper, the middle of what is disturbed
   * stands for it.
   *
   * @param radius of the shaft, in pixels of the whole sheet
   */
  static Opening of(Seeds seeds, Seeds.Seed seed, double radius) {
    return seeds.kind() == Seeds.Kind.FAINT
        ? new Opening(seed.x(), seed.y(), seed.strength())
        : near(seeds, seed.x(), seed.y(), GATHER * radius);
  }

  private static Opening near(Seeds seeds, double x, double y, double radius) {
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
        disc.free > 0 ? disc.open / disc.free : 0);
  }

  /** Sums over a disc: of what is free, of what is open, and their first moments. */
  private record Disc(
      double free, double freeX, double freeY, double open, double openX, double openY) {

    static Disc of(Grid open, Grid free, double cx, double cy, double radius) {
      double[] sums = new double[6];
      int reach = (int) Math.ceil(radius);
      for (int dy = -reach; dy <= reach; dy++) {
        for (int dx = -reach; dx <= reach; dx++) {
          if (dx * dx + dy * dy <= radius * radius) {
            double f = free.at(cx + dx, cy + dy);
            double o = Math.min(f, open.at(cx + dx, cy + dy));
            sums[0] += f;
            sums[1] += f * dx;
            sums[2] += f * dy;
            sums[3] += o;
            sums[4] += o * dx;
            sums[5] += o * dy;
          }
        }
      }
      return new Disc(sums[0], sums[1], sums[2], sums[3], sums[4], sums[5]);
    }
  }
}
