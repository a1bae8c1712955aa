package sheaf.core.group;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The straight line through some points by weighted least squares.
 *
 * <p>The weights are known beforehand but for a common factor: a point's variance is the line's own
 * variance, estimated from the residuals, divided by its weight. Equal weights give ordinary least
 * squares. Source: NIST/SEMATECH e-Handbook of Statistical Methods, sections 4.1.4.1 and 4.1.4.3.
 *
 * @param slope change of y for each unit of x
 * @param intercept y where x is zero
 * @param slopeError standard error of the slope; empty when nothing is left to tell it by
 * @param interceptError the same of the intercept
 * @param freedom degrees of freedom of both errors: points less two
 */
record StraightLine(
    double slope,
    double intercept,
    OptionalDouble slopeError,
    OptionalDouble interceptError,
    int freedom) {

  /** A point with its weight, above zero. */
  record Point(double x, double y, double weight) {}

  /** The line; empty unless the points have two different x. */
  static Optional<StraightLine> through(List<Point> points) {
    if (points.stream().mapToDouble(Point::x).distinct().count() < 2) {
      return Optional.empty();
    }
    double weights = points.stream().mapToDouble(Point::weight).sum();
    double meanX = points.stream().mapToDouble(p -> p.weight() * p.x()).sum() / weights;
    double meanY = points.stream().mapToDouble(p -> p.weight() * p.y()).sum() / weights;
    double spread = 0;
    double together = 0;
    for (Point p : points) {
      double dx = p.x() - meanX;
      spread += p.weight() * dx * dx;
      together += p.weight() * dx * (p.y() - meanY);
    }
    double slope = together / spread;
    double rest = 0;
    for (Point p : points) {
      double off = p.y() - meanY - slope * (p.x() - meanX);
      rest += p.weight() * off * off;
    }
    int freedom = points.size() - 2;
    double ofIntercept = 1 / weights + meanX * meanX / spread;
    return Optional.of(
        new StraightLine(
            slope,
            meanY - slope * meanX,
            error(rest, freedom, 1 / spread),
            error(rest, freedom, ofIntercept),
            freedom));
  }

  private static OptionalDouble error(double rest, int freedom, double share) {
    return freedom == 0
        ? OptionalDouble.empty()
        : OptionalDouble.of(Math.sqrt(rest / freedom * share));
  }

  /** The slope with its 95 % margin by Student's t. */
  Estimate slopeEstimate() {
    return estimate(slope, slopeError);
  }

  /** The intercept with its 95 % margin by Student's t. */
  Estimate interceptEstimate() {
    return estimate(intercept, interceptError);
  }

  private Estimate estimate(double value, OptionalDouble error) {
    return new Estimate(
        value,
        error.isPresent()
            ? OptionalDouble.of(StudentT.twoSided95(freedom) * error.getAsDouble())
            : OptionalDouble.empty());
  }
}
