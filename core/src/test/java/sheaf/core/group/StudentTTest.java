package sheaf.core.group;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.distribution.FDistribution;
import org.apache.commons.math3.distribution.TDistribution;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

class StudentTTest {

  /**
   * Computed with SciPy, right to eight digits; the first five agree with the table of the
   * NIST/SEMATECH e-Handbook.
   */
  @ParameterizedTest
  @CsvFileSource(resources = "t_quantiles.csv", numLinesToSkip = 1)
  void isThatOfScipy(int freedom, double t95, double t975, double t99, double t995) {
    assertThat(StudentT.twoSided95(freedom)).isCloseTo(t975, Percentage.withPercentage(1e-6));
    assertThat(StudentT.within(t95, freedom)).isCloseTo(0.90, within(1e-8));
    assertThat(StudentT.within(t99, freedom)).isCloseTo(0.98, within(1e-8));
    assertThat(StudentT.within(t995, freedom)).isCloseTo(0.99, within(1e-8));
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 7, 20, 97})
  void isThatOfCommonsMath(int freedom) {
    TDistribution reference = new TDistribution(freedom);
    for (double t = 0; t < 9; t += 0.7) {
      double expected = 2 * reference.cumulativeProbability(t) - 1;
      assertThat(StudentT.within(t, freedom)).isCloseTo(expected, within(1e-12));
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 5, 11})
  void squaredIsTheFDistributionWithOneDegree(int freedom) {
    // The identity t²(m) = F(1, m), by Commons Math's F distribution.
    double f = new FDistribution(1, freedom).inverseCumulativeProbability(0.95);
    assertThat(Math.pow(StudentT.twoSided95(freedom), 2))
        .isCloseTo(f, Percentage.withPercentage(1e-5));
  }

  @Test
  void needsADegreeOfFreedom() {
    assertThatThrownBy(() -> StudentT.within(1, 0)).isInstanceOf(IllegalArgumentException.class);
  }
}
