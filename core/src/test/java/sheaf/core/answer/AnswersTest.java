package sheaf.core.answer;

import static org.assertj.core.api.Assertions.assertThat;
import static sheaf.core.answer.Cards.HOLE;
import static sheaf.core.answer.Cards.card;
import static sheaf.core.answer.Cards.inches;
import static sheaf.core.answer.Cards.says;

import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import sheaf.core.layout.Aim;
import sheaf.core.page.MmPoint;
import sheaf.core.reading.FieldReading;
import sheaf.core.reading.FieldReading.State;
import sheaf.core.reading.FieldReading.Teller;
import sheaf.core.reading.Head;
import sheaf.core.reading.Hole;
import sheaf.core.reading.PageReading;
import sheaf.core.reading.ReadingState;
import sheaf.core.reading.Reason;
import sheaf.core.reading.ReasonCode;

class AnswersTest {

  private static final String BRACE = "brace_height_found";
  private static final String DRAW = "draw_length_found";

  private static PageReading over(PageReading page, Answer... answers) {
    return new Answers(List.of(answers)).over(page);
  }

  @Nested
  class OfFields {

    private final PageReading unsure = card("a.jpg", inches(BRACE, 6.5, State.CHECK));

    @Test
    void countAndSettleTheDoubt() {
      PageReading page = over(unsure, says(0, BRACE, 6.25, "6.5 in"));
      assertThat(page.state()).isEqualTo(ReadingState.READ);
      assertThat(page.field(BRACE)).get().extracting(FieldReading::text).isEqualTo("6.25");
      assertThat(page.field(BRACE)).get().extracting(FieldReading::teller).isEqualTo(Teller.LOOKED);
    }

    @Test
    void leaveOtherDoubts() {
      PageReading two =
          card("a.jpg", inches(BRACE, 6.5, State.CHECK), inches(DRAW, 29, State.CHECK));
      PageReading page = over(two, says(0, BRACE, 6.5, "6.5 in"));
      assertThat(page.state()).isEqualTo(ReadingState.CHECK);
      assertThat(page.reasons()).hasSize(1);
    }

    @Test
    void replaceEarlierOnes() {
      PageReading page =
          over(unsure, says(5, BRACE, 6.75, "6.5 in"), says(0, BRACE, 6.25, "6.5 in"));
      assertThat(page.field(BRACE)).get().extracting(FieldReading::text).isEqualTo("6.75");
    }

    @Test
    void standAgainstTheSameReadingAgain() {
      PageReading sure = card("b.jpg", inches(BRACE, 6.5));
      assertThat(over(sure, says(0, BRACE, 6.25, "6.5 in")).state()).isEqualTo(ReadingState.READ);
    }

    @Test
    void areAskedAboutWhenTheSheetSurelySaysSomethingElse() {
      PageReading rewritten = card("b.jpg", inches(BRACE, 7));
      PageReading page = over(rewritten, says(0, BRACE, 6.25, "6.5 in"));
      assertThat(page.state()).isEqualTo(ReadingState.CHECK);
      assertThat(page.reasons()).singleElement().satisfies(this::tellsBoth);
      assertThat(page.field(BRACE)).get().extracting(FieldReading::text).isEqualTo("6.25");
    }

    private void tellsBoth(Reason reason) {
      assertThat(reason.code()).isEqualTo(ReasonCode.ANSWER_AGAINST_SHEET);
      assertThat(reason.message()).contains("6.25 in", "7.0 in", "T.S.");
    }

    @Test
    void ofFieldsDoubtedTogetherLeaveTheOthersAskedAbout() {
      PageReading odd =
          Cards.atOdds("a.jpg", inches(DRAW, 29, State.CHECK), inches(BRACE, 6.5, State.CHECK));
      PageReading page = over(odd, says(0, DRAW, 29, "29.0 in"));
      assertThat(page.reasons())
          .singleElement()
          .extracting(Reason::code)
          .isEqualTo(ReasonCode.WRITTEN_NUMBER);
      assertThat(over(odd, says(0, DRAW, 29, "29.0 in"), says(1, BRACE, 6.5, "")).state())
          .isEqualTo(ReadingState.READ);
    }

    @Test
    void withoutACardStandBeside() {
      Answers answers = new Answers(List.of(says(0, BRACE, 6.25, "")));
      assertThat(answers.beside(List.of()))
          .singleElement()
          .extracting(FieldReading::text)
          .isEqualTo("6.25");
      assertThat(answers.beside(List.of(unsure))).isEmpty();
    }
  }

  @Nested
  class OfHoles {

    @Test
    void setTheHead() {
      Said said = new Said.HoleAt(HOLE, HOLE, Head.BROADHEAD, Aim.FIELD);
      PageReading page = over(Cards.pair(), says(0, 2, said));
      assertThat(page.state()).isEqualTo(ReadingState.READ);
      assertThat(page.holes()).singleElement().satisfies(AnswersTest::isBroadheadWhereItWas);
    }

    @Test
    void takeOneAway() {
      PageReading page = over(Cards.pair(), says(0, 2, new Said.NoHole(HOLE)));
      assertThat(page.holes()).isEmpty();
      assertThat(page.state()).isEqualTo(ReadingState.READ);
    }

    @Test
    void addOneThatWasMissedOnce() {
      MmPoint missed = new MmPoint(80, 100);
      Answer added = says(0, 2, new Said.HoleAt(missed, missed, Head.FIELD, Aim.FIELD));
      Answer again = says(1, 2, new Said.HoleAt(missed, missed, Head.FIELD, Aim.FIELD));
      assertThat(over(Cards.pair(), added, again).holes()).hasSize(2);
    }

    @Test
    void moveOneAndSpeakOfItWhereItIsNow() {
      MmPoint to = new MmPoint(66, 90);
      Answer moved = says(0, 2, new Said.HoleAt(HOLE, to, Head.UNKNOWN, Aim.FIELD));
      Answer named = says(1, 2, new Said.HoleAt(to, to, Head.BROADHEAD, Aim.FIELD));
      assertThat(over(Cards.pair(), moved, named).holes())
          .singleElement()
          .satisfies(
              hole -> {
                assertThat(hole.axis()).isEqualTo(to);
                assertThat(hole.head()).isEqualTo(Head.BROADHEAD);
              });
    }

    @Test
    void acceptADoubtInItsOwnWordsOnly() {
      Reason doubt = Cards.pair().reasons().get(0);
      Reason other = new Reason(doubt.code(), "Something else?", doubt.place());
      assertThat(over(Cards.pair(), says(0, 2, new Said.AsRead(doubt))).reasons()).isEmpty();
      assertThat(over(Cards.pair(), says(0, 2, new Said.AsRead(other))).reasons()).hasSize(1);
    }

    @Test
    void ofAnotherSheetDoNotCount() {
      assertThat(over(Cards.pair(), says(0, 3, new Said.NoHole(HOLE))).holes()).hasSize(1);
    }
  }

  private static void isBroadheadWhereItWas(Hole hole) {
    assertThat(hole.axis()).isEqualTo(HOLE);
    assertThat(hole.head()).isEqualTo(Head.BROADHEAD);
    assertThat(hole.blades()).isEqualTo(2);
    assertThat(hole.confidence()).isEqualTo(1);
  }
}
