package sheaf.core.group;

import sheaf.core.page.MmPoint;
import sheaf.core.page.MmVector;

/**
 * A symmetric two by two matrix of sums of squares and products, or of covariances.
 *
 * @param xx square millimetres, zero or more
 * @param xy square millimetres
 * @param yy square millimetres, zero or more
 */
record Covariance(double xx, double xy, double yy) {

  /**
   * Below this ratio of the smaller to the larger variance a matrix counts as singular: a scatter a
   * million times longer than wide is a straight line plus rounding, not a measurement.
   */
  private static final double SINGULAR = 1e-12;

  /** Sums of squares and products about the group's own centre; zero for one shot. */
  static Covariance scatter(Group group) {
    MmPoint centre = group.centre();
    double xx = 0;
    double xy = 0;
    double yy = 0;
    for (MmPoint shot : group.shots()) {
      MmVector d = shot.minus(centre);
      xx += d.dx() * d.dx();
      xy += d.dx() * d.dy();
      yy += d.dy() * d.dy();
    }
    return new Covariance(xx, xy, yy);
  }

  Covariance plus(Covariance other) {
    return new Covariance(xx + other.xx, xy + other.xy, yy + other.yy);
  }

  Covariance times(double factor) {
    return new Covariance(xx * factor, xy * factor, yy * factor);
  }

  /**
   * xx yy - xy² by W. Kahan's method, right within two roundings even where the products cancel (C.
   * Jeannerod, N. Louvet and J. Muller, Mathematics of Computation 82, 2013).
   */
  double determinant() {
    double square = xy * xy;
    double squareError = Math.fma(-xy, xy, square);
    return Math.fma(xx, yy, -square) + squareError;
  }

  /** The larger eigenvalue. */
  double major() {
    return (xx + yy) / 2 + Math.hypot((xx - yy) / 2, xy);
  }

  /**
   * The smaller eigenvalue: by the determinant, since a difference would lose its digits. Rounding
   * must not make it the larger one.
   */
  double minor() {
    return Math.min(determinant() / major(), major());
  }

  /** Direction of the larger eigenvalue, radians from +x toward +y, in (-pi/2, pi/2]. */
  double angle() {
    // Adding zero turns -0.0 into 0.0, which keeps -pi/2 out.
    return Math.atan2(2 * xy + 0.0, xx - yy) / 2;
  }

  /** Whether the inverse means nothing: no scatter at all, or along one line only. */
  boolean isSingular() {
    return !(minor() > SINGULAR * major());
  }

  /** d' M⁻¹ d of this matrix M, which must not be singular, by its LDL' factors. */
  double squaredDistance(MmVector d) {
    double rest = d.dy() - d.dx() * (xy / xx);
    return d.dx() * d.dx() / xx + rest * rest / (determinant() / xx);
  }

  /** The places whose squared distance from a centre is at most {@code limit}. */
  Ellipse ellipse(MmVector centre, double limit) {
    return new Ellipse(centre, Math.sqrt(major() * limit), Math.sqrt(minor() * limit), angle());
  }
}
