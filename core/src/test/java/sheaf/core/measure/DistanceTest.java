package sheaf.core.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class DistanceTest {

  private static final double MM_PER_INCH = 25.4;

  @Nested
  class ADistance {

    @Test
    void isKeptInTheUnitItWasToldIn() {
      assertThat(new Distance(20, Unit.YARD)).hasToString("20 yd");
      assertThat(new Distance(18.5, Unit.METRE)).hasToString("18.5 m");
      assertThat(new Distance(100, Unit.METRE)).hasToString("100 m");
    }

    @Test
    void isKnownInMillimetres() {
      assertThat(new Distance(20, Unit.YARD).millimetres()).isEqualTo(18288);
      assertThat(new Distance(18, Unit.METRE).millimetres()).isEqualTo(18000);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void mustBeFiniteAndAboveZero(double value) {
      assertThatThrownBy(() -> new Distance(value, Unit.YARD))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageContaining(String.valueOf(value));
    }

    @Test
    void isNotToldInInches() {
      assertThatThrownBy(() -> new Distance(720, Unit.INCH))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageContaining("yards or metres");
    }
  }

  @Nested
  class AMinuteOfAngle {

    private final Distance hundredYards = new Distance(100, Unit.YARD);

    // From the definition: 3600 in · tan(1/60 degree) = 1.047197580... in.
    @Test
    void isOnePointNoughtFourSevenTwoInchesAtAHundredYards() {
      assertThat(MinutesOfAngle.of(1.0472 * MM_PER_INCH, hundredYards)).isCloseTo(1, within(5e-6));
      double exact = 3600 * MM_PER_INCH * Math.tan(Math.PI / 180 / 60);
      assertThat(MinutesOfAngle.of(exact, hundredYards)).isCloseTo(1, within(1e-14));
    }

    @Test
    void isNotProportionalToLargeOffsets() {
      double distance = hundredYards.millimetres();
      assertThat(MinutesOfAngle.of(distance, hundredYards)).isCloseTo(45 * 60, within(1e-9));
    }

    @Test
    void keepsTheSignOfTheOffset() {
      assertThat(MinutesOfAngle.of(-25.4, hundredYards))
          .isEqualTo(-MinutesOfAngle.of(25.4, hundredYards));
      assertThat(MinutesOfAngle.of(0, hundredYards)).isZero();
    }

    @Test
    void needsAFiniteOffset() {
      assertThatThrownBy(() -> MinutesOfAngle.of(Double.NaN, hundredYards))
          .isInstanceOf(IllegalArgumentException.class);
    }
  }
}
