package sheaf.core.result;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import sheaf.core.group.Equivalence;
import sheaf.core.measure.Unit;
import sheaf.core.page.MmVector;
import sheaf.core.reading.Head;

class PairResultTest {

  @Test
  void theOffsetIsBroadheadsLessFieldPointsEachFromItsOwnDot() {
    PairResult result =
        PairResult.of(
            Readings.pair(2)
                .shot(Head.FIELD, 1, 2)
                .shot(Head.FIELD, 3, 4)
                .shot(Head.BROADHEAD, 12, -2)
                .shot(Head.BROADHEAD, 14, -4)
                .read());

    MmVector shift = result.offset().orElseThrow().shift();
    assertThat(shift.dx()).isCloseTo(11, within(1e-9));
    assertThat(shift.dy()).isCloseTo(-6, within(1e-9));
  }

  @Test
  void aSheetPrintedSmallIsCorrectedToTrueMillimetresAcrossAndDown() {
    PairResult result =
        PairResult.of(
            Readings.pair(2)
                .printedAt(0.95, 0.97)
                .shot(Head.FIELD, 0, 0)
                .shot(Head.BROADHEAD, 100, 100)
                .read());

    MmVector shift = result.offset().orElseThrow().shift();
    assertThat(shift.dx()).isCloseTo(95, within(1e-9));
    assertThat(shift.dy()).isCloseTo(97, within(1e-9));
  }

  @Test
  void withOneArrowAHeadTheOffsetIsGivenAndTheRegionIsUnknown() {
    PairResult result =
        PairResult.of(
            Readings.pair(2)
                .at(20, Unit.YARD)
                .shot(Head.FIELD, 0, 0)
                .shot(Head.BROADHEAD, 5, 0)
                .read());

    assertThat(result.offset().orElseThrow().region()).isEmpty();
    assertThat(result.equivalence()).contains(Equivalence.NOT_ENOUGH_ARROWS);
  }

  @Test
  void oneInchAt20YardsIs4Point775MinutesOfAngle() {
    // 1 in / (20 yd * 36 in) in radians, times 60 * 180 / pi: 4.7746 (exact definition, computed).
    PairResult result =
        PairResult.of(
            Readings.pair(2)
                .at(20, Unit.YARD)
                .shot(Head.FIELD, 0, 0)
                .shot(Head.BROADHEAD, 25.4, 0)
                .read());

    assertThat(result.offsetMinutes().orElseThrow()).isCloseTo(4.7746, within(1e-3));
    assertThat(result.tolerance().orElseThrow()).isCloseTo(25.4, within(1e-9));
  }

  @Test
  void withoutADistanceNothingIsJudged() {
    PairResult result =
        PairResult.of(Readings.pair(2).shot(Head.FIELD, 0, 0).shot(Head.BROADHEAD, 5, 0).read());

    assertThat(result.equivalence()).isEmpty();
    assertThat(result.offsetMinutes()).isEmpty();
  }

  @Test
  void withoutBroadheadsThereIsNoOffset() {
    PairResult result = PairResult.of(Readings.pair(2).shot(Head.FIELD, 0, 0).read());

    assertThat(result.offset()).isEmpty();
    assertThat(Verdict.of(result)).startsWith("No broadhead was found");
  }

  @Test
  void aBenchCardHasNoPairResult() {
    assertThatThrownBy(() -> PairResult.of(Readings.card(1).read()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("no pair sheet");
  }
}
