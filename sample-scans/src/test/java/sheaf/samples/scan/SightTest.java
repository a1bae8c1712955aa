package sheaf.samples.scan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

class SightTest {

  /** Picture corners too, far out on the board, where a steep view is hard to follow back. */
  @Property(tries = 200)
  void thePlaceThatIsSeenAtAPixelIsFoundAgain(
      @ForAll @IntRange(max = 40) int tilt,
      @ForAll @IntRange(max = 360) int toward,
      @ForAll @IntRange(max = 360) int roll,
      @ForAll @DoubleRange(min = -0.02, max = 0.02) double radial,
      @ForAll @IntRange(max = 4000) int x,
      @ForAll @IntRange(max = 3000) int y) {
    Pose pose = new Pose(tilt, toward, roll, 0.9, 3, -4);
    Sight sight = new Sight(pose, new Lens(0.75, radial, 0), 4000, 3000, 210, 297);
    PaperShape.Surface surface = PaperShape.of(Bend.curl(30, 5, 160, 12)).on(210, 297);
    double[] place = new double[2];

    sight.find(surface, x, y, place);

    double[] seen = new double[2];
    sight.project(surface, place[0], place[1], new double[3], seen);
    assertThat(seen[0]).isCloseTo(x, within(0.01));
    assertThat(seen[1]).isCloseTo(y, within(0.01));
  }
}
