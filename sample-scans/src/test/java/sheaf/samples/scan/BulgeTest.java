package sheaf.samples.scan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class BulgeTest {

  @Test
  void flatPaperLiesWhereItIsMeasured() {
    Bulge flat = new Bulge(216, 0);
    assertThat(flat.height(30)).isZero();
    assertThat(flat.onPaper(-71.5)).isCloseTo(-71.5, within(1e-9));
  }

  @Test
  void bulgingPaperIsHighestInTheMiddleAndHeldAtItsEdges() {
    Bulge bulge = new Bulge(216, 5);
    assertThat(bulge.height(0)).isEqualTo(5);
    assertThat(bulge.height(107.9)).isCloseTo(0, within(0.01));
  }

  @Test
  void paperIsLongerThanTheBoardUnderIt() {
    Bulge bulge = new Bulge(216, 5);
    double length = 0;
    double step = 0.01;
    for (int i = 0; i < 6000; i++) {
      length += Math.hypot(step, bulge.height((i + 1) * step) - bulge.height(i * step));
    }
    assertThat(bulge.onPaper(60) - bulge.onPaper(0)).isCloseTo(length, within(0.002));
    assertThat(length).isGreaterThan(60.05);
  }
}
