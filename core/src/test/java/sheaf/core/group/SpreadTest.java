package sheaf.core.group;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

class SpreadTest {

  /** Computed with SciPy from the exact definitions: c₄ and the limits as shares of s. */
  @ParameterizedTest
  @CsvFileSource(resources = "rayleigh_c4.csv", numLinesToSkip = 1)
  void isCorrectedAndBoundedAsByScipy(
      int shots, int freedom, double c4, double unbias, double low, double high, double radius) {
    assertThat(Spread.c4(shots)).isCloseTo(c4, within(1e-13));
    double s = Math.sqrt(1.0 / freedom);
    double below = Math.sqrt(1 / Spread.chiSquare(0.975, freedom / 2));
    double above = Math.sqrt(1 / Spread.chiSquare(0.025, freedom / 2));
    assertThat(below / s).isCloseTo(low, Percentage.withPercentage(1e-8));
    assertThat(above / s).isCloseTo(high, Percentage.withPercentage(1e-8));
    assertThat(1 / Spread.c4(shots)).isCloseTo(unbias, within(1e-12));
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 5, 30})
  void takesItsLimitsFromTheChiSquareOfCommonsMath(int pairs) {
    double expected = new ChiSquaredDistribution(2.0 * pairs).inverseCumulativeProbability(0.975);
    assertThat(Spread.chiSquare(0.975, pairs)).isCloseTo(expected, Percentage.withPercentage(1e-6));
  }

  @Test
  void ofTwoShotsIsByHand() {
    // Both 5 mm from their centre: s² = 50 / 2, c₄ = √π / 2.
    Spread spread = Spread.of(Shots.at(0, 0, 6, 8)).orElseThrow();
    assertThat(spread.sigma()).isCloseTo(5 / (Math.sqrt(Math.PI) / 2), within(1e-12));
  }

  @Test
  void ofOneShotIsNotKnown() {
    assertThat(Spread.of(Shots.at(3, 4))).isEmpty();
  }

  @Test
  void isRightOnAverageAndItsLimitsNineteenTimesInTwenty() {
    Random random = new Random(11);
    double sum = 0;
    int held = 0;
    int runs = 40_000;
    for (int i = 0; i < runs; i++) {
      Spread spread = Spread.of(Shots.round(random, 4)).orElseThrow();
      sum += spread.sigma();
      held += spread.low() <= 1 && spread.high() >= 1 ? 1 : 0;
    }
    assertThat(sum / runs).isCloseTo(1, within(0.005));
    assertThat(held / (double) runs).isCloseTo(0.95, within(0.005));
  }
}
