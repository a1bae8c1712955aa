package sheaf.samples.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sheaf.core.layout.Aim;
import sheaf.core.layout.AimDot;
import sheaf.core.layout.Layout;
import sheaf.core.layout.Layouts;
import sheaf.core.layout.UnitSystem;
import sheaf.core.layout.Variant;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmVector;
import sheaf.core.page.Paper;
import sheaf.core.reading.Head;
import sheaf.core.reading.PrintScale;

class ShotTest {

  private static final Layout LAYOUT =
      Layouts.current(Variant.TWO_DOTS, Paper.A4, UnitSystem.METRIC);

  private static Shot shot(Head head, Aim aim, double dx, double dy) {
    MmPoint dot =
        LAYOUT.dots().stream()
            .filter(d -> d.aim() == aim)
            .map(AimDot::centre)
            .findFirst()
            .orElseThrow();
    MmPoint axis = dot.plus(new MmVector(dx, dy));
    return new Shot(axis, head, 0, 0, aim, axis);
  }

  @Test
  void theOffsetIsFromDotToDotInTrueMillimetres() {
    List<Shot> shots =
        List.of(
            shot(Head.FIELD, Aim.FIELD, 1, 2),
            shot(Head.FIELD, Aim.FIELD, 3, 4),
            shot(Head.BROADHEAD, Aim.BROADHEAD, 12, -7));
    MmVector offset = Shot.offset(shots, LAYOUT, new PrintScale(0.9, 0.8)).orElseThrow();
    // By hand: (12 - 2) * 0.9 across, (-7 - 3) * 0.8 down.
    assertThat(offset.dx()).isCloseTo(9, within(1e-9));
    assertThat(offset.dy()).isCloseTo(-8, within(1e-9));
  }

  @Test
  void withOneHeadThereIsNoOffset() {
    List<Shot> shots = List.of(shot(Head.FIELD, Aim.FIELD, 1, 2));
    assertThat(Shot.offset(shots, LAYOUT, PrintScale.TRUE_SIZE)).isEqualTo(Optional.empty());
  }
}
