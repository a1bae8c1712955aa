package sheaf.scanner.hole;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import sheaf.scanner.sheet.FlatSheet;

/**
 * How likely a hole's lines are for heads of each number of blades and each reach: all of one
 * archer's broadheads are alike, so what speaks for the same head at several holes adds up.
 */
final class BladeOdds {

  private static final double MM = FlatSheet.PIXELS_PER_MM;

  /** A head's blades, and how far they reach from the axis, in millimetres. */
  private record Head(int blades, double reach) {}

  /** Cutting diameters are 20 to 55 mm; heads of more than two blades are none of the widest. */
  private static final List<Head> HEADS = heads();

  /** Shares of a blade's way beyond the shaft at which kinds of lines begin. */
  private static final double[] SHARES = {0, 0.15, 0.4, 0.7, 0.88, 1.12, 1.5};

  /** How often a blade's slit is seen so far, as measured on 500 made broadheads' holes. */
  private static final double[] SLITS = {0.03, 0.045, 0.095, 0.125, 0.655, 0.033, 0.017};

  /** Lengths beyond the shaft, in millimetres. */
  private static final double[] LENGTHS = {0, 1.5, 2, 3, 4, 5, 6, 8, 10, 15, 20, 30};

  /**
   * How often a line at least so long is seen in any one direction from a hole that no blade cut,
   * as measured on 500 made field points' holes: tears, and what pens, creases and others left.
   */
  private static final double[] TEARS = {
    1, 0.26, 0.11, 0.04, 0.02, 0.014, 0.012, 0.009, 0.006, 0.002, 0.001, 0.0005
  };

  /** Nothing is less likely: a sheet may bear what none of the measured ones did. */
  private static final double LEAST = 3e-4;

  /** Blades that reach less than this beyond the shaft, in millimetres, are none. */
  private static final double SHORTEST = 3;

  private static final double NEVER = -30;

  private BladeOdds() {}

  private static List<Head> heads() {
    List<Head> heads = new ArrayList<>();
    for (int blades = HeadShape.FEWEST; blades <= HeadShape.MOST; blades++) {
      int widest = blades == 2 ? 28 : 20;
      for (int reach = 10; reach <= widest; reach++) {
        heads.add(new Head(blades, reach));
      }
    }
    return heads;
  }

  /**
   * Log odds for each head against a field point.
   *
   * @param others the lines that another hole's slit explains: they tell nothing
   */
  static double[] of(Circle hole, List<Slit> lines, BitSet others) {
    double[] odds = new double[HEADS.size()];
    for (int i = 0; i < odds.length; i++) {
      Head head = HEADS.get(i);
      double beyond = head.reach - hole.radius() / MM;
      odds[i] = beyond < SHORTEST ? NEVER : odds(hole, lines, others, head.blades, beyond);
    }
    return odds;
  }

  private static double odds(
      Circle hole, List<Slit> lines, BitSet others, int blades, double beyond) {
    double[] telling = telling(beyond);
    if (lines.isEmpty()) {
      return blades * telling[0];
    }
    double best = Double.NEGATIVE_INFINITY;
    for (Slit first : lines) {
      double sum = 0;
      for (int blade = 0; blade < blades; blade++) {
        Slit expected = new Slit(first.angle() + 2 * Math.PI * blade / blades, 0, 1);
        int line = longest(lines, expected);
        double length = line < 0 ? 0 : (lines.get(line).length() - hole.radius()) / MM;
        double tells = telling[kind(length / beyond)];
        sum += line >= 0 && others.get(line) ? Math.min(0, tells) : tells;
      }
      best = Math.max(best, sum);
    }
    return best;
  }

  /** The longest line at a blade's angle; -1 where there is none. */
  private static int longest(List<Slit> lines, Slit expected) {
    int longest = -1;
    for (int i = 0; i < lines.size(); i++) {
      if (lines.get(i).angleTo(expected) < HeadShape.UNEVEN
          && (longest < 0 || lines.get(i).length() > lines.get(longest).length())) {
        longest = i;
      }
    }
    return longest;
  }

  /** For each kind of line, what it tells of a blade that reaches so far beyond the shaft. */
  private static double[] telling(double beyond) {
    double[] telling = new double[SHARES.length];
    for (int kind = 0; kind < telling.length; kind++) {
      double longer = kind + 1 < SHARES.length ? torn(SHARES[kind + 1] * beyond) : 0;
      double tears = Math.max(LEAST, torn(SHARES[kind] * beyond) - longer);
      telling[kind] = Math.log(SLITS[kind] / tears);
    }
    return telling;
  }

  private static int kind(double share) {
    int kind = 0;
    while (kind + 1 < SHARES.length && share >= SHARES[kind + 1]) {
      kind++;
    }
    return kind;
  }

  private static double torn(double length) {
    int last = LENGTHS.length - 1;
    if (length >= LENGTHS[last]) {
      return TEARS[last];
    }
    int after = 1;
    while (LENGTHS[after] <= length) {
      after++;
    }
    double within = (length - LENGTHS[after - 1]) / (LENGTHS[after] - LENGTHS[after - 1]);
    return Math.pow(TEARS[after - 1], 1 - within) * Math.pow(TEARS[after], within);
  }
}
