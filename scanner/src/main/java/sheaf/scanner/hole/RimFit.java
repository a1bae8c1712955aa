package sheaf.scanner.hole;

/**
 * Fits the shaft's circle to the rim of a torn hole.
 *
 * <p>A point tears paper: between the tears, flaps fold along the shaft's circle. Where a flap is
 * gone or folded away, the opening's edge is the circle; where it closes the hole again, its fold
 * shows as a faint line on the circle; at a tear, the opening reaches beyond it over a narrow
 * angle. So the circle is sought that has an edge, strong or faint, all along it, and plain paper
 * outside. Where print is known, nothing is said.
 */
final class RimFit {

  private static final int ANGLES = 96;

  /** Half the distance over which an edge is measured, in pixels. */
  private static final double HALF_STEP = 2.5;

  /** The rim may wander this far off the circle, in pixels. */
  private static final int WANDER = 2;

  /** Disturbance is sought from here to there outside the circle, in pixels. */
  private static final int OUTSIDE_FROM = 5;

  private static final int OUTSIDE_TO = 11;

  /** What a ring of openings all around the circle costs. */
  private static final double OUTSIDE_COST = 1;

  /** What differs from paper by this share of its tone is something else, where all is faint. */
  private static final double DIFFERENT = 0.05;

  /** Share of the angles that must be free of print for a rim to be judged at all. */
  private static final double LEAST_FREE = 0.45;

  private static final double[] COSINES = new double[ANGLES];
  private static final double[] SINES = new double[ANGLES];

  static {
    for (int i = 0; i < ANGLES; i++) {
      COSINES[i] = Math.cos(2 * Math.PI * i / ANGLES);
      SINES[i] = Math.sin(2 * Math.PI * i / ANGLES);
    }
  }

  /**
   * How a rim is sought.
   *
   * @param fullEdge contrast from which an edge counts fully; beyond it, contrast says no more
   * @param reach how far from the opening's middle the axis may lie, in pixels
   * @param offCost what lying that far off costs
   * @param darkInside whether only edges count whose inner side is the darker one
   * @param insideWorth what a disc that differs from paper all over is worth
   */
  record Manner(
      double fullEdge, double reach, double offCost, boolean darkInside, double insideWorth) {}

  private final Grid tone;
  private final Grid known;
  private final Manner manner;
  private final int least;
  private final int most;
  private double middleX;
  private double middleY;

  /**
   * Prepares a fit.
   *
   * @param tone darkness against paper
   * @param known above zero where print is known
   * @param manner of looking at edges
   * @param least smallest radius, in pixels
   * @param most largest radius, in pixels
   */
  RimFit(Grid tone, Grid known, Manner manner, double least, double most) {
    this.tone = tone;
    this.known = known;
    this.manner = manner;
    this.least = (int) Math.floor(least);
    this.most = (int) Math.ceil(most);
  }

  /**
   * The best circle with its centre within reach of the opening's middle. The nearer to it, the
   * likelier: the axis seldom lies far off.
   */
  Circle search(double x, double y) {
    middleX = x;
    middleY = y;
    double reach = manner.reach();
    Circle best = around(x, y, reach, 2.5, new Circle(x, y, least, Double.NEGATIVE_INFINITY));
    return around(best.x(), best.y(), 1.5, 0.75, best);
  }

  private Circle around(double x, double y, double reach, double step, Circle start) {
    Circle best = start;
    for (double dy = -reach; dy <= reach; dy += step) {
      for (double dx = -reach; dx <= reach; dx += step) {
        Circle here = at(x + dx, y + dy);
        if (here.score() > best.score()) {
          best = here;
        }
      }
    }
    return best;
  }

  /** The best radius around a centre. */
  private Circle at(double x, double y) {
    int from = least - WANDER;
    double[] rim = new double[most - least + 1];
    double[] outside = new double[most - least + 1];
    int[] free = new int[most - least + 1];
    double[] edges = new double[most + WANDER - from + 1];
    double[] open = new double[most + OUTSIDE_TO + 1];
    double[] inside = new double[most - least + 1];
    for (int a = 0; a < ANGLES; a++) {
      profile(x, y, a, from, edges);
      openness(x, y, a, open);
      if (manner.insideWorth() > 0) {
        addInside(x, y, a, inside);
      }
      for (int i = 0; i < rim.length; i++) {
        double strongest = strongest(edges, i);
        if (strongest >= 0) {
          rim[i] += strongest;
          outside[i] += mean(open, least + i + OUTSIDE_FROM, least + i + OUTSIDE_TO);
          free[i]++;
        }
      }
    }
    Circle best = new Circle(x, y, least, Double.NEGATIVE_INFINITY);
    double off = Math.hypot(x - middleX, y - middleY) / manner.reach();
    for (int i = 0; i < rim.length; i++) {
      double judged = Math.max(free[i], LEAST_FREE * ANGLES);
      double score =
          (rim[i] - OUTSIDE_COST * outside[i]) / judged
              - manner.offCost() * off * off
              + manner.insideWorth() * inside[i] / ANGLES;
      if (score > best.score()) {
        best = new Circle(x, y, least + i, score);
      }
    }
    return best;
  }

  /** Edges along a ray, 0 to 1; -1 where print hides them. */
  private void profile(double x, double y, int a, int from, double[] edges) {
    for (int i = 0; i < edges.length; i++) {
      double in = from + i - HALF_STEP;
      double out = from + i + HALF_STEP;
      double ix = x + in * COSINES[a];
      double iy = y + in * SINES[a];
      double ox = x + out * COSINES[a];
      double oy = y + out * SINES[a];
      boolean hidden = known.at(ix, iy) > 0 || known.at(ox, oy) > 0;
      double step = tone.at(ix, iy) - tone.at(ox, oy);
      double edge = manner.darkInside() ? Math.max(0, step) : Math.abs(step);
      edges[i] = hidden ? -1 : Math.min(1, edge / manner.fullEdge());
    }
  }

  private void openness(double x, double y, int a, double[] open) {
    for (int radius = least + OUTSIDE_FROM; radius < open.length; radius++) {
      double px = x + radius * COSINES[a];
      double py = y + radius * SINES[a];
      open[radius] =
          known.at(px, py) > 0 ? 0 : Math.min(1, Math.abs(tone.at(px, py)) / manner.fullEdge());
    }
  }

  /**
   * Adds how much of a ray up to each radius differs from paper, areas farther out counting more.
   */
  private void addInside(double x, double y, int a, double[] inside) {
    double differs = 0;
    double area = 0;
    for (int radius = 1; radius <= most; radius++) {
      double px = x + radius * COSINES[a];
      double py = y + radius * SINES[a];
      if (known.at(px, py) <= 0) {
        differs += radius * Math.min(1, Math.abs(tone.at(px, py)) / DIFFERENT);
        area += radius;
      }
      if (radius >= least && area > 0) {
        inside[radius - least] += differs / area;
      }
    }
  }

  private static double strongest(double[] edges, int at) {
    double strongest = -1;
    for (int i = at; i <= at + 2 * WANDER; i++) {
      strongest = Math.max(strongest, edges[i]);
    }
    return strongest;
  }

  private static double mean(double[] values, int from, int to) {
    double sum = 0;
    for (int i = from; i <= to; i++) {
      sum += values[i];
    }
    return sum / (to - from + 1);
  }
}
