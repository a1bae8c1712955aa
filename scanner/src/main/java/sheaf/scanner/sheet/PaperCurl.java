package sheaf.scanner.sheet;

import sheaf.core.page.MmPoint;
import sheaf.core.page.Paper;

/**
 * The shapes that a sheet of paper may take: how high it stands at each place, as a sum of products
 * of Legendre polynomials, and how far its places thereby move along the board. Paper bends but
 * does not stretch: along every straight line from its middle the way on the paper stays as long as
 * it was, to second order in the slope, which is exact enough below 20 degrees.
 */
final class PaperCurl {

  /** Highest power; a wave is followed if it is longer than half the sheet. */
  private static final int POWER = 6;

  /** Number of shapes: all products of the powers 2 to {@link #POWER}. */
  static final int SHAPES = (POWER + 1) * (POWER + 2) / 2 - 3;

  /** Gauss and Legendre's abscissas and weights on 0 to 1, exact for powers up to nine. */
  private static final double[] ALONG = {0.0469101, 0.2307653, 0.5, 0.7692347, 0.9530899};

  private static final double[] WEIGHT = {0.1184634, 0.2393143, 0.2844444, 0.2393143, 0.1184634};

  private final double halfWidth;
  private final double halfHeight;

  PaperCurl(Paper paper) {
    halfWidth = paper.width() / 2;
    halfHeight = paper.height() / 2;
  }

  /** The total power of a shape, 2 or more: how quickly it changes over the sheet. */
  static int power(int shape) {
    int left = shape;
    for (int power = 2; power <= POWER; power++) {
      if (left <= power) {
        return power;
      }
      left -= power + 1;
    }
    throw new IllegalArgumentException("no such shape: " + shape);
  }

  /** A place with all that does not depend on how the sheet is curled. */
  Place at(MmPoint page) {
    return new Place(page);
  }

  /** A place of the sheet. */
  final class Place {

    /** Millimetres from the sheet's middle. */
    final double x;

    final double y;

    private final double[] heights = new double[SHAPES];
    private final double[][] acrossSlopes = new double[ALONG.length][SHAPES];
    private final double[][] downSlopes = new double[ALONG.length][SHAPES];

    private Place(MmPoint page) {
      x = page.x() - halfWidth;
      y = page.y() - halfHeight;
      double[][] u = legendre(x / halfWidth);
      double[][] v = legendre(y / halfHeight);
      fill(heights, u[0], v[0], 1);
      for (int i = 0; i < ALONG.length; i++) {
        double[][] a = legendre(ALONG[i] * x / halfWidth);
        double[][] b = legendre(ALONG[i] * y / halfHeight);
        fill(acrossSlopes[i], a[1], b[0], 1 / halfWidth);
        fill(downSlopes[i], a[0], b[1], 1 / halfHeight);
      }
    }

    /**
     * Where the place is in space.
     *
     * @param curl how much of each shape, in millimetres
     * @param from where the shapes begin in {@code curl}
     * @param space takes it: across, down, and off the board toward the camera
     */
    void move(double[] curl, int from, double[] space) {
      double dx = 0;
      double dy = 0;
      for (int i = 0; i < ALONG.length; i++) {
        double across = dot(acrossSlopes[i], curl, from);
        double down = dot(downSlopes[i], curl, from);
        double steep = WEIGHT[i] * (across * x + down * y) / 2;
        dx -= steep * across;
        dy -= steep * down;
      }
      space[0] = x + dx;
      space[1] = y + dy;
      space[2] = dot(heights, curl, from);
    }
  }

  /**
   * Gaussian curvature of a shape at a place, per square millimetre; paper has none.
   *
   * @param u -1 to 1 over the sheet's width
   * @param v the same over its height
   */
  double curvature(double[] curl, int from, double u, double v) {
    double[][] a = legendre(u);
    double[][] b = legendre(v);
    double[] second = new double[SHAPES];
    fill(second, a[2], b[0], 1 / (halfWidth * halfWidth));
    double across = dot(second, curl, from);
    fill(second, a[0], b[2], 1 / (halfHeight * halfHeight));
    double down = dot(second, curl, from);
    fill(second, a[1], b[1], 1 / (halfWidth * halfHeight));
    double mixed = dot(second, curl, from);
    return across * down - mixed * mixed;
  }

  private static double dot(double[] factors, double[] curl, int from) {
    double sum = 0;
    for (int i = 0; i < SHAPES; i++) {
      sum += factors[i] * curl[from + i];
    }
    return sum;
  }

  private static void fill(double[] shapes, double[] u, double[] v, double factor) {
    int shape = 0;
    for (int power = 2; power <= POWER; power++) {
      for (int j = 0; j <= power; j++) {
        shapes[shape++] = factor * u[power - j] * v[j];
      }
    }
  }

  /** Legendre polynomials, their first and their second derivatives. */
  private static double[][] legendre(double x) {
    double[][] p = new double[3][POWER + 1];
    p[0][0] = 1;
    p[0][1] = x;
    p[1][1] = 1;
    for (int n = 1; n < POWER; n++) {
      p[0][n + 1] = ((2 * n + 1) * x * p[0][n] - n * p[0][n - 1]) / (n + 1);
      p[1][n + 1] = (2 * n + 1) * p[0][n] + p[1][n - 1];
      p[2][n + 1] = (2 * n + 1) * p[1][n] + p[2][n - 1];
    }
    return p;
  }
}
