package sheaf.core.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.assertj.core.data.Percentage;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import sheaf.core.measure.Unit;

class FlightTest {

  private static final FlyingArrow ARROW = arrow(426, 6.2);

  private static FlyingArrow arrow(double grains, double shaftMm) {
    double kilograms = Unit.GRAIN.convert(grains, Unit.GRAM) / 1000;
    return new FlyingArrow(kilograms, shaftMm / 1000, FlyingArrow.USUAL_DRAG);
  }

  @Nested
  class WithoutAir {

    private final Flight flight = Flight.of(ARROW, Air.NONE);

    @Test
    void anAngleIsTheOneOfTheClosedForm() {
      double speed = 80;
      double metres = 60;
      double a = Flight.GRAVITY * metres / (speed * speed);
      double expected = Math.asin(a) / 2;
      assertThat(flight.angleTo(speed, metres, 0)).hasValueCloseTo(expected, within(1e-12));
    }
  }

  @Property(tries = 200)
  void withoutAirIsTheParabola(
      @ForAll @DoubleRange(min = 40, max = 120) double speed,
      @ForAll @DoubleRange(min = -0.7, max = 0.7) double angle,
      @ForAll @DoubleRange(min = 1, max = 90) double metres) {
    Flight.Place place = Flight.of(ARROW, Air.NONE).at(speed, angle, metres);
    double seconds = metres / (speed * Math.cos(angle));
    double up = metres * Math.tan(angle) - Flight.GRAVITY * seconds * seconds / 2;
    assertThat(place.seconds()).isCloseTo(seconds, within(1e-9));
    assertThat(place.upMetres()).isCloseTo(up, within(1e-9));
    assertThat(place.upward())
        .isCloseTo(speed * Math.sin(angle) - Flight.GRAVITY * seconds, within(1e-9));
  }

  /** Reference: the Dormand–Prince integrator of order 8 of Apache Commons Math 3.6.1, in time. */
  @Property(tries = 60)
  void withDragIsThatOfAnIndependentIntegration(
      @ForAll @DoubleRange(min = 50, max = 120) double speed,
      @ForAll @DoubleRange(min = -0.3, max = 0.5) double angle,
      @ForAll @DoubleRange(min = 5, max = 90) double metres,
      @ForAll @DoubleRange(min = 250, max = 700) double grains) {
    FlyingArrow arrow = arrow(grains, 7);
    Flight.Place place = Flight.of(arrow, Air.STANDARD).at(speed, angle, metres);
    double k = arrow.perMetre(Air.STANDARD);
    double[] state = {0, 0, speed * Math.cos(angle), speed * Math.sin(angle)};
    new DormandPrince853Integrator(1e-6, 0.01, 1e-13, 1e-13)
        .integrate(new Drag(k), 0, state, place.seconds(), state);
    Percentage close = Percentage.withPercentage(1e-4);
    assertThat(state[0]).isCloseTo(metres, close);
    assertThat(state[1]).isCloseTo(place.upMetres(), within(1e-6 * metres));
    assertThat(state[2]).isCloseTo(place.forward(), close);
    assertThat(state[3]).isCloseTo(place.upward(), within(1e-6 * speed));
  }

  private record Drag(double perMetre) implements FirstOrderDifferentialEquations {
    @Override
    public int getDimension() {
      return 4;
    }

    @Override
    public void computeDerivatives(double t, double[] at, double[] change) {
      double slowing = perMetre * Math.hypot(at[2], at[3]);
      change[0] = at[2];
      change[1] = at[3];
      change[2] = -slowing * at[2];
      change[3] = -slowing * at[3] - 9.80665;
    }
  }

  @Property(tries = 200)
  void neverGainsEnergy(
      @ForAll @DoubleRange(min = 40, max = 120) double speed,
      @ForAll @DoubleRange(min = -0.6, max = 0.6) double angle,
      @ForAll @DoubleRange(min = 0, max = 5) double drag) {
    Flight flight = Flight.of(new FlyingArrow(0.025, 0.007, drag), Air.STANDARD);
    double before = speed * speed / 2;
    for (int metres = 1; metres <= 60; metres++) {
      Flight.Place place = flight.at(speed, angle, metres);
      double now = place.speed() * place.speed() / 2 + Flight.GRAVITY * place.upMetres();
      assertThat(now).isLessThanOrEqualTo(before + 1e-9 * before);
      before = now;
    }
  }

  @Test
  void denserAirSlowsMore() {
    // The densities of dry air at 15 °C and 101 325 Pa by ISO 2533, and of saturated air at 30 °C,
    // 1.146 kg/m³ (meteorological tables, from memory).
    assertThat(Air.of(15, 101_325, 0).kilogramsPerCubicMetre()).isCloseTo(1.225, within(1e-4));
    assertThat(Air.of(30, 101_325, 1).kilogramsPerCubicMetre()).isCloseTo(1.146, within(0.002));
    double thin = Flight.of(ARROW, Air.of(30, 80_000, 0.5)).at(85, 0, 40).speed();
    double dense = Flight.of(ARROW, Air.of(-10, 103_000, 0)).at(85, 0, 40).speed();
    assertThat(thin).isGreaterThan(dense);
  }

  @Test
  void whatIsTooFarIsNotReached() {
    assertThat(Flight.of(ARROW, Air.STANDARD).angleTo(30, 150, 0)).isEmpty();
  }

  @Nested
  class BehindASight {

    private final double speed = Unit.FEET_PER_SECOND.convert(278, Unit.METRES_PER_SECOND);

    /** The eye 4 to 5 inches over the arrow: common practice, no published source. */
    private AimedShot shot(double eyeInches) {
      double eye = Unit.INCH.convert(eyeInches, Unit.METRE);
      return new AimedShot(Flight.of(ARROW, Air.STANDARD), speed, eye);
    }

    /** 426 gr at 278 ft/s, set for 35 yd, 4 to 6 in high at 20 yd: common practice, unpublished. */
    @Test
    void theSightSetForThirtyFiveYardsShootsHighAtTwentyAsTheTradeKnows() {
      for (double eye : new double[] {4, 4.5, 5}) {
        double metres =
            shot(eye)
                .heightAt(Unit.YARD.convert(35, Unit.METRE), Unit.YARD.convert(20, Unit.METRE));
        assertThat(Unit.METRE.convert(metres, Unit.INCH)).isBetween(4.0, 6.0);
      }
    }

    @Test
    void hitsTheAimWhereItIsSetFor() {
      assertThat(shot(4.5).heightAt(30, 30)).isCloseTo(0, within(1e-9));
      assertThat(shot(4.5).heightAt(30, 40)).isNegative();
    }

    @Test
    void marksGoThroughTheOnesThatWereShotIn() {
      SightMarks marks =
          SightMarks.through(shot(4.5), List.of(new ShotIn(20, 21.5), new ShotIn(50, 47.0)));
      assertThat(marks.markFor(20)).isCloseTo(21.5, within(1e-9));
      assertThat(marks.markFor(50)).isCloseTo(47.0, within(1e-9));
      assertThat(marks.markFor(35)).isBetween(30.0, 36.0);
    }

    @Test
    void oneMarkAndTheDistanceOfThePinGiveWhatTwoMarksGive() {
      SightMarks two =
          SightMarks.through(shot(4.5), List.of(new ShotIn(20, 21.5), new ShotIn(50, 47.0)));
      SightMarks one = SightMarks.from(shot(4.5), new ShotIn(20, 21.5), two.perTangent());
      assertThat(one.markFor(60)).isCloseTo(two.markFor(60), within(1e-9));
    }
  }
}
