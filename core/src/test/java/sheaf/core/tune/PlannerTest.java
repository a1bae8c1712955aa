package sheaf.core.tune;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import sheaf.core.layout.BowType;
import sheaf.core.layout.UnitSystem;
import sheaf.core.record.Visit;

class PlannerTest {

  private static final BowSetup RIGHT = setup(BowSetup.Hand.RIGHT, BowSetup.LoosedBy.RELEASE);

  private static BowSetup setup(BowSetup.Hand hand, BowSetup.LoosedBy loosedBy) {
    return new BowSetup(
        BowType.COMPOUND,
        Optional.of(hand),
        Optional.of(loosedBy),
        Optional.of(BowSetup.Cables.SPLIT_YOKE),
        UnitSystem.INCHES);
  }

  private static Plan plan(Visits visits) {
    return Planner.plan(visits.visit(), RIGHT, ShopPrior.NONE);
  }

  private static String words(Plan plan) {
    return String.join(" ", plan.remarks());
  }

  private static Move rest(Axis axis, double steps) {
    return new Move(new Lever(Part.REST, axis, Step.SIXTY_FOURTH), steps);
  }

  @Nested
  class BeforeAnyMove {

    @Test
    void nothingIsShotWithAPartThatIsNotSound() {
      Plan plan = plan(new Visits().pair(60, 0).notSound("limbs"));
      assertThat(plan.kind()).isEqualTo(Plan.Kind.DO_NOT_SHOOT);
      assertThat(plan.move()).isEmpty();
    }

    @Test
    void somethingMustBeShot() {
      assertThat(plan(new Visits()).kind()).isEqualTo(Plan.Kind.SHOOT_FIRST);
    }

    @Test
    void theRestGoesTowardTheFieldPointsAndTheDisagreementIsSaid() {
      Plan plan = plan(new Visits().pair(-60, 5));
      assertThat(plan.kind()).isEqualTo(Plan.Kind.STARTING_MOVE);
      assertThat(plan.move()).hasValue(rest(Axis.SIDEWAYS, 2));
      assertThat(words(plan)).contains("Common practice", "Sources disagree which way");
    }

    @Test
    void lowBroadheadsAskForTheRestToGoUp() {
      Plan plan = plan(new Visits().pair(3, 44));
      assertThat(plan.move()).hasValue(rest(Axis.UPRIGHT, 1));
    }

    /** Lowering the nocking point takes the arrow up, as raising the rest does. */
    @Test
    void onARecurveLowBroadheadsAskForTheNockingPointToGoDown() {
      BowSetup recurve =
          new BowSetup(
              BowType.RECURVE,
              Optional.of(BowSetup.Hand.RIGHT),
              Optional.of(BowSetup.LoosedBy.FINGERS),
              Optional.empty(),
              UnitSystem.METRIC);
      Plan plan = Planner.plan(new Visits().pair(3, 44).visit(), recurve, ShopPrior.NONE);
      Move move = plan.move().orElseThrow();
      assertThat(move.lever().part()).isEqualTo(Part.NOCKING);
      assertThat(move.words()).matches("the nocking point \\d\\.\\d mm down");
    }

    @Test
    void headsAtOnePointAskForNothing() {
      Plan plan = plan(new Visits().pair(2, -1));
      assertThat(plan.kind()).isEqualTo(Plan.Kind.SAME_POINT);
      assertThat(plan.move()).isEmpty();
    }

    @Test
    void shotsThatScatterMoreThanTheyAreOffAskForMoreShots() {
      Plan plan = plan(new Visits().pair(-15, 5, 40));
      assertThat(plan.kind()).isEqualTo(Plan.Kind.MORE_ARROWS);
      assertThat(words(plan)).contains("Move nothing");
    }

    @Test
    void noMoveIsAdvisedWhoseEffectWouldDrownInTheScatter() {
      Plan plan = plan(new Visits().pair(-400, 5, 100));
      assertThat(plan.kind()).isEqualTo(Plan.Kind.MORE_ARROWS);
      assertThat(words(plan)).contains("No move is advised");
    }

