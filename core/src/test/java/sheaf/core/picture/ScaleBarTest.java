package sheaf.core.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheaf.core.layout.UnitSystem;

class ScaleBarTest {

  @ParameterizedTest
  @CsvSource({
    "INCHES, 1, 1 in, 25.4",
    "INCHES, 0.5, 2 in, 25.4",
    "INCHES, 2, 1/2 in, 25.4",
    "METRIC, 1, 20 mm, 20",
    "METRIC, 0.4, 50 mm, 20",
    "METRIC, 9, 10 mm, 90"
  })
  void theLongestRoundLengthThatFitsIsTaken(
      UnitSystem units, double perMm, String label, double length) {
    ScaleBar bar = ScaleBar.fit(units, perMm, 68);

    assertThat(bar.label()).isEqualTo(label);
    assertThat(bar.length()).isEqualTo(length, within(1e-9));
  }
}
