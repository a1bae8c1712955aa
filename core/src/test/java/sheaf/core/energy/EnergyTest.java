package sheaf.core.energy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Test;
import sheaf.core.measure.Unit;

class EnergyTest {

  private static DrawCurve constant(double pounds, int inches) {
    return new DrawCurve(
        IntStream.rangeClosed(0, inches).mapToObj(i -> new DrawCurve.Pull(i, pounds)).toList());
  }

  /** Holds only where one value of free fall is behind both. */
  @Property(tries = 200)
  void energyIsHalfOfMomentumTimesSpeed(
      @ForAll @DoubleRange(min = 100, max = 900) double grains,
      @ForAll @DoubleRange(min = 100, max = 450) double speed) {
    ArrowNumbers arrow = new ArrowNumbers(grains, speed);
    assertThat(arrow.footPounds())
        .isCloseTo(arrow.poundSeconds() * speed / 2, Percentage.withPercentage(1e-10));
  }

  /** By hand: 60 lb over 20 in are 100 foot-pounds (ASTM F1832-07: the area under the curve). */
  @Test
  void aConstantPullStoresItsProduct() {
    assertThat(constant(60, 20).joules() / ArrowNumbers.JOULES_PER_FOOT_POUND)
        .isCloseTo(100, within(1e-10));
  }

  @Test
  void pullsMayComeInAnyOrder() {
    DrawCurve.Pull a = new DrawCurve.Pull(0, 0);
    DrawCurve.Pull b = new DrawCurve.Pull(1, 10);
    assertThat(new DrawCurve(List.of(b, a)).joules())
        .isEqualTo(new DrawCurve(List.of(a, b)).joules());
  }

  @Test
  void twoPullsAtOneDrawAreRefused() {
    DrawCurve.Pull pull = new DrawCurve.Pull(3, 10);
    assertThatThrownBy(() -> new DrawCurve(List.of(pull, pull)))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void anArrowThatCarriesMoreThanIsStoredIsAMeasuringError() {
    assertThat(constant(60, 20).efficiencyPercent(new ArrowNumbers(400, 300)))
        .isCloseTo(79.92, within(0.01));
    assertThatThrownBy(() -> constant(60, 20).efficiencyPercent(new ArrowNumbers(400, 400)))
        .hasMessageContaining("check pulls, mass and speed");
  }

  /** Both directions of measuring must agree: from the nock and from the front. */
  @Property(tries = 200)
  void frontOfCentreIsTheSameFromEitherEnd(
      @ForAll @DoubleRange(min = 20, max = 34) double length,
      @ForAll @DoubleRange(min = 0.4, max = 0.7) double share) {
    double fromNock = Balance.frontOfCentrePercent(share * length, length);
    double fromFront = -Balance.frontOfCentrePercent((1 - share) * length, length);
    assertThat(fromNock).isCloseTo(fromFront, within(1e-9));
  }

  @Test
  void aBowShotUnderRatingConditionsHasItsOwnSpeedAsRatedSpeed() {
    double draw = Unit.INCH.convert(30, Unit.MILLIMETRE);
    RatedSpeed rated = RatedSpeed.of(new ArrowNumbers(350, 330), 70, draw, 165);
    assertThat(rated.lowFeetPerSecond()).isCloseTo(330, within(1e-9));
    assertThat(rated.highFeetPerSecond()).isCloseTo(330, within(1e-9));
  }

  @Test
  void aHeavierArrowAndAShorterDrawAreRatedFaster() {
    double draw = Unit.INCH.convert(28, Unit.MILLIMETRE);
    RatedSpeed rated = RatedSpeed.of(new ArrowNumbers(426, 278), 65, draw, 165);
    assertThat(rated.lowFeetPerSecond()).isGreaterThan(300);
    assertThat(rated.highFeetPerSecond()).isGreaterThan(rated.lowFeetPerSecond()).isLessThan(360);
  }

  @Test
  void aBowThatHoldsMoreThanItPeaksIsRefused() {
    assertThatThrownBy(() -> LetOff.percent(60, 61)).isInstanceOf(IllegalArgumentException.class);
    assertThat(LetOff.percent(60, 12)).isCloseTo(80, within(1e-12));
  }
}
