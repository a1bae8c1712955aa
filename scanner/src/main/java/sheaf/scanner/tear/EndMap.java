package sheaf.scanner.tear;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * What {@link EndNet} says of each of a sheet's cells: planes for the odds of a tail and of a
 * point, for where the tail is (right, down, spread) and the point, for the way from the tail to
 * the point and back, for a bullet hole and for four vanes.
 *
 * @param left of the first cell, in millimetres on the page as designed
 * @param top the same, down
 * @param columns of cells
 * @param rows of cells
 * @param planes one after the other, row by row
 */
record EndMap(double left, double top, int columns, int rows, float[] planes) {

  /** The two sorts of ends, and where what is said of them stands. */
  enum Sort {
    TAIL(0, 2, 8),
    POINT(1, 5, 10);

    private final int odds;
    private final int place;
    private final int way;

    Sort(int odds, int place, int way) {
      this.odds = odds;
      this.place = place;
      this.way = way;
    }
  }

  private static final int BULLET = 12;

  private static final int FOUR = 13;

  /** Ways are said in tens of millimetres. */
  private static final double WAY_MM = 10;

  /** An end leads to the other one if that is nearer than this, in millimetres. */
  private static final double LED = 14;

  /** Ends nearer to each other than this are one, in millimetres. */
  private static final double SAME = 1;

  /** No weight is nothing, so that there is a mean. */
  private static final double TINY = 1e-9;

  /** Less likely ends are none. */
  private static final double LEAST = 0.03;

  /**
   * An end of a tear.
   *
   * @param x in millimetres on the page as designed
   * @param y the same, down
   * @param spread of what the net says of it, in millimetres
   * @param probability that there is one
   * @param wayX from here to the other end, in millimetres
   * @param wayY the same, down
   * @param bullet probability that both ends are the same
   * @param four probability that the arrow has four vanes
   */
  record End(
      double x,
      double y,
      double spread,
      double probability,
      double wayX,
      double wayY,
      double bullet,
      double four) {

    /** To another end, in millimetres. */
    double away(End other) {
      return Math.hypot(x - other.x, y - other.y);
    }

    /** How far the other end lies from where this one leads, in millimetres. */
    double astray(End other) {
      return Math.hypot(x + wayX - other.x, y + wayY - other.y);
    }

    /** Log odds that it is there. */
    double odds() {
      return Math.log(probability / (1 - probability));
    }
  }

  /** Ends of a sort, the likeliest first: peaks, and where the other sort's peaks lead nearby. */
  List<End> ends(Sort sort) {
    List<End> ends = new ArrayList<>(peaks(sort));
    for (End other : peaks(sort == Sort.TAIL ? Sort.POINT : Sort.TAIL)) {
      if (Math.hypot(other.wayX, other.wayY) < LED) {
        int column = cell(other.x + other.wayX - left);
        int row = cell(other.y + other.wayY - top);
        End led = end(sort, column, row, probability(sort, column, row));
        if (led.probability > LEAST && ends.stream().allMatch(end -> end.away(led) > SAME)) {
          ends.add(led);
        }
      }
    }
    ends.sort(Comparator.comparingDouble(End::probability).reversed());
    return ends;
  }

  private static int cell(double mm) {
    return (int) Math.floor(mm / EndNet.CELL_MM);
  }

  private List<End> peaks(Sort sort) {
    List<End> ends = new ArrayList<>();
    for (int row = 0; row < rows; row++) {
      for (int column = 0; column < columns; column++) {
        double here = probability(sort, column, row);
        if (here > LEAST && isPeak(sort, column, row, here)) {
          ends.add(end(sort, column, row, here));
        }
      }
    }
    return ends;
  }

  private boolean isPeak(Sort sort, int column, int row, double here) {
    for (int i = 0; i < 9; i++) {
      int x = column + i % 3 - 1;
      int y = row + i / 3 - 1;
      double there = probability(sort, x, y);
      if (there > here || there == here && i < 4) {
        return false;
      }
    }
    return true;
  }

  /** What the cells around a peak say, weighed by their odds. */
  private End end(Sort sort, int column, int row, double probability) {
    double[] sums = new double[8];
    for (int i = 0; i < 9; i++) {
      int x = column + i % 3 - 1;
      int y = row + i / 3 - 1;
      double weight = Math.max(TINY, probability(sort, x, y));
      double middleX = left + (x + 0.5) * EndNet.CELL_MM;
      double middleY = top + (y + 0.5) * EndNet.CELL_MM;
      double[] said = {
        middleX + at(sort.place, x, y),
        middleY + at(sort.place + 1, x, y),
        Math.exp(EndNet.MOST_LOG * Math.tanh(at(sort.place + 2, x, y) / EndNet.MOST_LOG)),
        middleX + WAY_MM * at(sort.way, x, y),
        middleY + WAY_MM * at(sort.way + 1, x, y),
        logistic(at(BULLET, x, y)),
        logistic(at(FOUR, x, y)),
        1
      };
      for (int k = 0; k < sums.length; k++) {
        sums[k] += weight * said[k];
      }
    }
    double x = sums[0] / sums[7];
    double y = sums[1] / sums[7];
    return new End(
        x,
        y,
        sums[2] / sums[7],
        probability,
        sums[3] / sums[7] - x,
        sums[4] / sums[7] - y,
        sums[5] / sums[7],
        sums[6] / sums[7]);
  }

  private double probability(Sort sort, int column, int row) {
    boolean in = column >= 0 && row >= 0 && column < columns && row < rows;
    return in ? logistic(at(sort.odds, column, row) - EndNet.SELDOM) : 0;
  }

  private double at(int plane, int column, int row) {
    int x = Math.max(0, Math.min(columns - 1, column));
    int y = Math.max(0, Math.min(rows - 1, row));
    return planes[(plane * rows + y) * columns + x];
  }

  private static double logistic(double odds) {
    return 1 / (1 + Math.exp(-odds));
  }
}
