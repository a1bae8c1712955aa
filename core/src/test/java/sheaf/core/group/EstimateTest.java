package sheaf.core.group;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class EstimateTest {

  private static Estimate of(double value, double margin) {
    return new Estimate(value, OptionalDouble.of(margin));
  }

  @ParameterizedTest(name = "{0} give or take {1}, where 10 does not matter: {2}")
  @CsvSource({
    "5, 4.9, SHOWN",
    "-5, 4.9, SHOWN",
    "5, 5, NOT_SHOWN",
    "3, 7, NOT_SHOWN",
    "3, 7.1, NOT_ENOUGH_ARROWS",
    "-8, 20, NOT_ENOUGH_ARROWS",
    "0, 0, NOT_SHOWN"
  })
  void differsFromZeroOnlyAsFarAsItsIntervalSays(double value, double margin, Claim claim) {
    assertThat(of(value, margin).differsFromZero(10)).isEqualTo(claim);
  }

  @Test
  void withoutAMarginShowsNothing() {
    assertThat(new Estimate(500, OptionalDouble.empty()).differsFromZero(10))
        .isEqualTo(Claim.NOT_ENOUGH_ARROWS);
  }

  @Test
  void keepsAMarginAboveZeroWhenItsSignTurns() {
    assertThat(of(2, 1).times(-3)).isEqualTo(of(-6, 3));
  }

  @Test
  void mustBeFinite() {
    assertThatThrownBy(() -> of(Double.NaN, 1)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> of(1, -1)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> of(1, Double.POSITIVE_INFINITY))
        .isInstanceOf(IllegalArgumentException.class);
  }
}
