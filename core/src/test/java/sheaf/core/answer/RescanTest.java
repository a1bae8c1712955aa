package sheaf.core.answer;

import static org.assertj.core.api.Assertions.assertThat;
import static sheaf.core.answer.Cards.blank;
import static sheaf.core.answer.Cards.card;
import static sheaf.core.answer.Cards.inches;

import java.util.List;
import org.junit.jupiter.api.Test;
import sheaf.core.reading.FieldReading;
import sheaf.core.reading.FieldReading.State;
import sheaf.core.reading.PageReading;
import sheaf.core.reading.ReadingState;
import sheaf.core.reading.Reason;
import sheaf.core.reading.ReasonCode;

/** A sheet that was scanned several times. */
class RescanTest {

  private static final String BRACE = "brace_height_found";

  private final PageReading first = card("first.jpg", inches(BRACE, 6.5));

  @Test
  void sayingTheSameChangesNothing() {
    PageReading again = card("again.jpg", inches(BRACE, 6.5));
    assertThat(Rescan.of(List.of(first, again))).isEqualTo(again);
  }

  @Test
  void withAnotherValueSaysSo() {
    PageReading page = Rescan.of(List.of(first, card("later.jpg", inches(BRACE, 6.75))));
    assertThat(page.state()).isEqualTo(ReadingState.READ);
    assertThat(page.reasons())
        .extracting(Reason::message)
        .containsExactly(
            "\"Brace height as found\" is now 6.75 in; it was 6.5 in when read from first.jpg.");
  }

  @Test
  void lessSureOfTheSameStaysSure() {
    PageReading blurred = card("blurred.jpg", inches(BRACE, 6.5, State.CHECK));
    PageReading page = Rescan.of(List.of(first, blurred));
    assertThat(page.state()).isEqualTo(ReadingState.READ);
    assertThat(page.field(BRACE)).get().extracting(FieldReading::state).isEqualTo(State.READ);
  }

  @Test
  void unsureOfSomethingElseIsADoubt() {
    PageReading other = card("other.jpg", inches(BRACE, 8.5, State.CHECK));
    assertThat(Rescan.of(List.of(first, other)).state()).isEqualTo(ReadingState.CHECK);
  }

  @Test
  void thatShowsNothingAnyMoreIsADoubt() {
    PageReading page = Rescan.of(List.of(first, card("faint.jpg", blank(BRACE))));
    assertThat(page.reasons()).extracting(Reason::code).containsExactly(ReasonCode.VALUE_GONE);
    assertThat(page.field(BRACE)).get().extracting(FieldReading::text).isEqualTo("6.5");
  }
}
