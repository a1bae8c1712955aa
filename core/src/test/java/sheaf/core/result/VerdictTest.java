package sheaf.core.result;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import sheaf.core.layout.UnitSystem;
import sheaf.core.measure.Unit;
import sheaf.core.page.MmVector;
import sheaf.core.reading.Head;

class VerdictTest {

  @Test
  void aShiftIsSaidAsAShooterSaysIt() {
    assertThat(Verdict.direction(new MmVector(25.4, 12.7), UnitSystem.INCHES))
        .isEqualTo("1 in right and 1/2 in low of the field points");
    assertThat(Verdict.direction(new MmVector(-10, -3), UnitSystem.METRIC))
        .isEqualTo("10 mm left and 3 mm high of the field points");
    assertThat(Verdict.direction(new MmVector(0.2, -0.3), UnitSystem.INCHES))
        .isEqualTo("where the field points hit");
  }

  @Test
  void tightGroupsOnTheSamePointAreShown() {
    assertThat(Verdict.of(groups(2, 3)))
        .isEqualTo(
            "Broadheads and field points hit the same point within 1 in at 20 yd: shown, with 95 % confidence.");
  }

  @Test
  void aLargeOffsetIsNotTheSamePoint() {
    assertThat(Verdict.of(groups(60, 2)))
        .startsWith("Broadheads hit 2 3/8 in right")
        .endsWith("at 20 yd: not the same point within 1 in.");
  }

  @Test
  void anOffsetWhoseRegionStillReachesTheTolerancedCircleIsOnlyNotShown() {
    assertThat(Verdict.of(groups(30, 20))).endsWith("not shown to be the same point within 1 in.");
  }

  @Test
  void wideGroupsAreTooFewArrows() {
    assertThat(Verdict.of(groups(5, 30))).contains("too few arrows");
  }

  /** Three arrows a head, the broadheads so far to the right, each group so wide. */
  private static PairResult groups(double right, double spread) {
    Readings sheet = Readings.pair(2).at(20, Unit.YARD);
    double[][] corners = {{0, -spread}, {spread, spread}, {-spread, spread * 0.8}};
    for (double[] corner : corners) {
      sheet.shot(Head.FIELD, corner[0], corner[1]);
      sheet.shot(Head.BROADHEAD, corner[0] + right, corner[1]);
    }
    return PairResult.of(sheet.read());
  }
}
