package sheaf.core.result;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import sheaf.core.group.Claim;
import sheaf.core.group.Group;
import sheaf.core.layout.UnitSystem;
import sheaf.core.measure.Distance;
import sheaf.core.measure.Unit;
import sheaf.core.page.MmPoint;
import sheaf.core.reading.Head;

class GroupResultTest {

  private static Readings group() {
    return Readings.group(5, UnitSystem.INCHES).at(20, Unit.YARD);
  }

  private static Readings sightIn() {
    return Readings.sightIn(5, UnitSystem.INCHES).at(20, Unit.YARD);
  }

  /** Four shots in a square of so many millimetres around a place. */
  private static Readings square(Readings sheet, double right, double down, double side) {
    double half = side / 2;
    return sheet
        .shotAtGrid(right - half, down - half)
        .shotAtGrid(right + half, down - half)
        .shotAtGrid(right - half, down + half)
        .shotAtGrid(right + half, down + half);
  }

  @Test
  void everyHoleCountsFromTheSpotWhateverItsHead() {
    GroupResult result = GroupResult.of(group().printedAt(0.95, 0.97).shotAtGrid(10, 10).read());

    Group shots = result.shots().orElseThrow();
    assertThat(shots.size()).isEqualTo(1);
    assertThat(shots.shots().get(0).distanceTo(new MmPoint(9.5, 9.7))).isCloseTo(0, within(1e-9));
    assertThat(result.head()).isEqualTo(Head.UNKNOWN);
    assertThat(result.isSightIn()).isFalse();
    assertThat(result.sightMove()).isEmpty();
  }

  @Test
  void theHeadIsWhatIsTicked() {
    assertThat(GroupResult.of(group().says("head", "broadheads").read()).head())
        .isEqualTo(Head.BROADHEAD);
    assertThat(GroupResult.of(group().says("head", "field points").read()).head())
        .isEqualTo(Head.FIELD);
  }

  @Test
  void aWrittenDistanceCountsWhereNoneIsTicked() {
    Readings sheet =
        Readings.group(5, UnitSystem.METRIC).number("distance_written", 35, Unit.METRE);
    assertThat(GroupResult.of(sheet.read()).distance()).contains(new Distance(35, Unit.METRE));
  }

  @Test
  void twoDistancesThatDifferAreNone() {
    assertThat(GroupResult.of(group().number("distance_written", 35, Unit.YARD).read()).distance())
        .isEmpty();
  }

  @Test
  void anotherSheetIsNone() {
    assertThatThrownBy(() -> GroupResult.of(Readings.pair(2).read()))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Nested
  class TheSentences {

    @Test
    void sayHowLargeTheGroupIsAndWhere() {
      List<String> said =
          GroupVerdict.sentences(GroupResult.of(square(group(), 25.4, 0, 30).read()));

      // By hand: the diagonal of 30 mm is 42.4 mm, at 20 yd 42.4 / 18288 in minutes is 8.0.
      assertThat(said.get(0))
          .isEqualTo(
              "4 arrows at 20 yd: extreme spread 42.4 mm = 1.67 in = 8.0 MOA, middle 1 in right of the spot.");
      assertThat(said.get(1)).startsWith("Mean radius 21.2 mm = 0.84 in = 4.0 MOA. Sigma");
      assertThat(said).hasSize(2);
    }

    @Test
    void nameAFlyerThatIsCounted() {
      GroupResult result = GroupResult.of(square(group(), 0, 0, 8).shotAtGrid(60, -50).read());

      assertThat(GroupVerdict.flyer(result))
          .hasValueSatisfying(
              flyer ->
                  assertThat(flyer)
                      .isEqualTo(
                          "The arrow 2 3/8 in right and 1 15/16 in high of the spot stands out from the others and is counted all the same; without it the extreme spread is 7/16 in."));
      assertThat(result.shots().orElseThrow().size()).isEqualTo(5);
    }

    @Test
    void doNotMakeAGroupOfOneArrow() {
      assertThat(GroupVerdict.of(GroupResult.of(group().shotAtGrid(0, 12.7).read())))
          .isEqualTo("One arrow at 20 yd hit 1/2 in low of the spot: a group needs two or more.");
      assertThat(GroupVerdict.of(GroupResult.of(group().read())))
          .isEqualTo("No hole was found on this sheet.");
    }
  }

  @Nested
  class TheSight {

    @Test
    void goesTheWayTheArrowsWent() {
      GroupResult result = GroupResult.of(square(sightIn(), 50.8, -25.4, 6).read());

      SightMove move = result.sightMove().orElseThrow();
      assertThat(move.right().value()).isCloseTo(50.8, within(1e-9));
      assertThat(move.up().value()).isCloseTo(25.4, within(1e-9));
      assertThat(move.sideways()).isEqualTo(Claim.SHOWN);
      // 50.8 mm at 20 yd is atan(1/360): 9.55 minutes, by hand.
      assertThat(GroupVerdict.sight(result))
          .containsExactly(
              "Move the sight right: 2.0 squares = 50.8 mm = 2.00 in = 9.5 MOA, give or take 0.2 squares.",
              "Move the sight up: 1.0 squares = 25.4 mm = 1.00 in = 4.8 MOA, give or take 0.2 squares.");
    }

    @Test
    void isMirroredWithTheSheet() {
      GroupResult one = GroupResult.of(square(sightIn(), 50.8, -25.4, 6).read());
      GroupResult other = GroupResult.of(square(sightIn(), -50.8, 25.4, 6).read());

      String mirrored =
          String.join("|", GroupVerdict.sight(other))
              .replace("left", "right")
              .replace("down", "up");
      assertThat(mirrored).isEqualTo(String.join("|", GroupVerdict.sight(one)));
    }

    @Test
    void staysWhereTheArrowsShowNothing() {
      GroupResult result = GroupResult.of(square(sightIn(), 2, 3, 4).shotAtGrid(2, 3).read());

      assertThat(GroupVerdict.sight(GroupResult.of(square(sightIn(), 2, 15, 30).read())))
          .allMatch(sentence -> sentence.startsWith("Not enough arrows to move the sight"));
      assertThat(result.sightMove().orElseThrow().upright()).isEqualTo(Claim.SHOWN);
      assertThat(GroupVerdict.sight(GroupResult.of(square(sightIn(), 1, 2, 10).read())).get(0))
          .startsWith("Leave the sight sideways: 0.0 squares = 1.0 mm")
          .endsWith("too little to matter.");
    }

    @Test
    void isNotMovedByOneArrow() {
      GroupResult result = GroupResult.of(sightIn().shotAtGrid(80, 0).read());

      assertThat(result.sightMove().orElseThrow().sideways()).isEqualTo(Claim.NOT_ENOUGH_ARROWS);
      assertThat(GroupVerdict.sight(result).get(0)).startsWith("Not enough arrows");
    }

    @Test
    void isToldWithoutAnglesWhenTheDistanceIsNotKnown() {
      GroupResult result =
          GroupResult.of(square(Readings.sightIn(5, UnitSystem.METRIC), 40, 40, 6).read());

      assertThat(GroupVerdict.sight(result).get(0))
          .isEqualTo(
              "Move the sight right: 2.0 squares = 40.0 mm = 1.57 in, give or take 0.3 squares.");
    }
  }
}
