package sheaf.samples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import sheaf.core.job.JobId;
import sheaf.core.job.SheetCode;
import sheaf.core.layout.Aim;
import sheaf.core.layout.Layouts;
import sheaf.core.layout.UnitSystem;
import sheaf.core.layout.Variant;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmVector;
import sheaf.core.page.Paper;
import sheaf.core.reading.FieldReading;
import sheaf.core.reading.Head;
import sheaf.core.reading.Hole;
import sheaf.core.reading.PageReading;
import sheaf.core.reading.PrintScale;
import sheaf.samples.scene.Shot;
import sheaf.samples.scene.Truth;

class ScoreTest {

  private static final SheetCode CODE =
      new SheetCode(
          JobId.random(new SplittableRandom(1)),
          2,
          Layouts.current(Variant.TWO_DOTS, Paper.LETTER, UnitSystem.INCHES).id());

  private static final List<Shot> SHOTS =
      List.of(shot(70, 80, Head.FIELD, 0), shot(140, 150, Head.BROADHEAD, 3));

  private static final Truth TRUTH =
      new Truth(
          CODE.text(),
          "black",
          300,
          true,
          1,
          1,
          true,
          6,
          Map.of("distance", "20"),
          SHOTS,
          Optional.empty(),
          "read");

  private static Shot shot(double x, double y, Head head, int blades) {
    MmPoint axis = new MmPoint(x, y);
    Aim aim = head == Head.FIELD ? Aim.FIELD : Aim.BROADHEAD;
    return new Shot(axis, head, blades, 30.0 * Math.min(1, blades), aim, axis);
  }

  private static Hole hole(double x, double y, Head head, int blades) {
    return new Hole(new MmPoint(x, y), 0.5, 6, head, blades, 30, Aim.FIELD, 1);
  }

  private static FieldReading distance(String text) {
    return new FieldReading(
        "distance", FieldReading.State.READ, text, OptionalDouble.empty(), Optional.empty(), 1);
  }

  private static Score score(List<Hole> holes, FieldReading... fields) {
    PageReading reading =
        new PageReading(
            "test",
            List.of(),
            Optional.of(CODE),
            OptionalDouble.of(10),
            Optional.of(PrintScale.TRUE_SIZE),
            holes,
            List.of(fields));
    return Score.of(1, reading, TRUTH);
  }

  private static List<Hole> right() {
    return List.of(hole(70, 80, Head.FIELD, 0), hole(140, 150, Head.BROADHEAD, 3));
  }

  @Test
  void aReadingThatAgreesHasNoFaults() {
    Score score = score(right(), distance("20"));
    assertThat(score.faults()).isEmpty();
    assertThat(score.silentlyWrong()).isFalse();
    assertThat(score.matches()).hasSize(2).allMatch(Score.Match::bladesRight);
  }

  @Test
  void theErrorIsTheDistanceFromTheAxis() {
    Score score =
        score(
            List.of(hole(70.3, 80.4, Head.FIELD, 0), hole(140, 150, Head.BROADHEAD, 3)),
            distance("20"));
    assertThat(score.matches().get(0).error()).isCloseTo(0.5, within(1e-9));
    // Root of the mean of 0.25 and 0.
    assertThat(Figures.of(List.of(score)).rms()).isCloseTo(Math.sqrt(0.125), within(1e-9));
  }

  @Test
  void aMissedAndAnInventedHoleAreSilentErrorsOfASurePage() {
    List<Hole> holes = List.of(hole(70, 80, Head.FIELD, 0), hole(20, 20, Head.BROADHEAD, 3));
    Score score = score(holes, distance("20"));
    assertThat(score.missed()).isEqualTo(1);
    assertThat(score.invented()).isEqualTo(1);
    assertThat(score.silentlyWrong()).isTrue();
    Figures figures = Figures.of(List.of(score));
    assertThat(figures.recall()).isEqualTo(0.5);
    assertThat(figures.precision()).isEqualTo(0.5);
  }

  @Test
  void aHoleAMillimetreAndAHalfOffIsASilentError() {
    List<Hole> near = new ArrayList<>(right());
    near.set(0, hole(71.4, 80, Head.FIELD, 0));
    assertThat(score(near, distance("20")).silentlyWrong()).isFalse();
    near.set(0, hole(71.6, 80, Head.FIELD, 0));
    assertThat(score(near, distance("20")).silentlyWrong()).isTrue();
  }

  @Test
  void anUnknownHeadCountsAsWrong() {
    List<Hole> holes = List.of(hole(70, 80, Head.UNKNOWN, 0), right().get(1));
    Score score = score(holes, distance("20"));
    assertThat(Figures.of(List.of(score)).headsRight()).isEqualTo(0.5);
    assertThat(score.faults()).hasSize(1);
  }

  @Test
  void aWrongTickAndOneThatNobodyMadeAreFaults() {
    assertThat(score(right(), distance("30")).faults()).containsExactly("tick distance");
    FieldReading invented =
        new FieldReading(
            "changed",
            FieldReading.State.READ,
            "rest",
            OptionalDouble.empty(),
            Optional.empty(),
            1);
    assertThat(score(right(), distance("20"), invented).faults())
        .containsExactly("invented tick changed");
  }

  @Test
  void touchingHolesAreEachMatchedOnce() {
    MmVector aside = new MmVector(3.5, 0);
    Truth truth =
        new Truth(
            TRUTH.code(),
            "black",
            300,
            true,
            1,
            1,
            true,
            6,
            Map.of(),
            List.of(
                SHOTS.get(0),
                new Shot(
                    SHOTS.get(0).axis().plus(aside),
                    Head.FIELD,
                    0,
                    0,
                    Aim.FIELD,
                    SHOTS.get(0).axis())),
            Optional.empty(),
            "read");
    PageReading one =
        new PageReading(
            "test",
            List.of(),
            Optional.of(CODE),
            OptionalDouble.of(10),
            Optional.empty(),
            List.of(right().get(0)),
            List.of());
    assertThat(Score.of(1, one, truth).missed()).isEqualTo(1);
  }
}
