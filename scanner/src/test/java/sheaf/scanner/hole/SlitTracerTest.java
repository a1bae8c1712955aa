package sheaf.scanner.hole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Slits are drawn from a hole of 3 mm radius at 200, 200. */
class SlitTracerTest {

  private static final Circle HOLE = new Circle(200, 200, 30);

  @Test
  void threeSlitsAreFollowedToTheirEnds() {
    try (DrawnSurface sheet =
        new DrawnSurface()
            .disc(200, 200, 30, 0.8)
            .line(200, 200, 340, 200, 0.6)
            .line(200, 200, 130, 321, 0.6)
            .line(200, 200, 130, 79, 0.6)) {
      List<Slit> slits = trace(sheet);

      assertThat(slits).hasSize(3);
      assertThat(slits).allSatisfy(slit -> assertThat(slit.length()).isCloseTo(140, within(4.0)));
    }
  }

  @Test
  void aLineThatPassesBesideTheHoleIsCrossedAndNotFollowed() {
    try (DrawnSurface sheet =
        new DrawnSurface().disc(200, 200, 30, 0.8).line(240, 100, 240, 300, 0.6)) {
      assertThat(trace(sheet)).allSatisfy(slit -> assertThat(slit.length()).isLessThan(50));
    }
  }

  @Test
  void aSlitGoesOnBeyondPrintThatHidesAPartOfIt() {
    try (DrawnSurface sheet =
        new DrawnSurface()
            .disc(200, 200, 30, 0.8)
            .line(200, 200, 340, 200, 0.6)
            .hide(260, 150, 25, 100)) {
      assertThat(trace(sheet))
          .singleElement()
          .satisfies(slit -> assertThat(slit.length()).isCloseTo(140, within(4.0)));
    }
  }

  private static List<Slit> trace(DrawnSurface sheet) {
    Square around = Square.around(200, 200, 190);
    Grid tone = new Grid(around, sheet.surface().darkness(around));
    Grid hidden = Grid.of(around, sheet.surface().hidden(around));
    SlitTracer.Layer layer = new SlitTracer.Layer(tone, hidden, 0.08);
    return new SlitTracer(List.of(layer)).trace(HOLE, HeadShape.SHORTEST);
  }
}
