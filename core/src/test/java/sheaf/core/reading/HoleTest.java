package sheaf.core.reading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import sheaf.core.layout.Aim;
import sheaf.core.page.MmPoint;

class HoleTest {

  @Test
  void errorsOfUnlikeCausesAddUpAsSquares() {
    Hole hole = new Hole(new MmPoint(90, 120), 0.3, 6, Head.BROADHEAD, 3, 28, Aim.SHARED, 0.9);

    Hole moved = hole.movedWithin(0.4);

    assertThat(moved.axisError()).isCloseTo(0.5, within(1e-12));
    assertThat(moved).usingRecursiveComparison().ignoringFields("axisError").isEqualTo(hole);
  }
}