    @Test
    void aCrossbowHasNothingToMove() {
      BowSetup crossbow =
          new BowSetup(
              BowType.CROSSBOW,
              Optional.empty(),
              Optional.empty(),
              Optional.empty(),
              UnitSystem.INCHES);
      Plan plan = Planner.plan(new Visits().pair(-60, 5).visit(), crossbow, ShopPrior.NONE);
      assertThat(plan.kind()).isEqualTo(Plan.Kind.NO_LEVER);
    }
  }

  @Nested
  class OnceTheBowHasAnswered {

    // Two steps right brought the broadheads 16 mm right: 8 mm a step, so 44 mm are 5.5 steps.
    private final Visits helped =
        new Visits().pair(-60, 0).changed("rest", "right", 2, "1/64 in").pair(-44, 0);

    @Test
    void theMoveIsComputedFromItsAnswer() {
      Plan plan = plan(helped);
      assertThat(plan.kind()).isEqualTo(Plan.Kind.COMPUTED_MOVE);
      assertThat(plan.move().orElseThrow().lever()).isEqualTo(rest(Axis.SIDEWAYS, 1).lever());
      assertThat(plan.move().orElseThrow().steps()).isBetween(5.0, 6.0);
      assertThat(plan.after().orElseThrow().offset().length()).isLessThan(8);
      assertThat(plan.learnt()).hasSize(1);
      assertThat(plan.learnt().get(0).response().perStep().dx()).isCloseTo(8, within(1.0));
      assertThat(words(plan)).contains("The last change, the rest 1/32 in right, helped");
    }

    @Test
    void aBowThatAnswersTheOtherWayIsFollowed() {
      Plan plan =
          plan(new Visits().pair(-60, 0).changed("rest", "right", 2, "1/64 in").pair(-76, 0));
      assertThat(plan.move().orElseThrow().steps()).isNegative();
      assertThat(words(plan)).contains("made it worse");
    }

    @Test
    void aChangeThatCannotBeCountedTeachesNothingOfIt() {
      Plan plan = plan(new Visits().pair(-60, 0).changed("other").pair(-44, 0));
      assertThat(plan.kind()).isEqualTo(Plan.Kind.STARTING_MOVE);
      assertThat(plan.learnt()).isEmpty();
      assertThat(plan.now().orElseThrow().offset().dx()).isCloseTo(-44, within(0.1));
    }

    @Test
    void theSightMovesBothHeadsAndCountsForNothing() {
      Plan moved = plan(new Visits().pair(-60, 0).changed("sight", "up", 4, "clicks").pair(-60, 0));
      Plan still = plan(new Visits().pair(-60, 0).pair(-60, 0));
      assertThat(moved.now()).isEqualTo(still.now());
    }

    @Test
    void sheetsThatDifferThoughNothingIsNotedAreAskedAbout() {
      Plan plan = plan(new Visits().pair(-60, 0).pair(50, 0));
      assertThat(words(plan)).contains("Sheet 2 differs from the pair sheet before it");
      assertThat(plan.now().orElseThrow().offset().dx()).isCloseTo(50, within(0.1));
    }

    @Test
    void aChangeAfterTheLastSheetAsksForASheet() {
      assertThat(plan(helped.changed("rest", "right", 5, "1/64 in")).kind())
          .isEqualTo(Plan.Kind.SHOOT_FIRST);
    }

    /** Four steps gave 8 mm each, so two more should have led from -28 to -12 mm. */
    @Test
    void aSheetFarFromWhereTheMoveShouldHaveLedIsAskedAbout() {
      Visits slipped =
          new Visits()
              .pair(-60, 0)
              .changed("rest", "right", 4, "1/64 in")
              .pair(-28, 0)
              .changed("rest", "right", 2, "1/64 in")
              .pair(-70, 0);
      assertThat(words(plan(slipped))).contains("Sheet 3 is farther from where the change before");
    }

