package sheaf.scanner.hole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Slits are given as angle in degrees and length from the axis in millimetres. */
class BladesTest {

  private static final double RADIUS = 30;

  @Test
  void whatOneHoleHidesTheOthersTell() {
    FoundHole lostASlit = hole(200, slit(0, 20), slit(120, 19.5));
    FoundHole whole = hole(900, slit(40, 20), slit(160, 19.6), slit(280, 19.4));
    FoundHole other = hole(1600, slit(10, 20.2), slit(130, 19.9), slit(250, 19.8));

    Blades blades = Blades.of(List.of(lostASlit, whole, other));

    assertThat(blades.count()).isEqualTo(3);
    assertThat(blades.cut()).isCloseTo(40, within(0.5));
  }

  @Test
  void aLineThatRunsOnDoesNotWidenTheCut() {
    FoundHole crossedByAPen = hole(200, slit(0, 29), slit(180, 20));
    FoundHole clean = hole(900, slit(40, 20), slit(220, 20));
    FoundHole other = hole(1600, slit(90, 19.8), slit(271, 20));

    assertThat(Blades.of(List.of(crossedByAPen, clean, other)).cut()).isCloseTo(40, within(0.5));
  }

  @Test
  void bladesOfTwoLengthsAreFour() {
    FoundHole hole = hole(200, slit(0, 20), slit(90, 12), slit(180, 19.8), slit(270, 12));

    assertThat(Blades.of(List.of(hole)).count()).isEqualTo(4);
  }

  @Test
  void withoutABroadheadThereAreNone() {
    assertThat(Blades.of(List.of()).count()).isZero();
  }

  private static FoundHole hole(double x, Slit... slits) {
    Circle circle = new Circle(x, 200, RADIUS);
    List<Slit> lines = Arrays.asList(slits);
    return new FoundHole(circle, 2, 1, HeadShape.of(circle, lines), lines);
  }

  private static Slit slit(double degrees, double length) {
    return new Slit(Math.toRadians(degrees), 10 * length, 1);
  }
}
