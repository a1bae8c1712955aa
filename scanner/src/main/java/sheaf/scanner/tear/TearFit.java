package sheaf.scanner.tear;

import sheaf.scanner.hole.MeanPlace;
import sheaf.scanner.hole.Seeds;

/**
 * Fits a tear's two ends to what the cells of a sheet show: the likeliest place of each, and how
 * far off it may be.
 */
final class TearFit {

  /** Steps by which the ends are moved, in millimetres, from coarse to fine. */
  private static final double[] STEPS = {2, 1, 0.5, 0.25, 0.12};

  /** Moves of both ends together and of each by itself. */
  private static final double[][] MOVES = {
    {1, 0, 1, 0}, {0, 1, 0, 1}, {1, 0, 0, 0}, {0, 1, 0, 0}, {0, 0, 1, 0}, {0, 0, 0, 1}
  };

  private static final double[][] POINT_MOVES = {{1, 0, 0, 0}, {0, 1, 0, 0}};

  /** Below this step every cell counts, else every second one across and down. */
  private static final double FINE_STEP = 0.3;

  /** Most rounds of moves at one step. */
  private static final int ROUNDS = 25;

  /**
   * Neighbouring cells look alike, so that many of them say no more than one: log odds count by
   * this share. So chosen that the stated errors come true.
   */
  static final double SHARE = 0.01;

  /** An end's place is averaged over places so far around the likeliest, in millimetres. */
  private static final double AROUND = 1.6;

  private static final double PITCH = 0.4;

  private final TornMap map;
  private final TearOdds odds;

  TearFit(TornMap map, Seeds.Kind kind) {
    this.map = map;
    this.odds = TearOdds.of(kind);
  }

  /** How much all cells together speak for a tear. */
  double score(Capsule tear) {
    return score(tear, 1);
  }

  private double score(Capsule tear, int stride) {
    double[] sum = {0};
    TearCells.visit(map, tear, stride, index -> sum[0] += odds.at(index));
    return sum[0] * stride * stride;
  }

  /** Moves the ends, separately and together, until the cells speak for no other place. */
  Capsule settled(Capsule start) {
    return settled(start, MOVES);
  }

  /** Moves the point's end alone. */
  Capsule pointSettled(Capsule start) {
    return settled(start, POINT_MOVES);
  }

  private Capsule settled(Capsule start, double[][] moves) {
    Capsule best = start;
    for (double step : STEPS) {
      int stride = step < FINE_STEP ? 1 : 2;
      double highest = score(best, stride);
      boolean moved = true;
      for (int round = 0; moved && round < ROUNDS; round++) {
        moved = false;
        for (double[] move : moves) {
          for (double by : new double[] {-step, step}) {
            Capsule other = best.moved(by * move[0], by * move[1], by * move[2], by * move[3]);
            double score = score(other, stride);
            if (score > highest) {
              highest = score;
              best = other;
              moved = true;
            }
          }
        }
      }
    }
    return best;
  }

  /**
   * Where an end is.
   *
   * @param x the mean of all that is likely
   * @param y the same, down
   * @param spread standard deviation in each direction, in millimetres
   */
  record End(double x, double y, double spread) {

    /** To another place, in millimetres. */
    double distanceTo(End other) {
      return Math.hypot(x - other.x, y - other.y);
    }
  }

  /** The point's end, the tail's held. */
  End point(Capsule tear) {
    return end(tear, 1, 0, tear.pointX(), tear.pointY());
  }

  /** The tail's end, the point's held. */
  End tail(Capsule tear) {
    return end(tear, 0, 1, tear.tailX(), tear.tailY());
  }

  private End end(Capsule tear, double point, double tail, double x, double y) {
    double highest = score(tear);
    MeanPlace mean = new MeanPlace();
    for (double dy = -AROUND; dy <= AROUND; dy += PITCH) {
      for (double dx = -AROUND; dx <= AROUND; dx += PITCH) {
        Capsule other = tear.moved(point * dx, point * dy, tail * dx, tail * dy);
        mean.add(Math.exp(SHARE * (score(other) - highest)), dx, dy);
      }
    }
    return new End(x + mean.x(), y + mean.y(), mean.spread());
  }
}
