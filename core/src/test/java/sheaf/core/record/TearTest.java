package sheaf.core.record;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheaf.core.page.MmVector;

class TearTest {

  /** The face of a clock: right is three, low is six. */
  @ParameterizedTest
  @CsvSource({
    "0, -20, 12",
    "10, -17, 1",
    "20, 0, 3",
    "0, 20, 6",
    "-20, 0, 9",
    "-28, -17, 10",
    "-6, -19, 11"
  })
  void aTearPointsToAnHour(double right, double down, int hour) {
    assertThat(tear(right, down).clock()).isEqualTo(hour);
  }

  @Test
  void aTearShorterThanTheShaftIsARoundHole() {
    assertThat(tear(0.5, 0.8).isBulletHole()).isTrue();
    assertThat(tear(1, 2).isBulletHole()).isFalse();
  }

  private static Tear tear(double right, double down) {
    return new Tear(2, 1, new MmVector(right, down));
  }
}
