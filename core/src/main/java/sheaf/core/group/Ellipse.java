package sheaf.core.group;

import sheaf.core.page.MmVector;

/**
 * A filled ellipse of vectors, in millimetres, x to the right, y down.
 *
 * @param centre finite
 * @param semiMajor half the longer axis, finite and at least {@code semiMinor}
 * @param semiMinor half the shorter axis, above zero
 * @param angle of the longer axis, radians from +x toward +y (clockwise as seen on the page), in
 *     (-pi/2, pi/2]
 */
public record Ellipse(MmVector centre, double semiMajor, double semiMinor, double angle) {

  /** Halvings of a quarter turn after which a double changes no more. */
  private static final int HALVINGS = 64;

  /** Throws when a component is out of the range it is described with. */
  public Ellipse {
    if (!Double.isFinite(centre.length())) {
      throw new IllegalArgumentException("an ellipse's centre must be finite: " + centre);
    }
    if (!(semiMinor > 0) || !(semiMajor >= semiMinor) || !Double.isFinite(semiMajor)) {
      throw new IllegalArgumentException(
          "an ellipse needs half axes major >= minor > 0: " + semiMajor + ", " + semiMinor);
    }
    if (!(angle > -Math.PI / 2 && angle <= Math.PI / 2)) {
      throw new IllegalArgumentException("an ellipse's angle is in (-pi/2, pi/2]: " + angle);
    }
  }

  /** Whether a vector lies inside or on the edge. */
  public boolean contains(MmVector v) {
    MmVector own = inOwnAxes(new MmVector(v.dx() - centre.dx(), v.dy() - centre.dy()));
    return Math.hypot(own.dx() / semiMajor, own.dy() / semiMinor) <= 1;
  }

  /**
   * The greatest distance from the zero vector to a point of the ellipse.
   *
   * <p>With the centre at (p, q) along the ellipse's own axes, p and q made positive by its
   * symmetry, the farthest point is (p + a cos t, q + b sin t) with t in [0, pi/2]. Half the
   * derivative of its squared distance, -a p sin t + b q cos t - (a² - b²) sin t cos t, is sin t
   * cos t times a function that only falls, so it changes sign at most once there, and halving the
   * interval finds the maximum to the last digits.
   */
  public double farthestReach() {
    MmVector c = firstQuadrant();
    double best =
        lastWhere(
            (cos, sin) ->
                semiMinor * c.dy() * cos - semiMajor * c.dx() * sin - flattening() * sin * cos
                    >= 0);
    return Math.hypot(c.dx() + semiMajor * Math.cos(best), c.dy() + semiMinor * Math.sin(best));
  }

  /**
   * The smallest distance from the zero vector to a point of the ellipse; 0 when it contains zero.
   *
   * <p>As in {@link #farthestReach()}, but for the point (p - a cos t, q - b sin t): half the
   * derivative, a p sin t - b q cos t - (a² - b²) sin t cos t, is sin t cos t times a function that
   * only rises.
   */
  public double nearestReach() {
    if (contains(new MmVector(0, 0))) {
      return 0;
    }
    MmVector c = firstQuadrant();
    double best =
        lastWhere(
            (cos, sin) ->
                semiMajor * c.dx() * sin - semiMinor * c.dy() * cos - flattening() * sin * cos
                    <= 0);
    return Math.hypot(c.dx() - semiMajor * Math.cos(best), c.dy() - semiMinor * Math.sin(best));
  }

  /** a² - b². */
  private double flattening() {
    return (semiMajor - semiMinor) * (semiMajor + semiMinor);
  }

  /** The centre along the ellipse's own axes, mirrored to where both coordinates are positive. */
  private MmVector firstQuadrant() {
    MmVector own = inOwnAxes(centre);
    return new MmVector(Math.abs(own.dx()), Math.abs(own.dy()));
  }

  private MmVector inOwnAxes(MmVector v) {
    double cos = Math.cos(angle);
    double sin = Math.sin(angle);
    return new MmVector(v.dx() * cos + v.dy() * sin, v.dy() * cos - v.dx() * sin);
  }

  /** A condition on an angle, asked by its cosine and sine. */
  @FunctionalInterface
  private interface AngleTest {
    boolean test(double cos, double sin);
  }

  /** The last angle in [0, pi/2] where a condition holds that holds up to some angle only. */
  private static double lastWhere(AngleTest holds) {
    double low = 0;
    double high = Math.PI / 2;
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      if (holds.test(Math.cos(middle), Math.sin(middle))) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }
}
