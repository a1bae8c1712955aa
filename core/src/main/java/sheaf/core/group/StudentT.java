package sheaf.core.group;

import java.util.stream.IntStream;

/**
 * Student's t distribution for whole degrees of freedom, where it is a finite sum.
 *
 * <p>Source: M. Abramowitz and I. A. Stegun, Handbook of Mathematical Functions, 26.7.3 and 26.7.4.
 */
final class StudentT {

  /** The largest quantile that is sought: one degree of freedom needs 63.7 for 99 %. */
  private static final double FARTHEST = 1e6;

  /** Halvings after which a double changes no more. */
  private static final int HALVINGS = 200;

  private StudentT() {}

  /**
   * Values are kept up to so many degrees of freedom, as a shop's archive asks for the same few
   * over and over.
   */
  private static final int KEPT = 64;

  private static final double[] VALUES =
      IntStream.rangeClosed(1, KEPT).mapToDouble(StudentT::quantile).toArray();

  /** The t that is exceeded in neither direction with 95 % probability: 12.706 for one degree. */
  static double twoSided95(int freedom) {
    return freedom >= 1 && freedom <= KEPT ? VALUES[freedom - 1] : quantile(freedom);
  }

  private static double quantile(int freedom) {
    double low = 0;
    double high = FARTHEST;
    for (int i = 0; i < HALVINGS && low < high; i++) {
      double middle = (low + high) / 2;
      if (within(middle, freedom) < Hotelling.CONFIDENCE) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return (low + high) / 2;
  }

  /**
   * The probability of a value between -t and t.
   *
   * @param t zero or more
   * @param freedom degrees of freedom, 1 or more
   * @throws IllegalArgumentException when the degrees of freedom are less than 1
   */
  static double within(double t, int freedom) {
    if (freedom < 1) {
      throw new IllegalArgumentException("Student's t needs a degree of freedom: " + freedom);
    }
    double angle = Math.atan2(t, Math.sqrt(freedom));
    double cosine = Math.cos(angle);
    boolean odd = freedom % 2 == 1;
    double term = odd ? cosine : 1;
    double sum = 0;
    for (int k = odd ? 1 : 0; k <= freedom - 2; k += 2) {
      sum += term;
      term *= cosine * cosine * (k + 1) / (k + 2);
    }
    return odd ? 2 / Math.PI * (angle + Math.sin(angle) * sum) : Math.sin(angle) * sum;
  }
}
