package sheaf.core.answer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static sheaf.core.answer.Cards.card;
import static sheaf.core.answer.Cards.inches;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import sheaf.core.reading.FieldReading;
import sheaf.core.reading.FieldReading.State;
import sheaf.core.reading.Head;
import sheaf.core.reading.PageReading;
import sheaf.core.reading.ReadingState;
import sheaf.core.reading.Reason;
import sheaf.core.reading.ReasonCode;

/** What a person is asked, and what answers do. */
class QuestionsTest {

  private static final String BRACE = "brace_height_found";

  private static List<Question> about(PageReading page) {
    return Questions.of(page, page);
  }

  private static PageReading answered(PageReading page, List<Said> said) {
    List<Answer> answers =
        said.stream().map(one -> Cards.says(0, page.sheet().orElseThrow().number(), one)).toList();
    return new Answers(answers).over(page);
  }

  @Test
  void aFieldIsOfferedAsItWasRead() throws Exception {
    PageReading page = card("a.jpg", inches(BRACE, 6.5, State.CHECK));
    Question question = about(page).get(0);
    assertThat(question.offer()).contains("6.5 in");
    PageReading after = answered(page, question.accepted());
    assertThat(after.state()).isEqualTo(ReadingState.READ);
    assertThat(after.field(BRACE)).get().extracting(FieldReading::words).isEqualTo("6.5 in");
  }

  @Test
  void aFieldIsCorrectedOrFoundBlank() throws Exception {
    PageReading page = card("a.jpg", inches(BRACE, 6.5, State.CHECK));
    Question question = about(page).get(0);
    assertThat(answered(page, List.of(question.typed("6 3/4"))).field(BRACE))
        .get()
        .extracting(FieldReading::words)
        .isEqualTo("6 3/4 in");
    assertThat(answered(page, List.of(question.typed("blank"))).field(BRACE))
        .get()
        .extracting(FieldReading::state)
        .isEqualTo(State.BLANK);
    assertThatThrownBy(() -> question.typed("65 in")).hasMessageContaining("3 to 20 in");
  }

  @Test
  void aHoleIsKeptTakenAwayOrNamed() throws Exception {
    PageReading page = Cards.pair();
    Question question = about(page).get(0);
    assertThat(question.offer()).contains("a hole, head unknown");
    assertThat(answered(page, question.accepted()).state()).isEqualTo(ReadingState.READ);
    assertThat(answered(page, List.of(question.typed("none"))).holes()).isEmpty();
    assertThat(answered(page, List.of(question.typed("broadhead"))).holes())
        .singleElement()
        .extracting(hole -> hole.head())
        .isEqualTo(Head.BROADHEAD);
    assertThatThrownBy(() -> question.typed("perhaps"))
        .hasMessage("takes field / broadhead / none, not 'perhaps'");
  }

  @Test
  void twoDoubtsAboutOneHoleAreOneQuestion() throws Exception {
    PageReading page = Cards.pair();
    List<Reason> reasons = new ArrayList<>(page.reasons());
    reasons.add(Reason.at(ReasonCode.HOLE_UNSURE, "Is this a hole?", Cards.HOLE));
    PageReading both = page.saying(reasons, page.holes(), page.tears(), page.fields());
    assertThat(about(both))
        .singleElement()
        .satisfies(
            question -> {
              assertThat(question.words()).isEqualTo("Which head made this hole? Is this a hole?");
              assertThat(answered(both, question.accepted()).reasons()).isEmpty();
            });
  }

  @Test
  void whatIsOfTheWholeSheetIsAcceptedOnly() throws Exception {
    Reason doubt = Reason.of(ReasonCode.ARROWS_AGAINST_HOLES, "2 arrows, but 1 hole.");
    PageReading pair = Cards.pair();
    PageReading page = pair.saying(List.of(doubt), pair.holes(), List.of(), List.of());
    Question question = about(page).get(0);
    assertThat(answered(page, question.accepted()).state()).isEqualTo(ReadingState.READ);
    assertThatThrownBy(() -> question.typed("2")).hasMessageContaining("takes nothing else");
  }

  @Test
  void nothingIsAskedOfASurePage() {
    assertThat(about(card("a.jpg", inches(BRACE, 6.5)))).isEmpty();
  }
}
