package sheaf.core.group;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The straight line through points whose x and y both have known errors.
 *
 * <p>Source: D. York, N. Evensen, M. López and J. De Basabe, Unified equations for the slope,
 * intercept, and standard errors of the best straight line, American Journal of Physics 72, 2004,
 * with errors that do not go together. With equal errors it is the orthogonal regression.
 *
 * @param slope change of y for each unit of x
 * @param intercept y where x is zero
 * @param slopeError standard error of the slope, from the points' own errors
 * @param interceptError the same of the intercept
 * @param reducedChiSquare about 1 when the points lie off the line as far as their errors say;
 *     empty for two points
 */
public record LineOfBoth(
    double slope,
    double intercept,
    double slopeError,
    double interceptError,
    OptionalDouble reducedChiSquare) {

  private static final int MOST_ROUNDS = 100;
  private static final double SETTLED = 1e-15;

  /**
   * A point.
   *
   * @param xError standard deviation of x, above zero
   * @param yError standard deviation of y, above zero
   */
  public record Point(double x, double y, double xError, double yError) {
    double weight(double slope) {
      return 1 / (yError * yError + slope * slope * xError * xError);
    }
  }

  /** The line; empty unless the points have two different x. */
  public static Optional<LineOfBoth> through(List<Point> points) {
    return StraightLine.through(
            points.stream().map(p -> new StraightLine.Point(p.x(), p.y(), 1)).toList())
        .map(start -> from(start.slope(), points));
  }

  private static LineOfBoth from(double start, List<Point> points) {
    double slope = start;
    for (int i = 0; i < MOST_ROUNDS; i++) {
      double next = new Round(points, slope).nextSlope();
      boolean settled = Math.abs(next - slope) <= SETTLED * Math.abs(next);
      slope = next;
      if (settled) {
        break;
      }
    }
    return new Round(points, slope).line();
  }

  /** The sums of one round, for a slope that is not the last yet. */
  private static final class Round {
    private final List<Point> points;
    private final double slope;
    private final double weights;
    private final double meanX;
    private final double meanY;

    Round(List<Point> points, double slope) {
      this.points = points;
      this.slope = slope;
      this.weights = points.stream().mapToDouble(p -> p.weight(slope)).sum();
      this.meanX = points.stream().mapToDouble(p -> p.weight(slope) * p.x()).sum() / weights;
      this.meanY = points.stream().mapToDouble(p -> p.weight(slope) * p.y()).sum() / weights;
    }

    /** β, how far along x the point on the line lies from the weighted mean. */
    private double adjusted(Point p) {
      double u = p.x() - meanX;
      double v = p.y() - meanY;
      return p.weight(slope) * (u * p.yError() * p.yError() + slope * v * p.xError() * p.xError());
    }

    double nextSlope() {
      double top = 0;
      double bottom = 0;
      for (Point p : points) {
        double share = p.weight(slope) * adjusted(p);
        top += share * (p.y() - meanY);
        bottom += share * (p.x() - meanX);
      }
      return top / bottom;
    }

    LineOfBoth line() {
      double mean =
          points.stream().mapToDouble(p -> p.weight(slope) * (meanX + adjusted(p))).sum() / weights;
      double spread = 0;
      double rest = 0;
      double intercept = meanY - slope * meanX;
      for (Point p : points) {
        double off = meanX + adjusted(p) - mean;
        spread += p.weight(slope) * off * off;
        double miss = p.y() - slope * p.x() - intercept;
        rest += p.weight(slope) * miss * miss;
      }
      int freedom = points.size() - 2;
      return new LineOfBoth(
          slope,
          intercept,
          Math.sqrt(1 / spread),
          Math.sqrt(1 / weights + mean * mean / spread),
          freedom > 0 ? OptionalDouble.of(rest / freedom) : OptionalDouble.empty());
    }
  }
}
