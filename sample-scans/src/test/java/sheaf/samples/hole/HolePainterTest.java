package sheaf.samples.hole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import sheaf.core.page.MmPoint;

class HolePainterTest {

  private static final double PER_MM = 12;

  /** Without tears and flaps on the front, what is painted open is the opening itself. */
  private static TornHole bareHole(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    while (true) {
      TornHole hole = TornHole.fieldPoint(3, random);
      if (hole.flaps().stream().allMatch(flap -> flap.dragged() == 0)) {
        return new TornHole(3, hole.flaps(), List.of(), List.of());
      }
    }
  }

  private static HolePatch paint(TornHole hole, double dx, double dy) {
    return HolePainter.paint(hole, PER_MM, dx, dy, 1, new SplittableRandom(3));
  }

  private static double[] moments(HolePatch patch) {
    double area = 0;
    double x = 0;
    double y = 0;
    for (int i = 0; i < patch.open().length; i++) {
      area += patch.open()[i];
      x += patch.open()[i] * (patch.left() + i % patch.width());
      y += patch.open()[i] * (patch.top() + i / patch.width());
    }
    return new double[] {area / PER_MM / PER_MM, x / area / PER_MM, y / area / PER_MM};
  }

  @Test
  void whatIsOpenHasTheAreaAndCentroidThatTheShapeClaims() {
    for (long seed = 1; seed <= 20; seed++) {
      TornHole hole = bareHole(seed);
      double[] painted = moments(paint(hole, 0, 0));
      MmPoint centroid = hole.openingCentroid();
      assertThat(painted[0]).isCloseTo(hole.openShare() * Math.PI * 9, within(0.1));
      assertThat(painted[1]).isCloseTo(centroid.x(), within(0.02));
      assertThat(painted[2]).isCloseTo(centroid.y(), within(0.02));
    }
  }

  @Test
  void aHoleBetweenTwoPixelsIsPaintedBetweenThem() {
    TornHole hole = bareHole(5);
    double[] onPixel = moments(paint(hole, 0, 0));
    double[] between = moments(paint(hole, 0.4, -0.3));
    assertThat(between[1] - onPixel[1]).isCloseTo(0.4 / PER_MM, within(0.004));
    assertThat(between[2] - onPixel[2]).isCloseTo(-0.3 / PER_MM, within(0.004));
  }

  @Test
  void paperFarFromAHoleIsLeftAsItIs() {
    HolePatch patch = paint(TornHole.fieldPoint(3, new SplittableRandom(8)), 0, 0);
    int corner = 0;
    assertThat(patch.open()[corner]).isZero();
    assertThat(patch.bare()[corner]).isZero();
    assertThat(patch.shade()[corner]).isCloseTo(1f, within(0.02f));
  }

  @Test
  void whatLiesBehindASlitIsDarkerThanWhatLiesBehindAWideOpening() {
    TornHole hole = TornHole.broadhead(3.5, 3, 40, new SplittableRandom(4));
    HolePatch patch = paint(hole, 0, 0);
    MmPoint slit = hole.slits().get(0).place(0.7, 0);
    MmPoint opening = hole.openingCentroid();
    assertThat(at(patch, patch.behind(), slit)).isLessThan(at(patch, patch.behind(), opening));
  }

  private static float at(HolePatch patch, float[] map, MmPoint place) {
    int column = (int) Math.round(place.x() * PER_MM) - patch.left();
    int row = (int) Math.round(place.y() * PER_MM) - patch.top();
    return map[row * patch.width() + column];
  }
}
