package sheaf.forms.draw;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheaf.core.page.MmRect;

class QrSymbolTest {

  private static final MmRect SQUARE = new MmRect(10, 20, 26, 26);

  @ParameterizedTest
  @CsvSource({"21, 29", "25, 29", "35, 29", "36, 33", "50, 33"})
  void theSmallestVersionWithStrongestCorrectionIsTaken(int characters, int modules) {
    // ISO/IEC 18004, table 7, alphanumeric capacity at level H: version 2 holds 20 characters,
    // version 3 holds 35, version 4 holds 50. A version has 17 + 4 v modules a side.
    List<MmRect> dark = QrSymbol.onSheet(SQUARE, "A".repeat(characters));

    double module = 26.0 / (modules + 8);
    assertThat(left(dark)).isEqualTo(10 + 4 * module, within(1e-9));
    assertThat(dark).allMatch(run -> Math.abs(run.height() - module) < 1e-9);
    assertThat(module).isGreaterThan(0.6);
  }

  @Test
  void aWhiteBorderOfFourModulesStaysInsideTheSquare() {
    List<MmRect> dark = QrSymbol.onSheet(SQUARE, "A".repeat(25));

    assertThat(dark).allMatch(SQUARE.grow(-4 * 26.0 / 37 + 1e-9)::contains);
  }

  @Test
  void aTextTooLongForModulesOfASoundSizeIsRefusedWithoutRepeatingIt() {
    assertThatThrownBy(() -> QrSymbol.onSheet(SQUARE, "SECRET".repeat(20)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("120 characters are too many for a code of 26 mm");
  }

  private static double left(List<MmRect> dark) {
    return dark.stream().mapToDouble(MmRect::x).min().orElseThrow();
  }
}
