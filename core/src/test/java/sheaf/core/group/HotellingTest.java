package sheaf.core.group;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.distribution.FDistribution;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmVector;

class HotellingTest {

  @Nested
  class PublishedExamples {

    // J. Stevens, Applied Multivariate Statistics for the Social Sciences, chapter 4: T² = 21,
    // F(2, 6) = 9; p is then 4^-3. Data and result from memory, recomputed exactly.
    @Test
    void ofTwoGroupsOfThreeAndSixComesOutExactly() {
      Group three = Shots.at(1, 3, 3, 7, 2, 2);
      Group six = Shots.at(4, 6, 6, 8, 6, 8, 5, 10, 5, 10, 4, 6);
      Hotelling test = Hotelling.twoSample(three, six).orElseThrow();
      assertThat(test.t2()).isCloseTo(21, within(1e-12));
      assertThat(test.f()).isCloseTo(9, within(1e-12));
      assertThat(test.denominatorFreedom()).isEqualTo(6);
      assertThat(test.pValue()).isCloseTo(1 / 64.0, within(1e-12));
    }

    // A textbook's solutions to its chapter 11, data set 1 (docsbay.net, document 33910): four and
    // four observations, difference of means and sums of squares as here; T² = 20.600, F = 8.59,
    // Wilks' lambda = 0.225.
    @Test
    void givenByItsSumsOfSquaresAgreesAsFarAsItWasPrinted() {
      Hotelling test =
          Hotelling.twoSample(new MmVector(-4.25, -9.50), new Covariance(21.75, 40.25, 77.5), 4, 4)
              .orElseThrow();
      assertThat(test.t2()).isCloseTo(20.600, within(0.01));
      assertThat(test.f()).isCloseTo(8.59, within(0.01));
      assertThat(1 / (1 + test.t2() / 6)).isCloseTo(0.225, within(0.001));
    }

    // R. A. Johnson and D. W. Wichern, Applied Multivariate Statistical Analysis, exercise 5.1: T²
    // =
    // 150/11 = 13.64; not significant, since 3 F(2, 2; 0.05) = 57. Data from memory.
    @Test
    void ofOneGroupAgainstAKnownPlaceComesOutExactly() {
      Group group = Shots.at(2, 12, 8, 9, 6, 9, 8, 10);
      Hotelling test = Hotelling.oneSample(group, new MmPoint(7, 11)).orElseThrow();
      assertThat(test.t2()).isCloseTo(150 / 11.0, within(1e-12));
      assertThat(3 * Hotelling.fQuantile(2, 0.05)).isCloseTo(57, within(1e-12));
      assertThat(test.pValue()).isGreaterThan(0.05);
      assertThat(test.region().contains(new MmVector(0, 0))).isTrue();
    }

    // Johnson and Wichern, example 6.3: pooled covariance [[2, 1], [1, 5]] of 50 and 50
    // observations, whose 95 % ellipse has the half axes 1.15 and 0.65. From memory, recomputed.
    @Test
    void ofLargeGroupsHasTheEllipseThatWasPrinted() {
      Covariance scatter = new Covariance(2, 1, 5).times(98);
      MmVector difference = new MmVector(-1.9, 0.2);
      Ellipse region =
          Hotelling.twoSample(difference, scatter, 50, 50).map(Hotelling::region).orElseThrow();
      assertThat(region.centre()).isEqualTo(difference);
      assertThat(region.semiMajor()).isCloseTo(1.15, within(0.005));
      assertThat(region.semiMinor()).isCloseTo(0.65, within(0.005));
      assertThat(new Covariance(2, 1, 5).major()).isCloseTo(5.303, within(0.0005));
      assertThat(new Covariance(2, 1, 5).minor()).isCloseTo(1.697, within(0.0005));
    }

    // Johnson and Wichern, exercise 6.6, treatments 2 and 3: printed 3.88 from rounded steps; the
    // exact value is 120/31, the pooled covariance [[1.6, -1.4], [-1.4, 2]]. Data from memory.
    @Test
    void ofTwoSmallGroupsComesOutExactly() {
      Group second = Shots.at(3, 3, 1, 6, 2, 3);
      Group third = Shots.at(2, 3, 5, 1, 3, 1, 2, 3);
      Covariance pooled = Covariance.scatter(second).plus(Covariance.scatter(third)).times(1 / 5.0);
      assertThat(pooled.xx()).isCloseTo(1.6, within(1e-14));
      assertThat(pooled.xy()).isCloseTo(-1.4, within(1e-14));
      assertThat(pooled.yy()).isCloseTo(2, within(1e-14));
      assertThat(Hotelling.twoSample(second, third).orElseThrow().t2())
          .isCloseTo(120 / 31.0, within(1e-12));
    }
  }

  @Nested
  class TheQuantileOfF {

