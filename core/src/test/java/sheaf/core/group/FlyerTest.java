package sheaf.core.group;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.apache.commons.math3.distribution.FDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sheaf.core.page.MmPoint;

class FlyerTest {

  @Test
  void isTheShotFarOutsideATightGroup() {
    Group group = Shots.at(0, 0, 4, 1, 1, 5, -3, 2, 90, -60);

    Flyer flyer = Flyer.of(group).orElseThrow();

    assertThat(flyer.shot()).isEqualTo(new MmPoint(90, -60));
    assertThat(flyer.others()).isEqualTo(Shots.at(0, 0, 4, 1, 1, 5, -3, 2));
    assertThat(group.size()).isEqualTo(5);
  }

  @Test
  void isNoneInAnEvenGroup() {
    assertThat(Flyer.of(Shots.at(0, 0, 10, 0, 0, 10, 10, 10, 5, 5))).isEmpty();
  }

  @Test
  void isNotToldOfTwoShots() {
    assertThat(Flyer.of(Shots.at(0, 0, 500, 500))).isEmpty();
  }

  @Test
  void isTheOneShotBesideAHoleOfSeveral() {
    assertThat(Flyer.of(Shots.at(0, 0, 0, 0, 0, 0, 1, 0)).orElseThrow().shot())
        .isEqualTo(new MmPoint(1, 0));
    assertThat(Flyer.of(Shots.at(0, 0, 0, 0, 0, 0))).isEmpty();
  }

  @Test
  void isNamedFromTheLimitThatTheFDistributionSets() {
    // Three shots on a circle of 1 mm; the fourth lies on either side of the limit of Commons
    // Math's F(2, 4) for a probability of 0.05 / 4: F = 2 d² / (3 (1 + 1/3)).
    double f = new FDistribution(2, 4).inverseCumulativeProbability(1 - 0.05 / 4);
    double limit = Math.sqrt(2 * f);
    double sine = Math.sqrt(3) / 2;

    assertThat(Flyer.of(Shots.at(1, 0, -0.5, sine, -0.5, -sine, 0, 1.0001 * limit))).isPresent();
    assertThat(Flyer.of(Shots.at(1, 0, -0.5, sine, -0.5, -sine, 0, 0.9999 * limit))).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(ints = {3, 5, 6})
  void isNamedInAtMostOneOfTwentyGroupsWithoutOne(int shots) {
    Random random = new Random(shots);
    int named = 0;
    int runs = 20_000;
    for (int i = 0; i < runs; i++) {
      named += Flyer.of(Shots.round(random, shots)).isPresent() ? 1 : 0;
    }
    assertThat(named / (double) runs).isBetween(0.035, 0.055);
  }
}
