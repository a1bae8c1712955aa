package sheaf.core.tune;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import sheaf.core.Oracles;

/** Learning step by step must come to what least squares find at once. */
class GaussianTest {

  private static final Percentage ELEVEN_DIGITS = Percentage.withPercentage(1e-9);

  /** A slope through the origin, learnt from next to no knowledge, with the certified scatter. */
  private static void assertSlope(String id, double[] x, double[] y) {
    double sd = Oracles.expected(id, "rsd");
    Gaussian slope = Gaussian.independent(new double[] {0}, new double[] {1e6});
    for (int i = 0; i < x.length; i++) {
      slope = slope.seen(new double[] {x[i]}, y[i], sd * sd);
    }
    double rest = 0;
    for (int i = 0; i < x.length; i++) {
      rest += (y[i] - slope.mean(0) * x[i]) * (y[i] - slope.mean(0) * x[i]);
    }
    assertThat(slope.mean(0)).isCloseTo(Oracles.expected(id, "B1"), ELEVEN_DIGITS);
    assertThat(slope.deviation(0)).isCloseTo(Oracles.expected(id, "se"), ELEVEN_DIGITS);
    assertThat(Math.sqrt(rest / (x.length - 1))).isCloseTo(sd, ELEVEN_DIGITS);
  }

  /** NIST Statistical Reference Datasets, NoInt1 and NoInt2. */
  @Test
  void aSlopeThroughTheOriginIsAsCertifiedByNist() {
    double[] x = new double[11];
    double[] y = new double[11];
    for (int i = 0; i < 11; i++) {
      x[i] = 60 + i;
      y[i] = 130 + i;
    }
    assertSlope("N2", x, y);
    assertSlope("N3", new double[] {4, 5, 6}, new double[] {3, 4, 4});
  }

  @Test
  void addingANumberCarriesWhatIsUnsureOfIt() {
    // By hand: a + 3 b with deviations 2 and 1 has the variance 4 + 9, and 3 with b.
    Gaussian sum =
        Gaussian.independent(new double[] {10, 5}, new double[] {2, 1}).added(0, 1, 3, 0);
    assertThat(sum.mean(0)).isEqualTo(25);
    assertThat(sum.covariance(0, 0)).isEqualTo(13, within(1e-12));
    assertThat(sum.covariance(0, 1)).isEqualTo(3, within(1e-12));
    assertThat(sum.covariance(1, 0)).isEqualTo(3, within(1e-12));
    assertThat(sum.covariance(1, 1)).isEqualTo(1, within(1e-12));
  }

  @Test
  void whatIsForgottenSaysNothingOfTheRest() {
    Gaussian some =
        Gaussian.independent(new double[] {10, 5}, new double[] {2, 1})
            .added(0, 1, 3, 0)
            .forgotten(0, 0, 100);
    assertThat(some.mean(0)).isZero();
    assertThat(some.deviation(0)).isEqualTo(100, within(1e-12));
    assertThat(some.covariance(0, 1)).isZero();
    assertThat(some.mean(1)).isEqualTo(5);
  }
}
