package sheaf.core.group;

import java.util.Optional;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmVector;

/**
 * Hotelling's T² for a difference of means in the plane, with its 95 % region.
 *
 * <p>It assumes shots that scatter normally, in both groups alike, but not that they scatter in
 * circles. With d the observed difference, V the estimated covariance of d and v the degrees of
 * freedom of that estimate:
 *
 * <ul>
 *   <li>T² = d' V⁻¹ d;
 *   <li>F = (m / 2v) T² follows F(2, m) when there is no true difference, m = v - 1;
 *   <li>p = (1 + T²/v)^(-m/2), since for two degrees of freedom the F distribution is elementary;
 *   <li>the region is every true difference that this test does not reject at 5 %: the ellipse (d -
 *       x)' V⁻¹ (d - x) ≤ (2v/m) F(2, m; 0.05).
 * </ul>
 *
 * <p>Source: R. A. Johnson and D. W. Wichern, Applied Multivariate Statistical Analysis, chapters 5
 * and 6; the two-sample form also in the Pennsylvania State University's STAT 505, lesson 7.1.15.
 */
public final class Hotelling {

  /** The probability with which {@link #region()} covers the true difference. */
  public static final double CONFIDENCE = 0.95;

  /** Two coordinates are compared at once, which costs one degree of freedom. */
  private static final int DIMENSIONS = 2;

  private final double t2;
  private final int scatterFreedom;
  private final Ellipse region;

  private Hotelling(MmVector difference, Covariance ofDifference, int scatterFreedom) {
    this.scatterFreedom = scatterFreedom;
    this.t2 = ofDifference.squaredDistance(difference);
    double critical =
        fQuantile(denominatorFreedom(), 1 - CONFIDENCE)
            * (DIMENSIONS * scatterFreedom)
            / denominatorFreedom();
    this.region = ofDifference.ellipse(difference, critical);
  }

  /**
   * Compares two groups: the difference is the second's centre minus the first's, V = S (1/n₁ +
   * 1/n₂) with the pooled covariance S, v = n₁ + n₂ - 2.
   *
   * @return empty when there are fewer than four shots in all, or all deviations from the centres
   *     lie along one line
   */
  public static Optional<Hotelling> twoSample(Group first, Group second) {
    return twoSample(
        second.centre().minus(first.centre()),
        Covariance.scatter(first).plus(Covariance.scatter(second)),
        first.size(),
        second.size());
  }

  /** The same from a difference of means and the sums of squares and products within groups. */
  static Optional<Hotelling> twoSample(
      MmVector difference, Covariance scatter, int firstSize, int secondSize) {
    double perMean = 1.0 / firstSize + 1.0 / secondSize;
    return of(difference, scatter, perMean, firstSize + secondSize - 2);
  }

  /**
   * Compares one group with a known place: the difference is the group's centre minus the place, V
   * = S/n, v = n - 1.
   *
   * @return empty when there are fewer than three shots, or all of them lie along one line
   */
  public static Optional<Hotelling> oneSample(Group group, MmPoint place) {
    return of(
        group.centre().minus(place),
        Covariance.scatter(group),
        1.0 / group.size(),
        group.size() - 1);
  }

  /**
   * The same from a difference of means, the sums of squares and products about the centres, and
   * what their covariance must be multiplied with to be that of the difference.
   */
  static Optional<Hotelling> of(
      MmVector difference, Covariance scatter, double perMean, int scatterFreedom) {
    if (scatterFreedom < DIMENSIONS || scatter.isSingular()) {
      return Optional.empty();
    }
    Covariance ofDifference = scatter.times(perMean / scatterFreedom);
    return Optional.of(new Hotelling(difference, ofDifference, scatterFreedom));
  }

  /**
   * The value that F(2, m) exceeds with a given probability: (m/2) (a^(-2/m) - 1), exact for two
   * numerator degrees of freedom.
   *
   * <p>Source: the density of F(2, m) is (1 + 2x/m)^(-(m+2)/2), whose integral is elementary.
   *
   * @param denominatorFreedom m, at least 1
   * @param upperTail the probability a, above 0 and at most 1
   * @throws IllegalArgumentException when an argument is out of range
   */
  public static double fQuantile(int denominatorFreedom, double upperTail) {
    if (denominatorFreedom < 1 || !(upperTail > 0 && upperTail <= 1)) {
      throw new IllegalArgumentException(
          "F(2, m) needs m >= 1 and a probability in (0, 1]: "
              + denominatorFreedom
              + ", "
              + upperTail);
    }
    double half = denominatorFreedom / 2.0;
    return half * Math.expm1(-Math.log(upperTail) / half);
  }

  /** T², zero or more; has no unit. */
  public double t2() {
    return t2;
  }

  /** T² scaled to follow F(2, {@link #denominatorFreedom()}). */
  public double f() {
    return t2 * denominatorFreedom() / (DIMENSIONS * scatterFreedom);
  }

  /** m, the degrees of freedom of F's denominator, at least 1. */
  public int denominatorFreedom() {
    return scatterFreedom - DIMENSIONS + 1;
  }

  /** How probable a T² at least this large is when there is no true difference, in [0, 1]. */
  public double pValue() {
    return Math.exp(-denominatorFreedom() / 2.0 * Math.log1p(t2 / scatterFreedom));
  }

  /** The 95 % region of the true difference, in millimetres. */
  public Ellipse region() {
    return region;
  }
}
