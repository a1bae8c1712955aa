package sheaf.scanner.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import sheaf.core.page.MmPoint;
import sheaf.core.page.Paper;

class PaperCurlTest {

  private static final PaperCurl A4 = new PaperCurl(Paper.A4);

  /** The sheet's first shape bends it across; 6 mm of it lift the long edges by 9 mm. */
  private static double[] rolled(double much) {
    double[] curl = new double[PaperCurl.SHAPES];
    curl[0] = much;
    return curl;
  }

  private static double[] space(double[] curl, double x, double y) {
    double[] space = new double[3];
    A4.at(new MmPoint(105 + x, 148.5 + y)).move(curl, 0, space);
    return space;
  }

  @Test
  void thereIsAShapeForEachPairOfPowersThatBendsTheSheet() {
    assertThat(PaperCurl.power(0)).isEqualTo(2);
    assertThat(PaperCurl.power(3)).isEqualTo(3);
    assertThat(PaperCurl.power(PaperCurl.SHAPES - 1)).isEqualTo(6);
  }

  @Test
  void flatPaperLiesWhereItIsMeasured() {
    assertThat(space(rolled(0), 40, -70)).containsExactly(40, -70, 0);
  }

  @Property(tries = 100)
  void paperKeepsItsLengthAcrossTheBend(
      @ForAll @DoubleRange(min = -8, max = 8) double much,
      @ForAll @DoubleRange(min = -140, max = 140) double y) {
    double length = 0;
    double[] before = space(rolled(much), -100, y);
    for (double x = -99; x <= 100; x++) {
      double[] here = space(rolled(much), x, y);
      length +=
          Math.sqrt(
              Math.pow(here[0] - before[0], 2)
                  + Math.pow(here[1] - before[1], 2)
                  + Math.pow(here[2] - before[2], 2));
      before = here;
    }

    assertThat(length).isCloseTo(200, within(0.05));
  }

  @Test
  void paperRolledOneWayHasNoGaussianCurvatureAndABowlHas() {
    double[] bowl = rolled(6);
    bowl[2] = 6;

    assertThat(A4.curvature(rolled(6), 0, 0.3, -0.4)).isCloseTo(0, within(1e-15));
    // 18 mm over the half width squared, times the same over the half height.
    assertThat(A4.curvature(bowl, 0, 0, 0))
        .isCloseTo(18 / (105.0 * 105) * 18 / (148.5 * 148.5), within(1e-12));
  }
}
