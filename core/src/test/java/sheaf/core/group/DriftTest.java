package sheaf.core.group;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import sheaf.core.measure.Distance;
import sheaf.core.measure.Unit;

class DriftTest {

  private static LineShot shot(double yards, double rightMm) {
    return new LineShot(new Distance(yards, Unit.YARD), rightMm);
  }

  private static List<LineShot> shots(double... yardsAndRight) {
    List<LineShot> shots = new ArrayList<>();
    for (int i = 0; i < yardsAndRight.length; i += 2) {
      shots.add(shot(yardsAndRight[i], yardsAndRight[i + 1]));
    }
    return shots;
  }

  @Test
  void isFoundInAnyUnit() {
    // By hand: 2 mm right at 10 yd and 4 mm at 20 yd is 2 mm for 9.144 m, through zero.
    Drift drift = Drift.of(shots(10, 2, 20, 4)).orElseThrow();

    assertThat(drift.mmPerMetre().value()).isEqualTo(2 / 9.144, within(1e-12));
    assertThat(drift.mmAtZero().value()).isEqualTo(0, within(1e-12));
    assertThat(drift.at(9.144)).isEqualTo(2, within(1e-12));
  }

  @Test
  void isNotToldFromOneDistance() {
    assertThat(Drift.of(shots(20, 1, 20, 3))).isEmpty();
    assertThat(Drift.of(List.of())).isEmpty();
  }

  @Test
  void isMirroredWithTheSheet() {
    Drift drift = Drift.of(shots(3, 1, 5, -2, 10, 8, 20, 15)).orElseThrow();
    Drift mirrored = Drift.of(shots(3, -1, 5, 2, 10, -8, 20, -15)).orElseThrow();

    assertThat(mirrored.mmPerMetre().value()).isEqualTo(-drift.mmPerMetre().value(), within(1e-12));
    assertThat(mirrored.mmPerMetre().margin()).isEqualTo(drift.mmPerMetre().margin());
  }

  @Nested
  class WhatItShows {

    @Test
    void twoShotsShowNothing() {
      Drift drift = Drift.of(shots(3, 0, 20, 60)).orElseThrow();

      assertThat(drift.drifts()).isEqualTo(Claim.NOT_ENOUGH_ARROWS);
      assertThat(drift.isOff()).isEqualTo(Claim.NOT_ENOUGH_ARROWS);
    }

    @Test
    void impactThatGoesFartherLeftWithDistanceIsADriftAndNoOffset() {
      Drift drift = Drift.of(shots(3, -6, 5, -11, 10, -20, 15, -29, 20, -41)).orElseThrow();

      assertThat(drift.drifts()).isEqualTo(Claim.SHOWN);
      assertThat(drift.mmPerMetre().high()).isNegative();
      assertThat(drift.isOff()).isEqualTo(Claim.NOT_SHOWN);
    }

    @Test
    void impactOffByTheSameEverywhereIsAnOffsetAndNoDrift() {
      Drift drift = Drift.of(shots(3, 24, 5, 26, 10, 25, 15, 24, 20, 26)).orElseThrow();

      assertThat(drift.drifts()).isEqualTo(Claim.NOT_SHOWN);
      assertThat(drift.isOff()).isEqualTo(Claim.SHOWN);
      assertThat(drift.mmAtZero().low()).isPositive();
    }

    @Test
    void wideScatterShowsNeither() {
      Drift drift = Drift.of(shots(3, 30, 5, -25, 10, 40, 15, -35, 20, 38)).orElseThrow();

      assertThat(drift.drifts()).isEqualTo(Claim.NOT_ENOUGH_ARROWS);
      assertThat(drift.isOff()).isEqualTo(Claim.NOT_ENOUGH_ARROWS);
    }
  }

  /** Our own simulation of arrows that scatter by an angle, on a line without any drift. */
  @Nested
  class TheIntervalOfArrowsThatScatterByAnAngle {

    private static final int RUNS = 4000;
    private static final double[] YARDS = {3, 5, 10, 15, 20};

    private double coverage(DoubleUnaryOperator deviation) {
      Random random = new Random(7);
      int held = 0;
      for (int run = 0; run < RUNS; run++) {
        List<LineShot> shots = new ArrayList<>();
        for (double yards : YARDS) {
          double deviates = deviation.applyAsDouble(yards);
          shots.add(shot(yards, deviates * random.nextGaussian()));
          shots.add(shot(yards, deviates * random.nextGaussian()));
        }
        Estimate drift = Drift.of(shots).orElseThrow().mmPerMetre();
        held += drift.low() <= 0 && drift.high() >= 0 ? 1 : 0;
      }
      return held / (double) RUNS;
    }

    @Test
    void holdsTheTruthAboutNineteenTimesInTwenty() {
      assertThat(coverage(yards -> 0.6 * yards)).isBetween(0.925, 0.965);
      assertThat(coverage(yards -> Math.hypot(2, 0.6 * yards))).isBetween(0.93, 0.97);
    }
  }
}
