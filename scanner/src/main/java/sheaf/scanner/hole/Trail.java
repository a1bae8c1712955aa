package sheaf.scanner.hole;

import java.util.Optional;

/** The places where a slit was seen, on the way outward. */
final class Trail {

  /** So many of the places are one end of it: 1.4 mm, or a third of a shorter trail. */
  private static final int END = 7;

  /** A trail of fewer places heads nowhere. */
  private static final int SHORTEST = 6;

  private final double[] xs;
  private final double[] ys;
  private int count;

  /** An empty one that can take so many places. */
  Trail(int most) {
    this.xs = new double[most];
    this.ys = new double[most];
  }

  void add(double x, double y) {
    xs[count] = x;
    ys[count] = y;
    count++;
  }

  int count() {
    return count;
  }

  /** The line through both ends of its first places, so many. */
  Optional<Heading> heading(int places) {
    if (places < SHORTEST) {
      return Optional.empty();
    }
    int end = Math.min(END, places / 3);
    double x = mean(xs, 0, end);
    double y = mean(ys, 0, end);
    double angle =
        Math.atan2(mean(ys, places - end, places) - y, mean(xs, places - end, places) - x);
    return Optional.of(new Heading(x, y, angle));
  }

  private static double mean(double[] values, int from, int to) {
    double sum = 0;
    for (int i = from; i < to; i++) {
      sum += values[i];
    }
    return sum / (to - from);
  }
}
