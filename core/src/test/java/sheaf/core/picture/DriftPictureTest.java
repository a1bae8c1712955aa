package sheaf.core.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import sheaf.core.measure.Unit;
import sheaf.core.page.MmRect;
import sheaf.core.record.Drifted;
import sheaf.core.record.How;
import sheaf.core.record.Taken;

class DriftPictureTest {

  private static final MmRect ROOM = new MmRect(0, 0, 90, 60);
  private static final Map<String, Drifted.Tolerance> TOLERANCES =
      Map.of(
          "brace_height", new Drifted.Tolerance(3, Unit.MILLIMETRE),
          "axle_to_axle", new Drifted.Tolerance(3, Unit.MILLIMETRE));

  @Test
  void barsAreAsLongAsWhatMovedInTolerances() {
    Picture picture =
        DriftPicture.of(
            List.of(grown("brace_height", 3), grown("axle_to_axle", -6)), TOLERANCES, ROOM);

    List<Shape.Patch> bars =
        picture.shapes().stream()
            .filter(Shape.Patch.class::isInstance)
            .map(Shape.Patch.class::cast)
            .toList();
    assertThat(bars).hasSize(2);
    assertThat(bars.get(1).rect().width()).isEqualTo(2 * bars.get(0).rect().width(), within(1e-9));
    assertThat(bars.get(1).rect().right()).isEqualTo(bars.get(0).rect().x(), within(1e-9));
  }

  @Test
  void nothingStandsBeyondTheFrameHoweverFarItMoved() {
    Picture picture = DriftPicture.of(List.of(grown("brace_height", 3000)), TOLERANCES, ROOM);

    assertThat(picture.shapes())
        .filteredOn(Shape.Patch.class::isInstance)
        .allSatisfy(
            bar -> assertThat(picture.frame().contains(((Shape.Patch) bar).rect())).isTrue());
  }

  @Test
  void wordsSayWhichWayEachMoved() {
    assertThat(
            DriftPicture.of(
                    List.of(grown("brace_height", 3), grown("axle_to_axle", -6)), TOLERANCES, ROOM)
                .words())
        .contains("brace_height grew", "axle_to_axle shrank");
  }

  private static Drifted grown(String key, double millimetres) {
    Taken was = Taken.number("180", 180, Unit.MILLIMETRE, How.READ);
    Taken is = Taken.number("183", 180 + millimetres, Unit.MILLIMETRE, How.READ);
    return new Drifted(key, key, was, is, millimetres);
  }
}
