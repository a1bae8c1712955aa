package sheaf.desk.work;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import sheaf.core.job.JobId;
import sheaf.core.job.SheetCode;
import sheaf.core.layout.Layouts;
import sheaf.core.layout.UnitSystem;
import sheaf.core.layout.Variant;
import sheaf.core.measure.Unit;
import sheaf.core.page.Paper;
import sheaf.core.reading.FieldReading;
import sheaf.core.reading.FieldReading.State;
import sheaf.core.reading.PageReading;
import sheaf.core.result.JobSummary;

class LastValuesTest {

  private static final JobId JOB = JobId.random(new SplittableRandom(3));

  @Test
  void aValueIsPrintedWithItsUnitUnderTheKeyOfItsField() {
    JobSummary job = card(reading("peak_weight_left", State.READ, "61.5", Unit.POUND_FORCE));

    assertThat(LastValues.of(job)).containsExactly(Map.entry("peak_weight_left", "61.5 lb"));
  }

  @Test
  void whatWasFoundAndNotWrittenAgainWasLeftAsFound() {
    JobSummary job =
        card(
            reading("brace_height_found", State.READ, "6 8/16", Unit.INCH),
            reading("peak_weight_found", State.READ, "58.0", Unit.POUND_FORCE),
            reading("peak_weight_left", State.READ, "61.5", Unit.POUND_FORCE));

    assertThat(LastValues.of(job))
        .containsEntry("brace_height_left", "6 8/16 in")
        .containsEntry("peak_weight_left", "61.5 lb");
  }

  @Test
  void whatIsDoubtfulOrBlankOrOnlyAPictureIsLeftOut() {
    JobSummary job =
        card(
            reading("peak_weight_left", State.CHECK, "61.5", Unit.POUND_FORCE),
            reading("speed_left", State.BLANK, "", Unit.FEET_PER_SECOND),
            reading("draw_length_left", State.READ, "", Unit.INCH));

    assertThat(LastValues.of(job)).isEmpty();
  }

  private static FieldReading reading(String key, State state, String text, Unit unit) {
    return new FieldReading(key, state, text, OptionalDouble.empty(), Optional.of(unit), 1);
  }

  private static JobSummary card(FieldReading... fields) {
    SheetCode code =
        new SheetCode(JOB, 1, Layouts.current(Variant.FRONT, Paper.LETTER, UnitSystem.INCHES).id());
    PageReading page =
        new PageReading(
            "card.png",
            List.of(),
            Optional.of(code),
            OptionalDouble.of(11.8),
            Optional.empty(),
            List.of(),
            List.of(fields));
    return JobSummary.of(JOB, List.of(page));
  }
}
