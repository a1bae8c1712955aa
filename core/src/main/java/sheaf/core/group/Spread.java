package sheaf.core.group;

import java.util.Optional;
import java.util.stream.IntStream;

/**
 * How widely shots scatter about their own centre, as the standard deviation in every direction of
 * the round bell-shaped scatter that they are taken to come from.
 *
 * <p>With n shots at distances r from their centre, s² = Σr² / 2(n-1) estimates the variance
 * without bias; s itself is too small on average by c₄(2n-1) = Γ(n-1/2) / (√(n-1) Γ(n-1)), for
 * which it is corrected. Σr²/σ² follows chi-square with 2(n-1) degrees of freedom, from which the
 * limits come. Source: E. L. Grant and R. S. Leavenworth, Statistical Quality Control, for c₄; the
 * rest is elementary.
 *
 * @param sigma in millimetres, corrected for small samples; zero or more
 * @param low the true sigma is at least this, with 97.5 % confidence
 * @param high the true sigma is at most this, with 97.5 % confidence
 */
public record Spread(double sigma, double low, double high) {

  private static final double TAIL = (1 - Hotelling.CONFIDENCE) / 2;
  private static final int HALVINGS = 200;

  /** Limits are kept for groups of up to so many shots more than one: an archive asks for few. */
  private static final int KEPT = 32;

  private static final double[] UPPER = limits(1 - TAIL);
  private static final double[] LOWER = limits(TAIL);

  /** The spread of a group; empty for one shot. */
  public static Optional<Spread> of(Group group) {
    if (group.size() < 2) {
      return Optional.empty();
    }
    Covariance scatter = Covariance.scatter(group);
    double squares = scatter.xx() + scatter.yy();
    int pairs = group.size() - 1;
    return Optional.of(
        new Spread(
            Math.sqrt(squares / (2 * pairs)) / c4(group.size()),
            Math.sqrt(squares / limit(UPPER, 1 - TAIL, pairs)),
            Math.sqrt(squares / limit(LOWER, TAIL, pairs))));
  }

  private static double[] limits(double probability) {
    return IntStream.rangeClosed(1, KEPT).mapToDouble(k -> chiSquare(probability, k)).toArray();
  }

  private static double limit(double[] kept, double probability, int pairs) {
    return pairs <= KEPT ? kept[pairs - 1] : chiSquare(probability, pairs);
  }

  /**
   * c₄(2n-1), by which the root of a variance with 2(n-1) degrees of freedom is too small.
   *
   * <p>From one shot more to the next it grows by ((n-1) - 1/2) / √((n-1)(n-2)), and c₄(3) is √π/2.
   */
  static double c4(int shots) {
    double c4 = Math.sqrt(Math.PI) / 2;
    for (int pairs = 2; pairs < shots; pairs++) {
      c4 *= (pairs - 0.5) / Math.sqrt((double) pairs * (pairs - 1));
    }
    return c4;
  }

  /**
   * The value that a chi-square with 2k degrees of freedom stays below with a given probability.
   * Its distribution is then a finite sum, 1 - e^(-x/2) Σ (x/2)^i/i! for i < k (Abramowitz and
   * Stegun, 26.4.5).
   */
  static double chiSquare(double probability, int k) {
    double low = 0;
    // Its mean is 2k and its variance 4k, so this is far out for any probability that is asked for.
    double high = 2 * k + 40 * Math.sqrt(k) + 40;
    for (int i = 0; i < HALVINGS && low < high; i++) {
      double middle = (low + high) / 2;
      if (below(middle, k) < probability) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }

  private static double below(double x, int k) {
    double term = Math.exp(-x / 2);
    double above = 0;
    for (int i = 0; i < k; i++) {
      above += term;
      term *= x / 2 / (i + 1);
    }
    return 1 - above;
  }
}
