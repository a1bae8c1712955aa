package sheaf.core.result;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import sheaf.core.group.Claim;
import sheaf.core.group.Drift;
import sheaf.core.layout.UnitSystem;
import sheaf.core.layout.Variant;
import sheaf.core.measure.Distance;
import sheaf.core.measure.Unit;
import sheaf.core.page.MmPoint;

class LineResultTest {

  private static Readings printed() {
    return Readings.line(4, Variant.SET_DISTANCES, UnitSystem.INCHES);
  }

  private static Readings written() {
    return Readings.line(4, Variant.OPEN_DISTANCES, UnitSystem.METRIC);
  }

  /** Two arrows at each band, 5 mm above and below its spot, off by so much at each. */
  private static Readings shot(Readings sheet, double... right) {
    for (int band = 1; band <= right.length; band++) {
      sheet.shotAtBand(band, right[band - 1] - 0.5, -5).shotAtBand(band, right[band - 1] + 0.5, 5);
    }
    return sheet;
  }

  @Test
  void everyBandHasItsPrintedDistanceAndItsShotsFromItsOwnSpot() {
    LineResult result = LineResult.of(printed().shotAtBand(3, 7, -4).read());

    assertThat(result.bands()).extracting(LineResult.Band::number).containsExactly(1, 2, 3, 4, 5);
    LineResult.Band third = result.bands().get(2);
    assertThat(third.distance()).contains(new Distance(10, Unit.YARD));
    assertThat(third.shots()).hasSize(1);
    assertThat(third.shots().get(0).distanceTo(new MmPoint(7, -4))).isCloseTo(0, within(1e-9));
    assertThat(result.bands().get(0).shots()).isEmpty();
  }

  @Test
  void aSheetPrintedSmallIsCorrected() {
    LineResult result = LineResult.of(printed().printedAt(0.95, 0.97).shotAtBand(1, 10, 10).read());

    MmPoint shot = result.bands().get(0).shots().get(0);
    assertThat(shot.distanceTo(new MmPoint(9.5, 9.7))).isCloseTo(0, within(1e-9));
  }

  @Test
  void theDriftIsThatOfTheShots() {
    LineResult result = LineResult.of(shot(printed(), 3, 5, 10, 15, 20).read());

    // By hand: 1 mm for each yard.
    Drift drift = result.drift().orElseThrow();
    assertThat(drift.mmPerMetre().value()).isCloseTo(1 / 0.9144, within(1e-9));
    assertThat(drift.mmAtZero().value()).isCloseTo(0, within(1e-9));
    assertThat(drift.drifts()).isEqualTo(Claim.SHOWN);
  }

  @Test
  void anotherSheetIsNone() {
    assertThatThrownBy(() -> LineResult.of(Readings.pair(2).read()))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Nested
  class WrittenDistances {

    @Test
    void countOnceTheyHaveBeenRead() {
      Readings sheet =
          written().number("distance_1", 5, Unit.METRE).number("distance_2", 18, Unit.METRE);
      LineResult result = LineResult.of(shot(sheet, 2, 9).read());

      assertThat(result.shots()).hasSize(4);
      assertThat(result.drift()).isPresent();
    }

    @Test
    void thatAreBlankLeaveTheShotsOutAndSaySo() {
      Readings sheet =
          written().number("distance_1", 5, Unit.METRE).number("distance_3", 20, Unit.METRE);
      LineResult result = LineResult.of(shot(sheet, 2, 9, 4).read());

      assertThat(result.withoutDistance()).containsExactly(2);
      assertThat(LineVerdict.of(result))
          .endsWith("Band 2 has no distance that is known, so its shots are left out.");
    }

    @Test
    void ofZeroAreNone() {
      Readings sheet = written().number("distance_1", 0, Unit.METRE);
      LineResult result = LineResult.of(shot(sheet, 2).read());

      assertThat(result.bands().get(0).distance()).isEqualTo(Optional.empty());
      assertThat(LineVerdict.of(result)).startsWith("No hole with a known distance was found");
    }
  }

  @Nested
  class TheSentence {

    private String of(Readings sheet) {
      return LineVerdict.of(LineResult.of(sheet.read()));
    }

    @Test
    void saysThatADriftSpeaksOfTheRest() {
      assertThat(of(shot(printed(), -3, -5, -10, -15, -20)))
          .startsWith("Impact drifts with distance, by 0.04 in left for each yard (with 95 %")
          .contains("in left): this speaks of the rest.")
          .contains("It is not shown to be off by the same at every distance.");
    }

    @Test
    void saysThatAnOffsetSpeaksOfTheSight() {
      assertThat(of(shot(printed(), 20, 20, 20, 20, 20)))
          .startsWith("Impact is not shown to drift with distance: with 95 % confidence by at most")
          .contains("It is off by the same at every distance, by 0.79 in right")
          .endsWith("this speaks of the sight.");
    }

    @Test
    void tellsBothApartWhenBothAreThere() {
      assertThat(of(shot(printed(), 23, 25, 30, 35, 40)))
          .contains("this speaks of the rest.")
          .contains("It is also off by the same at every distance");
    }

    @Test
    void isInTheUnitsOfTheSheet() {
      Readings sheet = Readings.line(4, Variant.SET_DISTANCES, UnitSystem.METRIC);
      assertThat(of(shot(sheet, 6, 10, 20, 30, 40)))
          .startsWith("Impact drifts with distance, by 2.0 mm right for each metre");
    }

    @Test
    void doesNotGuessFromTwoArrows() {
      assertThat(of(printed().shotAtBand(1, 0, 0).shotAtBand(5, 50, 0)))
          .startsWith("These are too few arrows to show whether impact drifts with distance");
    }

    @Test
    void asksForASecondDistance() {
      assertThat(of(printed().shotAtBand(2, 0, 0).shotAtBand(2, 5, 0)))
          .isEqualTo("All shots are from one distance: a drift needs two distances or more.");
    }
  }

  @Nested
  class CommonPractice {

    private Optional<String> of(double... right) {
      return LineVerdict.practice(LineResult.of(shot(printed(), right).read()).shots());
    }

    @Test
    void movesTheRestForADriftAndSaysThatSourcesDisagreeWhichWay() {
      assertThat(of(3, 5, 10, 15, 20))
          .hasValueSatisfying(
              practice ->
                  assertThat(practice)
                      .startsWith("Common practice, no published standard: move the rest")
                      .contains("Sources disagree which way"));
    }

    @Test
    void movesTheSightForAnOffset() {
      assertThat(of(-20, -20, -20, -20, -20))
          .hasValueSatisfying(
              practice -> assertThat(practice).contains("move the sight", "to the left"));
    }

    @Test
    void movesNothingForWhatIsNotShown() {
      assertThat(of(1, -1, 1, -1, 0)).isEmpty();
    }
  }
}
