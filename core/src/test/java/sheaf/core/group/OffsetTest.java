package sheaf.core.group;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sheaf.core.measure.Distance;
import sheaf.core.measure.Unit;
import sheaf.core.page.MmVector;

class OffsetTest {

  private static final int RUNS = 20_000;

  @Nested
  class TheShift {

    @Test
    void leadsFromTheReferenceToTheComparedGroup() {
      Group field = Shots.at(0, 0, 2, 2);
      Group broadhead = Shots.at(11, -4, 13, -6);
      assertThat(Offset.between(field, broadhead).shift()).isEqualTo(new MmVector(11, -6));
      assertThat(Offset.between(broadhead, field).shift()).isEqualTo(new MmVector(-11, 6));
    }

    @Test
    void isKnownEvenWhereTheRegionIsNot() {
      Offset offset = Offset.between(Shots.at(0, 0), Shots.at(5, 5));
      assertThat(offset.shift()).isEqualTo(new MmVector(5, 5));
      assertThat(offset.region()).isEmpty();
    }
  }

  @Nested
  class TheRegion {

    // That a 95 % region covers the truth 95 times in 100 is what it means; the standard error of
    // 20,000 runs is 0.15 %. With the quantile of chi square in place of F's it would be 75 % for
    // three and three arrows, so a wrong quantile cannot pass.
    @ParameterizedTest(name = "of {0} and {0} arrows")
    @ValueSource(ints = {3, 5})
    void coversTheTruthNinetyFiveTimesInAHundred(int arrows) {
      Random random = new Random(7);
      MmVector truth = new MmVector(12, -7);
      int covered = 0;
      for (int i = 0; i < RUNS; i++) {
        Group field = Shots.slanted(random, arrows, 100, 80);
        Group broadhead = Shots.slanted(random, arrows, 112, 73);
        if (Offset.between(field, broadhead).region().orElseThrow().contains(truth)) {
          covered++;
        }
      }
      assertThat(covered / (double) RUNS).isBetween(0.945, 0.955);
    }

    @Test
    void doesNotDependOnWhereOnThePageTheGroupsLie() {
      Ellipse near = region(0);
      Ellipse far = region(1e6);
      assertThat(far.semiMajor()).isCloseTo(near.semiMajor(), within(1e-6));
      assertThat(far.semiMinor()).isCloseTo(near.semiMinor(), within(1e-6));
    }

    private Ellipse region(double at) {
      Group field = Shots.at(at, at, at + 3, at + 1, at - 2, at + 5);
      Group broadhead = Shots.at(at + 9, at, at + 7, at + 4, at + 8, at - 3);
      return Offset.between(field, broadhead).region().orElseThrow();
    }

    @Test
    void isCentredOnTheShift() {
      Optional<Ellipse> elsewhere = Optional.of(new Ellipse(new MmVector(1, 0), 2, 1, 0));
      assertThatThrownBy(() -> new Offset(new MmVector(0, 0), elsewhere))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageContaining("centred");
    }
  }

  @Nested
  class TheSamePoint {

    private final double tolerance = SamePoint.toleranceAt(new Distance(20, Unit.YARD));

    @Test
    void isShownWhenTheWholeRegionIsWithinTheTolerance() {
      assertThat(Equivalence.judge(offset(10, 15), tolerance)).isEqualTo(Equivalence.SHOWN);
    }

    @Test
    void isNotShownWhenTheShiftIsTooLarge() {
      assertThat(Equivalence.judge(offset(30, 2), tolerance)).isEqualTo(Equivalence.NOT_SHOWN);
    }

    @Test
    void needsMoreArrowsWhenOnlyTheRegionReachesTooFar() {
      assertThat(Equivalence.judge(offset(10, 16), tolerance))
          .isEqualTo(Equivalence.NOT_ENOUGH_ARROWS);
    }

    @Test
    void needsMoreArrowsWhenThereIsNoRegion() {
      Offset unknown = new Offset(new MmVector(90, 0), Optional.empty());
      assertThat(Equivalence.judge(unknown, tolerance)).isEqualTo(Equivalence.NOT_ENOUGH_ARROWS);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void needsATolerance(double wrong) {
      Offset offset = offset(10, 2);
      assertThatThrownBy(() -> Equivalence.judge(offset, wrong))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageContaining(String.valueOf(wrong));
    }

    // The promise of the method: a true shift as large as the tolerance passes at most once in
    // twenty times; that it passes at all keeps this check honest.
    @Test
    void isSeldomShownOfABowThatIsJustOut() {
      Random random = new Random(8);
      double justOut = 60;
      int shown = 0;
      for (int i = 0; i < RUNS; i++) {
        Group field = Shots.slanted(random, 5, 0, 0);
        Group broadhead = Shots.slanted(random, 5, justOut, 0);
        Offset offset = Offset.between(field, broadhead);
        if (Equivalence.judge(offset, justOut) == Equivalence.SHOWN) {
          shown++;
        }
      }
      assertThat(shown / (double) RUNS).isBetween(0.001, 0.05);
    }

    private Offset offset(double right, double radius) {
      MmVector shift = new MmVector(right, 0);
      return new Offset(shift, Optional.of(new Ellipse(shift, radius, radius, 0)));
    }
  }

  @Nested
  class TheTolerance {

    // Common practice, no published source: one inch at twenty yards, as an angle.
    @Test
    void isOneInchAtTwentyYards() {
      assertThat(SamePoint.toleranceAt(new Distance(20, Unit.YARD))).isEqualTo(25.4);
    }

    @Test
    void growsWithTheDistance() {
      assertThat(SamePoint.toleranceAt(new Distance(40, Unit.YARD))).isCloseTo(50.8, within(1e-12));
      assertThat(SamePoint.toleranceAt(new Distance(18.288, Unit.METRE)))
          .isCloseTo(25.4, within(1e-12));
    }
  }
}