    @Test
    void earlierSheetsCountWithWhatWasMovedBetween() {
      Visits moved =
          new Visits()
              .pair(-60, 0, 16)
              .changed("rest", "right", 4, "1/64 in")
              .pair(-28, 0, 16)
              .changed("rest", "right", 3, "1/64 in")
              .pair(-8, 3, 16);
      Plan plan = plan(moved);
      assertThat(plan.kind()).isEqualTo(Plan.Kind.SAME_POINT);
      assertThat(words(plan)).contains("Sheets 1, 2 and 3 together, with what was moved between");
      assertThat(plan(new Visits().pair(-8, 3, 16)).kind()).isEqualTo(Plan.Kind.MORE_ARROWS);
    }

    /** What turns the arrow sideways turns it upright too, so the rule that failed is not tried. */
    @Test
    void theOtherWayOfTheRestBeginsAsThisOneAnswered() {
      Plan plan =
          plan(new Visits().pair(-60, 60).changed("rest", "right", 3, "1/64 in").pair(-90, 120));
      assertThat(plan.move().orElseThrow().lever().axis()).isEqualTo(Axis.UPRIGHT);
      assertThat(plan.move().orElseThrow().steps()).isNegative();
    }

    /**
     * Eight steps would be needed by the usual answer, but the bow may answer five times as much,
     * the wrong way: 55 + 2 × 40 mm stay within three times 55 mm, 55 + 3 × 40 mm would not.
     */
    @ParameterizedTest
    @CsvSource({"-30, 1", "-60, 2", "-120, 5", "-240, 8"})
    void aFirstMoveCannotLeadFarOff(double off, double steps) {
      assertThat(plan(new Visits().pair(off, 0)).move()).hasValue(rest(Axis.SIDEWAYS, steps));
    }

    @Test
    void sheetsAtOneSettingCountTogether() {
      Plan one = plan(new Visits().pair(8, 3, 16));
      Plan two = plan(new Visits().pair(8, 3, 16).pair(8, 3, 16));
      assertThat(one.kind()).isEqualTo(Plan.Kind.MORE_ARROWS);
      assertThat(two.kind()).isEqualTo(Plan.Kind.SAME_POINT);
      assertThat(words(two)).contains("Sheets 1 and 2 together");
    }

    @Test
    void earlierBowsOfTheKindTeachTheFirstMove() {
      List<Visit> earlier =
          Stream.generate(
                  () ->
                      new Visits()
                          .pair(-60, 0)
                          .changed("rest", "right", 4, "1/64 in")
                          .pair(-92, 0)
                          .visit())
              .limit(6)
              .toList();
      Plan plan = Planner.plan(new Visits().pair(-40, 0).visit(), RIGHT, ShopPrior.of(earlier));
      assertThat(plan.kind()).isEqualTo(Plan.Kind.COMPUTED_MOVE);
      assertThat(plan.move().orElseThrow().steps()).isNegative();
      assertThat(words(plan)).contains("6 earlier bows of this kind");
    }
  }

  @Nested
  class Tears {

    @Test
    void aloneTheyStartTowardTheTailAndSayThatSourcesDisagree() {
      Plan plan = plan(new Visits().tear(12, 2));
      assertThat(plan.move()).hasValue(rest(Axis.SIDEWAYS, 2));
      assertThat(words(plan)).contains("sources disagree");
    }

    @Test
    void withTheTailHighTheyRaiseTheRest() {
      assertThat(plan(new Visits().tear(1, -15)).move()).hasValue(rest(Axis.UPRIGHT, 2));
    }

    @Test
    void loosedByFingersTheyDoNotMoveTheRestSideways() {
      BowSetup fingers = setup(BowSetup.Hand.RIGHT, BowSetup.LoosedBy.FINGERS);
      Plan plan = Planner.plan(new Visits().tear(12, 2).visit(), fingers, ShopPrior.NONE);
      assertThat(plan.move()).isEmpty();
      assertThat(words(plan)).contains("stiffness");
    }

