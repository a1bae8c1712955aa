package sheaf.core.energy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import sheaf.core.Oracles;
import sheaf.core.measure.Unit;

/** Numbers of arrow and bow against published values; the sources are in {@code oracles.json}. */
class NumberOraclesTest {

  private static double expected(String id) {
    return Oracles.expected(id).doubleValue();
  }

  @Test
  void unitsAreExact() {
    assertThat(Unit.GRAIN.convert(1, Unit.GRAM)).isEqualTo(expected("U1"));
    assertThat(ArrowNumbers.JOULES_PER_FOOT_POUND).isCloseTo(expected("U2"), within(1e-15));
  }

  @Test
  void energyAndMomentumAreExact() {
    ArrowNumbers arrow = new ArrowNumbers(400, 280);
    assertThat(arrow.footPounds()).isCloseTo(expected("K1"), within(1e-9));
    assertThat(arrow.joules()).isCloseTo(expected("K2"), within(1e-9));
    assertThat(arrow.poundSeconds()).isCloseTo(expected("K3"), within(1e-12));
  }

  @Test
  void spineOfTheOlderMethodFollowsFromBeamTheory() {
    assertThat(Balance.olderSpine(500)).isCloseTo(expected("S1"), within(0.01));
  }

  @Test
  void drawLengthIsThatToThePivotAndAnInchAndThreeQuarters() {
    double ata = Unit.INCH.convert(expected("D1"), Unit.MILLIMETRE);
    assertThat(Unit.MILLIMETRE.convert(DrawLength.toPivotMm(ata), Unit.INCH))
        .isCloseTo(26.25, within(1e-12));
  }

  @Test
  void letOffIsThatOfTheWorkedExample() {
    assertThat(LetOff.percent(44, 16)).isCloseTo(expected("L1"), within(0.05));
  }

  @Test
  void frontOfCentreIsThatOfTheWorkedExample() {
    assertThat(Balance.frontOfCentrePercent(18, 28.5)).isCloseTo(expected("F1"), within(0.01));
  }
}
