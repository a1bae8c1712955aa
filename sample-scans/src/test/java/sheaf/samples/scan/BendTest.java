package sheaf.samples.scan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class BendTest {

  private static double[] at(Bend bend, double x, double y) {
    double[] place = {x, y, 0};
    bend.move(x, y, place);
    return place;
  }

  private static double apart(double[] a, double[] b) {
    return Math.sqrt(
        Math.pow(a[0] - b[0], 2) + Math.pow(a[1] - b[1], 2) + Math.pow(a[2] - b[2], 2));
  }

  @Property(tries = 200)
  void paperDoesNotStretchHoweverItBends(
      @ForAll @IntRange(max = 360) int direction,
      @ForAll @DoubleRange(min = -100, max = 100) double x,
      @ForAll @DoubleRange(min = -140, max = 140) double y,
      @ForAll @IntRange(max = 360) int way) {
    double dx = 0.5 * Math.cos(Math.toRadians(way));
    double dy = 0.5 * Math.sin(Math.toRadians(way));
    for (Bend bend :
        List.of(
            Bend.curl(direction, 10, 150, 15),
            Bend.arch(direction, 210, 8),
            Bend.lifted(direction, 20, 140, 12),
            Bend.waves(direction, 90, 1, 2))) {
      assertThat(apart(at(bend, x, y), at(bend, x + dx, y + dy))).isCloseTo(0.5, within(0.0005));
    }
  }

  @Test
  void anArchIsHighestInTheMiddleAndHeldAtBothEdges() {
    Bend arch = Bend.arch(0, 216, 5);

    assertThat(at(arch, 0, 40)[2] - at(arch, 108, 40)[2]).isCloseTo(5, within(0.05));
    assertThat(at(arch, -108, 40)[2]).isCloseTo(at(arch, 108, 40)[2], within(0.01));
  }

  @Test
  void aLiftedEdgeRisesByWhatIsAskedAndLeavesTheRestFlat() {
    Bend lifted = Bend.lifted(90, 40, 148, 12);

    assertThat(at(lifted, 30, 148)[2]).isCloseTo(12, within(0.1));
    assertThat(at(lifted, 30, 39)).containsExactly(30, 39, 0);
  }

  @Test
  void aSheetRestsOnTheBoardWithItsLowestPlace() {
    PaperShape.Surface surface = PaperShape.of(Bend.curl(0, -30, 140, 15)).on(210, 297);
    double[] lowest = new double[3];
    surface.at(-30, 0, lowest);

    assertThat(lowest[2]).isCloseTo(0, within(0.1));
  }

  @Test
  void aFoldedCornerCoversItsMirrorImageOnly() {
    PaperShape.DogEar ear = new PaperShape.DogEar(true, false, 20, 20);

    assertThat(ear.beyond(104, -147, 210, 297)).isPositive();
    assertThat(ear.covers(90, -134, 210, 297)).isTrue();
    assertThat(ear.covers(80, -120, 210, 297)).isFalse();
    assertThat(ear.covers(-90, 134, 210, 297)).isFalse();
  }
}