    /** A tail to the right means a point to the left, and a broadhead that planes left. */
    @Test
    void andBroadheadsOfOneYawSayTheSame() {
      Plan plan = plan(new Visits().tear(12, 0).pair(-60, 0));
      assertThat(plan.move().orElseThrow().steps()).isPositive();
      assertThat(words(plan)).contains("the same way");
    }

    @Test
    void areNotSilentWhereBroadheadsDoNotTellYet() {
      Plan plan = plan(new Visits().tear(12, 0).pair(-15, 5, 40));
      assertThat(plan.move()).isEmpty();
      assertThat(words(plan)).contains("asks to move the rest", "do not ask for it so far");
    }

    @Test
    void andBroadheadsThatContradictAreNotSilent() {
      Plan plan = plan(new Visits().tear(-12, 0).pair(-60, 0));
      assertThat(words(plan)).contains("They disagree");
    }
  }

  static Stream<Visits[]> mirrored() {
    return Stream.of(
        both(v -> v.pair(-60, 10)),
        both(v -> v.pair(-60, 10).changed("rest", "right", 3, "1/64 in").pair(-33, 12)),
        both(v -> v.pair(-60, 10).changed("rest", "right", 3, "1/64 in").pair(-80, 40)),
        both(v -> v.tear(9, 3)),
        both(v -> v.tear(9, 3).pair(30, 20)),
        both(
            v ->
                v.pair(20, 50)
                    .changed("nocking", "up", 2, "1/64 in")
                    .pair(22, 35)
                    .changed("yoke", "left", 1, "turns")
                    .pair(-4, 35)));
  }

  private static Visits[] both(UnaryOperator<Visits> shots) {
    return new Visits[] {shots.apply(new Visits(false)), shots.apply(new Visits(true))};
  }

  /** A sheet in a mirror, for a bow in a mirror, mirrors the advice and nothing else. */
  @ParameterizedTest
  @MethodSource("mirrored")
  void aMirroredSheetMirrorsTheAdviceAndNothingElse(Visits asIs, Visits mirrored) {
    Plan one = Planner.plan(asIs.visit(), RIGHT, ShopPrior.NONE);
    Plan other =
        Planner.plan(
            mirrored.visit(), setup(BowSetup.Hand.LEFT, BowSetup.LoosedBy.RELEASE), ShopPrior.NONE);
    assertThat(other.kind()).isEqualTo(one.kind());
    assertThat(other.moreOfEach()).isEqualTo(one.moreOfEach());
    assertThat(other.move().map(Move::lever)).isEqualTo(one.move().map(Move::lever));
    one.move()
        .ifPresent(
            move -> {
              boolean sideways = move.lever().axis() == Axis.SIDEWAYS;
              assertThat(other.move().orElseThrow().steps())
                  .isEqualTo(sideways ? -move.steps() : move.steps());
            });
    one.now()
        .ifPresent(
            now -> {
              Plan.Forecast image = other.now().orElseThrow();
              assertThat(image.offset().dx()).isCloseTo(-now.offset().dx(), within(1e-9));
              assertThat(image.offset().dy()).isCloseTo(now.offset().dy(), within(1e-9));
              assertThat(image.region().semiMajor())
                  .isCloseTo(now.region().semiMajor(), within(1e-9));
            });
    assertThat(other.remarks().stream().map(PlannerTest::inAMirror).toList())
        .isEqualTo(one.remarks());
  }

  private static String inAMirror(String words) {
    String swapped = words.replace("left", "\0").replace("right", "left").replace("\0", "right");
    // A clock's face is mirrored too: 3 becomes 9.
    java.util.regex.Matcher hour =
        java.util.regex.Pattern.compile("(\\d+) o'clock").matcher(swapped);
    return hour.replaceAll(
        found -> {
          int mirrored = 12 - Integer.parseInt(found.group(1));
          return (mirrored == 0 ? 12 : mirrored) + " o'clock";
        });
  }
}
