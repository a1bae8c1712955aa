package sheaf.core.energy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import sheaf.core.job.JobId;
import sheaf.core.job.SheetCode;
import sheaf.core.layout.LayoutId;
import sheaf.core.layout.PullsLayout;
import sheaf.core.layout.UnitSystem;
import sheaf.core.layout.Variant;
import sheaf.core.measure.Unit;
import sheaf.core.page.Paper;
import sheaf.core.reading.FieldReading;
import sheaf.core.reading.FieldReading.State;
import sheaf.core.reading.PageReading;
import sheaf.core.result.JobSummary;

class PullsTest {

  private static final JobId JOB = JobId.random(new SplittableRandom(8));
  private static final double JOULES_PER_INCH_POUND = 0.0254 * 4.4482216152605;

  private final List<FieldReading> fields = new ArrayList<>();

  private PullsTest with(String key, State state, double value, Unit unit) {
    fields.add(
        new FieldReading(
            key, state, "" + value, OptionalDouble.of(value), Optional.of(unit), 0.999));
    return this;
  }

  private PullsTest pull(int step, double pounds) {
    return with(PullsLayout.key(step), State.READ, pounds, Unit.POUND_FORCE);
  }

  private PullsTest fullDraw(double inches, double pounds) {
    return with(PullsLayout.FULL_DRAW, State.READ, inches, Unit.INCH)
        .with(PullsLayout.FULL_DRAW_PULL, State.READ, pounds, Unit.POUND_FORCE);
  }

  private Pulls read(UnitSystem units) {
    LayoutId layout = new LayoutId(Variant.PULLS, Paper.LETTER, units, 1);
    PageReading page =
        new PageReading(
            "pulls.jpg",
            List.of(),
            Optional.of(new SheetCode(JOB, 3, layout)),
            OptionalDouble.of(11.8),
            Optional.empty(),
            List.of(),
            fields);
    return Pulls.of(JobSummary.of(JOB, List.of(page)));
  }

  /** 0, 20, 40 lb at 0, 1, 2 in and 30 lb at 2 1/2 in: 10 + 30 + 17.5 inch-pounds. */
  @Test
  void areSummedFromRestToFullDraw() {
    Pulls pulls = pull(1, 20).pull(2, 40).fullDraw(2.5, 30).read(UnitSystem.INCHES);
    assertThat(pulls.doubts()).isEmpty();
    assertThat(pulls.curve().orElseThrow().strokeInches()).isEqualTo(2.5);
    assertThat(pulls.curve().orElseThrow().joules())
        .isCloseTo(57.5 * JOULES_PER_INCH_POUND, within(1e-9));
  }

  @Test
  void ofTheMetricSheetAreTwentyFiveMillimetresApart() {
    Pulls pulls = pull(1, 20).pull(2, 40).read(UnitSystem.METRIC);
    assertThat(pulls.curve().orElseThrow().joules())
        .isCloseTo(0.025 * 40 * 4.4482216152605, within(1e-9));
  }

  @Test
  void withOneInDoubtAreNoCurve() {
    Pulls pulls =
        pull(1, 20)
            .with(PullsLayout.key(2), State.CHECK, 40, Unit.POUND_FORCE)
            .pull(3, 50)
            .read(UnitSystem.INCHES);
    assertThat(pulls.curve()).isEmpty();
    assertThat(pulls.doubts()).singleElement().asString().contains("pull at 2 in", "not read");
  }

  @Test
  void withOneLeftOutAreNoCurve() {
    Pulls pulls = pull(1, 20).pull(3, 50).read(UnitSystem.INCHES);
    assertThat(pulls.curve()).isEmpty();
    assertThat(pulls.doubts()).singleElement().asString().contains("before 3 in is left out");
  }

  @Test
  void beyondFullDrawCannotBe() {
    Pulls pulls = pull(1, 20).pull(2, 50).pull(3, 50).fullDraw(2.5, 20).read(UnitSystem.INCHES);
    assertThat(pulls.curve()).isEmpty();
    assertThat(pulls.doubts()).singleElement().asString().contains("nearer than the last pull");
  }

  @Test
  void ofAnEmptySheetAreNone() {
    assertThat(read(UnitSystem.INCHES)).isEqualTo(Pulls.NONE);
    assertThat(Pulls.of(JobSummary.of(JOB, List.of()))).isEqualTo(Pulls.NONE);
  }

  /** A half wave of 60 lb over 22 in holds 2/π of its rectangle; a pull every inch tells it. */
  @Test
  void everyInchAreWithinAPercentOfASmoothCurve() {
    for (int inch = 1; inch <= 22; inch++) {
      pull(inch, 60 * Math.sin(Math.PI * inch / 22));
    }
    double truth = 60 * 22 * 2 / Math.PI * JOULES_PER_INCH_POUND;
    assertThat(read(UnitSystem.INCHES).curve().orElseThrow().joules())
        .isCloseTo(truth, within(truth / 100));
  }
}
