package sheaf.core.group;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;

/**
 * The straight line by the median of the slopes between all pairs of points (Theil–Sen): up to more
 * than a quarter of the points may be wild without carrying it away. It weighs no point more than
 * another.
 *
 * <p>The limits are the slopes ranked as far from the middle as Kendall's S is likely to be when
 * there is no slope left. Source: P. K. Sen, Estimates of the regression coefficient based on
 * Kendall's tau, Journal of the American Statistical Association 63, 1968, equation 2.6 for the
 * variance with ties.
 */
final class RobustLine {

  /** What 95 in 100 of a standard normal's values lie within, either side of zero. */
  static final double NORMAL_95 = 1.959963984540054;

  private final double[] slopes;
  private final double varianceOfS;
  private final double intercept;

  private RobustLine(List<StraightLine.Point> points, double[] slopes) {
    this.slopes = slopes;
    this.varianceOfS = varianceOfS(points);
    this.intercept =
        median(points.stream().mapToDouble(StraightLine.Point::y).toArray())
            - median(slopes) * median(points.stream().mapToDouble(StraightLine.Point::x).toArray());
  }

  /** The line; empty unless the points have two different x. Weights are not looked at. */
  static Optional<RobustLine> through(List<StraightLine.Point> points) {
    List<Double> slopes = new ArrayList<>();
    for (StraightLine.Point p : points) {
      for (StraightLine.Point q : points) {
        if (q.x() > p.x()) {
          slopes.add((q.y() - p.y()) / (q.x() - p.x()));
        }
      }
    }
    double[] sorted = slopes.stream().mapToDouble(Double::doubleValue).sorted().toArray();
    return sorted.length == 0 ? Optional.empty() : Optional.of(new RobustLine(points, sorted));
  }

  /** The median slope. */
  double slope() {
    return median(slopes);
  }

  /** The median of y less the slope times the median of x. */
  double intercept() {
    return intercept;
  }

  /** The lower limit of the slope, for a confidence told as so many standard deviations. */
  double low(double deviations) {
    int rank = (int) Math.rint((slopes.length - deviations * Math.sqrt(varianceOfS)) / 2) - 1;
    return slopes[Math.max(rank, 0)];
  }

  /** The upper limit of the slope. */
  double high(double deviations) {
    int rank = (int) Math.rint((slopes.length + deviations * Math.sqrt(varianceOfS)) / 2);
    return slopes[Math.min(rank, slopes.length - 1)];
  }

  private static double varianceOfS(List<StraightLine.Point> points) {
    return (term(points.size())
            - tied(points, StraightLine.Point::x)
            - tied(points, StraightLine.Point::y))
        / 18;
  }

  private static double tied(
      List<StraightLine.Point> points, ToDoubleFunction<StraightLine.Point> coordinate) {
    Map<Double, Long> counts =
        points.stream()
            .collect(Collectors.groupingBy(coordinate::applyAsDouble, Collectors.counting()));
    return counts.values().stream().mapToDouble(count -> term(count)).sum();
  }

  private static double term(double n) {
    return n * (n - 1) * (2 * n + 5);
  }

  private static double median(double[] values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    int middle = sorted.length / 2;
    return sorted.length % 2 == 1 ? sorted[middle] : (sorted[middle - 1] + sorted[middle]) / 2;
  }
}
