package sheaf.core.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class InchesTest {

  @ParameterizedTest(name = "{0} mm is {1}")
  @CsvSource({
    "0, 0 in",
    "0.79, 0 in",
    "-0.79, 0 in",
    "0.80, 1/16 in",
    "1.5875, 1/16 in",
    "3.175, 1/8 in",
    "12.7, 1/2 in",
    "25.4, 1 in",
    "30.1625, 1 3/16 in",
    "-30.1625, -1 3/16 in",
    "-12.7, -1/2 in",
    "25.3, 1 in",
    "44.45, 1 3/4 in",
    "822.325, 32 3/8 in"
  })
  void sixteenthsAreReducedFractions(double mm, String expected) {
    assertThat(Inches.nearestSixteenth(mm)).isEqualTo(expected);
  }

  // 1/32 in is 0.79375 mm: halfway between two sixteenths.
  @Test
  void halfASixteenthGoesAwayFromZeroBothWays() {
    assertThat(Inches.nearestSixteenth(0.79375)).isEqualTo("1/16 in");
    assertThat(Inches.nearestSixteenth(-0.79375)).isEqualTo("-1/16 in");
  }

  @ParameterizedTest(name = "{0} mm is {1}")
  @CsvSource({
    "30.1625, 1.19 in",
    "-30.1625, -1.19 in",
    "0, 0.00 in",
    "-0.1, 0.00 in",
    "2.54, 0.10 in",
    "25.4, 1.00 in",
    "25.39, 1.00 in"
  })
  void decimalsHaveTwoPlacesAndNoNegativeZero(double mm, String expected) {
    assertThat(Inches.decimal(mm)).isEqualTo(expected);
  }

  @Test
  void whatIsNoNumberIsRefused() {
    assertThatThrownBy(() -> Inches.decimal(Double.NaN))
        .isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Inches.nearestSixteenth(Double.POSITIVE_INFINITY))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
