package sheaf.core.answer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import sheaf.core.answer.TypedValue.NotUnderstoodException;
import sheaf.core.answer.TypedValue.Range;
import sheaf.core.layout.Field;
import sheaf.core.layout.Layouts;
import sheaf.core.layout.UnitSystem;
import sheaf.core.layout.Variant;
import sheaf.core.measure.Unit;
import sheaf.core.page.Paper;
import sheaf.core.reading.FieldReading.Teller;

/** What people type for a field. */
class TypedValueTest {

  private static Field field(String key) {
    return Layouts.current(Variant.FRONT, Paper.LETTER, UnitSystem.INCHES).field(key);
  }

  private static Said.Value of(String key, String typed) throws NotUnderstoodException {
    return TypedValue.of(field(key), typed, Range.USUAL, Teller.TYPED, "");
  }

  @ParameterizedTest
  @CsvSource({
    "29 3/8 in, 29.375, INCH, 29 3/8",
    "29-3/8in, 29.375, INCH, 29-3/8",
    "29.5, 29.5, INCH, 29.5",
    "'29,5 in', 29.5, INCH, 29.5",
    "746 mm, 746, MILLIMETRE, 746",
    "0.746 m, 0.746, METRE, 0.746",
  })
  void lengthsAreUnderstood(String typed, double value, Unit unit, String text) throws Exception {
    Said.Value said = of("draw_length_found", typed);
    assertThat(said.value().getAsDouble()).isEqualTo(value, within(1e-9));
    assertThat(said.unit()).contains(unit);
    assertThat(said.text()).isEqualTo(text);
  }

  @Test
  void weightsMayBeInNewton() throws Exception {
    assertThat(of("peak_weight_left", "59.9 lb").words()).isEqualTo("59.9 lb");
    assertThat(of("peak_weight_left", "266 N").words()).isEqualTo("266 N");
  }

  @Test
  void choicesAreAnyCase() throws Exception {
    assertThat(of("inspect_limbs", "Not Sound").text()).isEqualTo("not sound");
  }

  @Test
  void nothingMeansThatNothingIsWritten() throws Exception {
    assertThat(of("draw_length_found", " ").words()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "29 3/8 lb | is told in in or mm or yd or m, not 'lb'",
        "294 in | is usually 15 to 36 in, not '294 in': mistyped?",
        "-29 in | is usually 15 to 36 in, not '-29 in': mistyped?",
        "29 8/8 | has no proper fraction in '29 8/8'",
        "about 29 | is a number such as 29 3/8 in, not 'about 29'",
        "29 3/0 in | has no proper fraction in '29 3/0 in'",
      })
  void nonsenseIsNamed(String typed, String complaint) {
    assertThatThrownBy(() -> of("draw_length_found", typed)).hasMessage(complaint);
  }

  @ParameterizedTest
  @ValueSource(strings = {"perhaps", "sound or not"})
  void wordsThatAreNotOfferedAreNamed(String typed) {
    assertThatThrownBy(() -> of("inspect_limbs", typed))
        .hasMessage("is one of sound, not sound, not '" + typed + "'");
  }

  @Test
  void anythingIsTakenFromWhoInsists() throws Exception {
    Field field = field("draw_length_found");
    assertThat(TypedValue.of(field, "12 in", Range.ANY, Teller.TYPED, "").words())
        .isEqualTo("12 in");
  }
}