    // See the README beside the file.
    @ParameterizedTest(name = "({1}, {2}) above {0}")
    @CsvFileSource(resources = "f2m_quantiles.csv", numLinesToSkip = 1)
    void isThatOfScipy(double tail, int two, int m, double closedForm, double scipy) {
      assertThat(two).isEqualTo(2);
      assertThat(Hotelling.fQuantile(m, tail)).isCloseTo(scipy, Percentage.withPercentage(1e-10));
      assertThat(Hotelling.fQuantile(m, tail))
          .isCloseTo(closedForm, Percentage.withPercentage(1e-11));
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 7, 20, 97})
    void isThatOfCommonsMath(int m) {
      double expected = new FDistribution(2, m).inverseCumulativeProbability(0.95);
      assertThat(Hotelling.fQuantile(m, 0.05)).isCloseTo(expected, Percentage.withPercentage(1e-5));
    }

    @Test
    void isZeroWhereEverythingLiesAbove() {
      assertThat(Hotelling.fQuantile(5, 1)).isZero();
    }

    @Test
    void needsADegreeOfFreedomAndAProbability() {
      assertThatThrownBy(() -> Hotelling.fQuantile(0, 0.05))
          .isInstanceOf(IllegalArgumentException.class);
      assertThatThrownBy(() -> Hotelling.fQuantile(3, 0))
          .isInstanceOf(IllegalArgumentException.class);
      assertThatThrownBy(() -> Hotelling.fQuantile(3, Double.NaN))
          .isInstanceOf(IllegalArgumentException.class);
    }
  }

  @Nested
  class TheProbability {

    @ParameterizedTest
    @ValueSource(doubles = {0, 0.5, 3, 20, 400})
    void isThatOfCommonsMath(double moved) {
      Group first = Shots.at(0, 0, 10, 3, 4, 8);
      Group second = Shots.at(moved, 0, moved + 9, 4, moved + 3, 7, moved + 1, 1);
      Hotelling test = Hotelling.twoSample(first, second).orElseThrow();
      double expected =
          1 - new FDistribution(2, test.denominatorFreedom()).cumulativeProbability(test.f());
      assertThat(test.pValue()).isCloseTo(expected, within(1e-10));
    }

    @Test
    void isFivePercentOnTheEdgeOfTheRegion() {
      Group group = Shots.at(2, 12, 8, 9, 6, 9, 8, 10);
      Ellipse region = Hotelling.oneSample(group, new MmPoint(0, 0)).orElseThrow().region();
      double x = region.centre().dx() + region.semiMajor() * Math.cos(region.angle());
      double y = region.centre().dy() + region.semiMajor() * Math.sin(region.angle());
      assertThat(Hotelling.oneSample(group, new MmPoint(x, y)).orElseThrow().pValue())
          .isCloseTo(0.05, within(1e-12));
    }
  }

  @Nested
  class NothingIsKnown {

    @Test
    void fromThreeShotsInTwoGroups() {
      assertThat(Hotelling.twoSample(Shots.at(0, 0), Shots.at(5, 5, 9, 2))).isEmpty();
      assertThat(Hotelling.twoSample(Shots.at(0, 0), Shots.at(5, 5))).isEmpty();
    }

    @Test
    void fromTwoShotsInOneGroup() {
      assertThat(Hotelling.oneSample(Shots.at(0, 0, 1, 2), new MmPoint(0, 0))).isEmpty();
    }

    @Test
    void fromShotsThatAllHitTheirOwnCentre() {
      Group same = Shots.at(0.1, 0.1, 0.1, 0.1, 0.1, 0.1);
      assertThat(Hotelling.twoSample(same, Shots.at(7, 3, 7, 3, 7, 3))).isEmpty();
    }

    @Test
    void fromShotsInOneStraightLineDespiteRounding() {
      Group first = Shots.at(100.1, 200.3, 100.4, 200.6, 101.0, 201.2);
      Group second = Shots.at(0.7, 0.7, 0.1, 0.1, 1 / 3.0, 1 / 3.0);
      assertThat(Hotelling.twoSample(first, second)).isEmpty();
    }
  }

  @Nested
  class TheLeastThatTellsAnything {

    @Test
    void isFourShotsAndTheRegionIsHuge() {
      Hotelling test =
          Hotelling.twoSample(Shots.at(0, 0, 3, 1), Shots.at(8, 8, 9, 4)).orElseThrow();
      assertThat(test.denominatorFreedom()).isEqualTo(1);
      assertThat(test.region().semiMajor()).isGreaterThan(50);
    }

    @Test
    void mayBeOneShotAgainstThree() {
      assertThat(Hotelling.twoSample(Shots.at(0, 0), Shots.at(8, 8, 9, 4, 3, 3))).isPresent();
    }

    @Test
    void mayScatterInAPerfectCircle() {
      double s = 0.1;
      Group cross = Shots.at(s, 0, -s, 0, 0, s, 0, -s);
      Ellipse region = Hotelling.twoSample(cross, cross).orElseThrow().region();
      assertThat(region.semiMinor()).isCloseTo(region.semiMajor(), within(1e-12));
    }
  }
}
