package sheaf.samples.digit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import sheaf.core.job.JobId;
import sheaf.core.job.SheetCode;
import sheaf.core.layout.Field;
import sheaf.core.layout.Layout;
import sheaf.core.layout.Layouts;
import sheaf.core.layout.UnitSystem;
import sheaf.core.layout.Variant;
import sheaf.core.page.Paper;
import sheaf.core.reading.FieldReading;
import sheaf.core.reading.FieldReading.State;
import sheaf.core.reading.PageReading;
import sheaf.scanner.SheetReader;

/** A bench card filled in by hand from end to end, scanned at 200 dpi. */
class WrittenCardTest {

  private static final Layout LAYOUT =
      Layouts.current(Variant.FRONT, Paper.LETTER, UnitSystem.INCHES);

  private static CardWriter writer;
  private static byte[] file;
  private static PageReading page;

  @BeforeAll
  static void fillInScanAndRead() {
    SheetReader reader = new SheetReader();
    SheetCode code = new SheetCode(JobId.random(new SplittableRandom(2)), 1, LAYOUT.id());
    writer = new CardWriter(LAYOUT, new SplittableRandom(131));
    writer.tick("hand", "right").tick("loosed_by", "release").tick("inspect_limbs", "sound");
    found(writer);
    left(writer);
    file = FilledCard.scan(code, writer.hands(), 200, 132);
    page = read(reader);
  }

  private static PageReading read(SheetReader reader) {
    List<PageReading> pages = new ArrayList<>();
    reader.read("card", file, SheetReader.Proof.SKIP, one -> pages.add(one.reading()));
    return pages.get(0);
  }

  @Test
  void whereOnlyCertaintyIsEnoughEveryNumberIsAskedAbout() {
    PageReading strict = read(new SheetReader(1));
    LAYOUT.fields().stream()
        .filter(Field.Number.class::isInstance)
        .map(field -> strict.field(field.key()).orElseThrow())
        .forEach(reading -> assertThat(reading.state()).isNotEqualTo(State.READ));
    assertThat(strict.field("hand")).isEqualTo(page.field("hand"));
  }

  @Test
  void whatIsReadIsWhatWasWritten() {
    writer
        .answers()
        .forEach(
            (key, meant) -> {
              FieldReading reading = page.field(key).orElseThrow();
              if (reading.state() == State.READ) {
                assertThat(reading.text()).as(key).isEqualTo(meant);
              }
            });
  }

  @Test
  void mostOfItNeedsNobodysLookAndNothingIsOverlooked() {
    List<State> states =
        writer.answers().keySet().stream()
            .map(key -> page.field(key).orElseThrow().state())
            .toList();
    assertThat(states).doesNotContain(State.BLANK);
    assertThat(states.stream().filter(State.READ::equals).count()).isGreaterThan(states.size() / 2);
  }

  @Test
  void whatWasLeftEmptyIsBlank() {
    assertThat(page.fields().stream().filter(f -> !writer.answers().containsKey(f.key())))
        .allMatch(field -> field.state() == State.BLANK);
  }

  private static void found(CardWriter writer) {
    writer
        .write("draw_length_found", "2906", "29 6/16")
        .write("bow_plus_loop_found", "2802", "28 2/16")
        .write("axle_to_axle_found", "3204", "32 4/16")
        .write("brace_height_found", " 610", "6 10/16")
        .write("peak_weight_found", "625", "62.5")
        .write("holding_weight_found", "115", "11.5")
        .write("nocking_height_found", " 03", "3/16")
        .write("arrow_mass_found", "420", "420")
        .write("speed_found", "268", "268")
        .tick("cam_stops_found", "top");
  }

  private static void left(CardWriter writer) {
    writer
        .write("draw_length_left", "2908", "29 8/16")
        .write("bow_plus_loop_left", "2804", "28 4/16")
        .write("brace_height_left", " 609", "6 9/16")
        .write("peak_weight_left", "630", "63.0")
        .write("holding_weight_left", "12 ", "12")
        .write("limb_bolt_turns_left", "150", "1.50")
        .write("nocking_height_left", " 04", "4/16")
        .tick("cam_stops_left", "both");
  }
}
