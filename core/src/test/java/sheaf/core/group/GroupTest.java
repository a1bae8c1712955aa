package sheaf.core.group;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheaf.core.page.MmPoint;

class GroupTest {

  @Nested
  class OneShot {

    private final Group one = Shots.at(12, 34);

    @Test
    void isItsOwnCentre() {
      assertThat(one.centre()).isEqualTo(new MmPoint(12, 34));
    }

    @Test
    void hasNoSpread() {
      assertThat(one.extremeSpread()).isZero();
      assertThat(one.meanRadius()).isZero();
    }
  }

  @Nested
  class SeveralShots {

    // A 3-4-5 triangle: every value by hand.
    private final Group triangle = Shots.at(0, 0, 3, 0, 0, 4);

    @Test
    void haveTheirMeanAsCentre() {
      assertThat(triangle.centre().x()).isCloseTo(1, within(1e-15));
      assertThat(triangle.centre().y()).isCloseTo(4 / 3.0, within(1e-15));
    }

    @Test
    void spreadAsFarAsTheirFarthestPair() {
      assertThat(triangle.extremeSpread()).isEqualTo(5);
    }

    @Test
    void haveAMeanRadiusAboutTheirOwnCentre() {
      double expected =
          (Math.hypot(1, 4 / 3.0) + Math.hypot(2, 4 / 3.0) + Math.hypot(1, 8 / 3.0)) / 3;
      assertThat(triangle.meanRadius()).isCloseTo(expected, within(1e-14));
    }

    // Summed from zero, three times 0.1 divided by three is not 0.1.
    @Test
    void inOneHoleHaveThatHoleAsCentre() {
      Group oneHole = Shots.at(0.1, 0.1, 0.1, 0.1, 0.1, 0.1);
      assertThat(oneHole.centre()).isEqualTo(new MmPoint(0.1, 0.1));
      assertThat(oneHole.meanRadius()).isZero();
    }

    // NIST StRD, data set NumAcc1: 10000001, 10000003, 10000002 has the mean 10000002 exactly.
    @Test
    void keepTheirDigitsFarFromZero() {
      Group far = Shots.at(10000001, 0, 10000003, 0, 10000002, 0);
      assertThat(far.centre().x()).isEqualTo(10000002);
    }
  }

  @Nested
  class AGroup {

    @Test
    void needsAShot() {
      assertThatThrownBy(() -> new Group(List.of()))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageContaining("at least one shot");
    }

    @Test
    void doesNotChangeWithTheListItCameFrom() {
      List<MmPoint> shots = new ArrayList<>(List.of(new MmPoint(1, 1)));
      Group group = new Group(shots);
      shots.clear();
      assertThat(group.size()).isEqualTo(1);
    }
  }

  @Nested
  class RoundGroupsOnAverage {

    private static final int RUNS = 100_000;

    // In standard deviations. Two shots: the root of pi, exact. The others: an independent
    // simulation of six million groups of each size, standard error below 0.00013. The mean radius
    // about the sample's own centre is exact: sqrt(pi/2 · (n-1)/n).
    @ParameterizedTest(name = "{0} shots spread {1} and have a mean radius of {2}")
    @CsvSource({
      "2, 1.77245, 0.88623",
      "3, 2.40880, 1.02333",
      "4, 2.79332, 1.08540",
      "5, 3.06601, 1.12100",
      "6, 3.27518, 1.14411"
    })
    void haveTheSizeThatTheoryGivesThem(int shots, double spread, double radius) {
      Random random = new Random(20 + shots);
      double spreads = 0;
      double radii = 0;
      for (int i = 0; i < RUNS; i++) {
        Group group = Shots.round(random, shots);
        spreads += group.extremeSpread();
        radii += group.meanRadius();
      }
      assertThat(spreads / RUNS).isCloseTo(spread, within(0.01));
      assertThat(radii / RUNS).isCloseTo(radius, within(0.01));
    }
  }
}
