package sheaf.samples.scan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class PoseTest {

  private static final double FOCAL = 2448;

  /** Where a place of the sheet is seen, in pixels from the picture's middle. */
  private static double[] seen(Pose pose, double x, double y) {
    double[][] axes = pose.axes();
    double[] camera = pose.place(3264, 2448, 200, 150, FOCAL);
    double[] ray = {x - camera[0], y - camera[1], -camera[2]};
    double[] turned = new double[3];
    for (int i = 0; i < 3; i++) {
      turned[i] = axes[i][0] * ray[0] + axes[i][1] * ray[1] + axes[i][2] * ray[2];
    }
    return new double[] {FOCAL * turned[0] / turned[2], FOCAL * turned[1] / turned[2]};
  }

  @Test
  void aCameraStraightBeforeTheSheetSeesItUprightAndAsLargeAsAsked() {
    Pose straight = new Pose(0, 0, 0, 0.8, 0, 0);
    double[] corner = seen(straight, 100, 75);
    assertThat(corner[0]).isCloseTo(0.8 * 3264 / 2, within(3.0));
    assertThat(corner[1]).isCloseTo(0.8 * 2448 / 2, within(3.0));
  }

  @Test
  void rollTurnsTheSheetClockwise() {
    Pose rolled = new Pose(0, 0, 90, 0.8, 0, 0);
    double[] right = seen(rolled, 50, 0);
    assertThat(right[0]).isCloseTo(0, within(1e-6));
    assertThat(right[1]).isPositive();
  }

  @Test
  void tiltMakesOneSideSmallerAndKeepsTheAimInTheMiddle() {
    Pose tilted = new Pose(30, 90, 0, 0.8, 12, -7);
    assertThat(seen(tilted, 12, -7)[0]).isCloseTo(0, within(1e-6));
    double left = seen(tilted, -100, 75)[1] - seen(tilted, -100, -75)[1];
    double right = seen(tilted, 100, 75)[1] - seen(tilted, 100, -75)[1];
    assertThat(Math.abs(left / right - 1)).isGreaterThan(0.2);
  }

  @Test
  void everyCornerIsInThePictureWhenTheSheetMayNotReachOut() {
    for (int toward = 0; toward < 360; toward += 30) {
      Pose pose = new Pose(28, toward, 10, 0.95, 3, 5);
      for (int corner = 0; corner < 4; corner++) {
        double[] at = seen(pose, corner % 2 * 200 - 100, corner / 2 * 150 - 75);
        assertThat(Math.abs(at[0])).isLessThan(3264 / 2.0);
        assertThat(Math.abs(at[1])).isLessThan(2448 / 2.0);
      }
    }
  }
}
