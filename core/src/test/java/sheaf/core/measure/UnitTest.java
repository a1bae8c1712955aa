package sheaf.core.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class UnitTest {

  @Nested
  class Constants {

    // Derived from the yard and pound of 1959 and g0 = 9.80665 m/s²; no tolerance.
    @ParameterizedTest(name = "1 {0} is {2} {1}")
    @CsvSource({
      "in, mm, 25.4",
      "yd, m, 0.9144",
      "yd, in, 36",
      "gr, g, 0.06479891",
      "lb, N, 4.4482216152605",
      "ft/s, m/s, 0.3048",
      "m, mm, 1000"
    })
    void areExact(String from, String to, double expected) {
      assertThat(unit(from).convert(1, unit(to))).isEqualTo(expected);
    }

    // 0.45359237 · 9.80665 · 0.3048, the foot taken from the foot per second.
    @Test
    void makeTheFootPoundExact() {
      BigDecimal footPound = Unit.POUND_FORCE.siFactor().multiply(Unit.FEET_PER_SECOND.siFactor());
      assertThat(footPound).isEqualByComparingTo("1.35581794833140040");
      assertThat(footPound.doubleValue()).isCloseTo(1.3558179483314003, within(1e-15));
    }

    @Test
    void makeSevenThousandGrainsOnePound() {
      assertThat(Unit.GRAIN.siFactor().multiply(new BigDecimal(7000)))
          .isEqualByComparingTo("0.45359237");
    }

    // ASTM F1544-11 tells its test arrow in both systems: 350 gr = 22.7 g, 70 lb = 311.4 N.
    @Test
    void agreeWithThoseOfTheArrowSpeedStandard() {
      assertThat(Unit.GRAIN.convert(350, Unit.GRAM)).isCloseTo(22.7, within(0.05));
      assertThat(Unit.POUND_FORCE.convert(70, Unit.NEWTON)).isCloseTo(311.4, within(0.05));
    }
  }

  @Nested
  class Conversion {

    // AMO standard FP-3 (2000): draw length = nocking point to pivot point + 1 3/4 in; 26 1/4 is
    // 28.
    @Test
    void keepsSixteenthsOfAnInchWhole() {
      double mm = Unit.INCH.convert(26.25, Unit.MILLIMETRE) + 44.45;
      assertThat(Unit.MILLIMETRE.convert(mm, Unit.INCH)).isEqualTo(28.0);
    }

    @Test
    void toTheSameUnitChangesNothing() {
      assertThat(Unit.GRAIN.convert(0.1 + 0.2, Unit.GRAIN)).isEqualTo(0.1 + 0.2);
    }

    @Test
    void toAnotherDimensionIsRefusedByName() {
      assertThatThrownBy(() -> Unit.INCH.convert(1, Unit.GRAIN))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageContaining("in (length)")
          .hasMessageContaining("gr (mass)");
    }

    @Test
    void ofWhatIsNoNumberIsRefused() {
      assertThatThrownBy(() -> Unit.INCH.convert(Double.NaN, Unit.YARD))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageContaining("NaN");
    }
  }

  @Nested
  class Symbols {

    @ParameterizedTest
    @EnumSource
    void leadBackToTheirUnit(Unit unit) {
      assertThat(Unit.ofSymbol(unit.symbol())).contains(unit);
    }

    @Test
    void thatNobodyUsesLeadNowhere() {
      assertThat(Unit.ofSymbol("furlong")).isEmpty();
    }
  }

  private static Unit unit(String symbol) {
    return Unit.ofSymbol(symbol).orElseThrow();
  }
}
