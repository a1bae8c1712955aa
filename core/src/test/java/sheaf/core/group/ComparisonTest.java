package sheaf.core.group;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.apache.commons.math3.distribution.FDistribution;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sheaf.core.page.MmVector;

class ComparisonTest {

  private final Group field = Shots.at(0, 0, 6, 0, 0, 6);
  private final Group broadheads = Shots.at(20, 1, 26, 1, 20, 7);

  @Test
  void ofOneSheetIsThatOfItsTwoGroups() {
    Comparison one = Comparison.of(field, broadheads);
    assertThat(one.offset().shift()).isEqualTo(new MmVector(20, 1));
    assertThat(one.offset().region())
        .isEqualTo(Hotelling.twoSample(field, broadheads).map(Hotelling::region));
  }

  /** Only the sheet's own groups are compared, so an aim held elsewhere shifts nothing. */
  @Test
  void ofTwoSheetsDoesNotCareWhereEachWasAimed() {
    Group elsewhere = Shots.at(100, 50, 106, 50, 100, 56);
    Group broadheadsThere = Shots.at(120, 51, 126, 51, 120, 57);
    Comparison both =
        new Comparison(
            List.of(
                new Comparison.Sheet(field, broadheads),
                new Comparison.Sheet(elsewhere, broadheadsThere)));
    assertThat(both.shift().dx()).isCloseTo(20, within(1e-12));
    assertThat(both.shift().dy()).isCloseTo(1, within(1e-12));
    assertThat(both.freedom()).isEqualTo(8);
    assertThat(both.offset().region().orElseThrow().semiMajor())
        .isLessThan(Comparison.of(field, broadheads).offset().region().orElseThrow().semiMajor());
  }

  @Nested
  class TheRoundRegion {

    /** 2.438 s at 3 + 3 and 1.705 s at 5 + 5, from F(2, 8) and F(2, 16) of any table. */
    @Test
    void hasTheRadiusOfTheTables() {
      Random random = new Random(3);
      assertRadius(2.438, Comparison.of(Shots.round(random, 3), Shots.round(random, 3)));
      assertRadius(1.705, Comparison.of(Shots.round(random, 5), Shots.round(random, 5)));
    }

    private void assertRadius(double timesSigma, Comparison comparison) {
      double radius = comparison.roundOffset().region().orElseThrow().semiMajor();
      assertThat(radius / Math.sqrt(comparison.variance())).isCloseTo(timesSigma, within(5e-4));
    }

    @Test
    void isNotThereForOneArrowOfEach() {
      assertThat(Comparison.of(Shots.at(0, 0), Shots.at(3, 3)).roundOffset().region()).isEmpty();
    }
  }

  @Nested
  class HowManyMore {

    @Test
    void areNoneWhenItIsSettled() {
      assertThat(Comparison.of(field, broadheads).moreOfEach(200)).hasValue(0);
    }

    @Test
    void growAsTheShiftComesNearTheTolerance() {
      int far = Comparison.of(field, broadheads).moreOfEach(40).orElseThrow();
      int near = Comparison.of(field, broadheads).moreOfEach(26).orElseThrow();
      assertThat(near).isGreaterThan(far);
      assertThat(Comparison.of(field, broadheads).moreOfEach(20.03)).isEmpty();
    }

    @Test
    void areNotToldWithoutScatter() {
      assertThat(Comparison.of(Shots.at(0, 0), Shots.at(3, 3)).moreOfEach(25)).isEmpty();
    }
  }

  /** Reference: the F distribution of Apache Commons Math 3.6.1. */
  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 8, 40})
  void theQuantileBehindIsThatOfCommonsMath(int freedom) {
    double expected = new FDistribution(null, 2, freedom).inverseCumulativeProbability(0.95);
    assertThat(Hotelling.fQuantile(freedom, 0.05)).isCloseTo(expected, within(1e-6 * expected));
  }

  /** 20,000 made jobs each: a wrong quantile would cover 75 % at three arrows of each head. */
  @Tag("slow")
  @ParameterizedTest(name = "with {0} arrows of each head")
  @ValueSource(ints = {3, 5})
  void bothRegionsHoldTheTruthNineteenTimesInTwenty(int arrows) {
    Random random = new Random(100 + arrows);
    MmVector truth = new MmVector(3, -2);
    int jobs = 20_000;
    int held = 0;
    int heldRound = 0;
    for (int i = 0; i < jobs; i++) {
      Group fieldPoints = Shots.round(random, arrows);
      Group others =
          new Group(Shots.round(random, arrows).shots().stream().map(s -> s.plus(truth)).toList());
      Comparison job = Comparison.of(fieldPoints, others);
      held += job.offset().region().orElseThrow().contains(truth) ? 1 : 0;
      heldRound += job.roundOffset().region().orElseThrow().contains(truth) ? 1 : 0;
    }
    assertThat(held / (double) jobs).isBetween(0.945, 0.955);
    assertThat(heldRound / (double) jobs).isBetween(0.945, 0.955);
  }
}
