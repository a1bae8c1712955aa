package sheaf.core.answer;

import static org.assertj.core.api.Assertions.assertThat;
import static sheaf.core.answer.Cards.JOB;
import static sheaf.core.answer.Cards.card;
import static sheaf.core.answer.Cards.inches;
import static sheaf.core.answer.Cards.says;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import sheaf.core.layout.Aim;
import sheaf.core.page.MmPoint;
import sheaf.core.reading.FieldReading;
import sheaf.core.reading.FieldReading.State;
import sheaf.core.reading.Head;
import sheaf.core.reading.PageReading;
import sheaf.core.reading.ReadingState;
import sheaf.core.record.RecordOfSheets;
import sheaf.core.result.JobSummary;

/** However a job's papers and people's words come in, they come to the same. */
class MergePropertiesTest {

  private static final List<String> KEYS =
      List.of("brace_height_found", "draw_length_found", "axle_to_axle_left");

  @Provide
  Arbitrary<List<PageReading>> cards() {
    Arbitrary<FieldReading> field =
        Combinators.combine(
                Arbitraries.of(6.0, 6.5, 7.0), Arbitraries.of(State.READ, State.CHECK, State.BLANK))
            .as(
                (value, state) ->
                    state == State.BLANK
                        ? Cards.blank(KEYS.get(0))
                        : inches(KEYS.get(0), value, state));
    Arbitrary<PageReading> card = field.list().ofSize(KEYS.size()).map(MergePropertiesTest::card);
    return card.list().ofMinSize(1).ofMaxSize(5);
  }

  private static PageReading card(List<FieldReading> values) {
    List<FieldReading> fields = new ArrayList<>();
    for (int i = 0; i < KEYS.size(); i++) {
      FieldReading value = values.get(i);
      fields.add(
          new FieldReading(
              KEYS.get(i),
              value.state(),
              value.text(),
              value.value(),
              value.unit(),
              value.confidence()));
    }
    return Cards.card("card.jpg", fields.toArray(FieldReading[]::new));
  }

  @Provide
  Arbitrary<List<Answer>> answers() {
    Arbitrary<Answer> field =
        Combinators.combine(
                Arbitraries.integers().between(0, 9),
                Arbitraries.of(KEYS),
                Arbitraries.of(6.0, 6.5, 7.5))
            .as((minutes, key, value) -> says(minutes, key, value, "6.5 in"));
    Arbitrary<Answer> hole =
        Combinators.combine(
                Arbitraries.integers().between(0, 9),
                Arbitraries.of(60.0, 70.0, 80.0),
                Arbitraries.of(Head.FIELD, Head.BROADHEAD))
            .as(
                (minutes, x, head) -> {
                  MmPoint at = new MmPoint(x, 90);
                  return says(minutes, 2, new Said.HoleAt(at, at, head, Aim.FIELD));
                });
    return Arbitraries.oneOf(field, hole).list().ofMaxSize(8);
  }

  private static JobSummary sum(List<PageReading> readings, List<Answer> answers) {
    return JobSummary.of(JOB, readings, new Answers(answers));
  }

  @Property
  void saidTwiceIsSaidOnce(
      @ForAll("cards") List<PageReading> cards, @ForAll("answers") List<Answer> answers) {
    List<Answer> twice = new ArrayList<>(answers);
    twice.addAll(answers);
    assertThat(sum(cards, twice)).isEqualTo(sum(cards, answers));
  }

  @Property
  void scannedTwiceIsScannedOnce(
      @ForAll("cards") List<PageReading> cards, @ForAll("answers") List<Answer> answers) {
    List<PageReading> twice = new ArrayList<>();
    cards.forEach(
        card -> {
          twice.add(card);
          twice.add(card);
        });
    assertThat(sum(twice, answers)).isEqualTo(sum(cards, answers));
  }

  @Property
  void sheetsMayComeInAnyOrder(
      @ForAll("cards") List<PageReading> cards,
      @ForAll("answers") List<Answer> answers,
      @ForAll Random random) {
    List<PageReading> pairLast = new ArrayList<>(cards);
    pairLast.add(Cards.pair());
    List<PageReading> pairSomewhere = new ArrayList<>(cards);
    pairSomewhere.add(random.nextInt(cards.size() + 1), Cards.pair());
    List<Answer> shuffled = new ArrayList<>(new Answers(answers).all());
    assertThat(sum(pairSomewhere, shuffled)).isEqualTo(sum(pairLast, answers));
    assertThat(RecordOfSheets.of(sum(pairSomewhere, answers), Optional.empty()))
        .isEqualTo(RecordOfSheets.of(sum(pairLast, answers), Optional.empty()));
  }

  @Property
  void aPersonsWordIsNeverOverwrittenInSilence(
      @ForAll("cards") List<PageReading> later, @ForAll("answers") List<Answer> answers) {
    Answers said = new Answers(answers);
    JobSummary job = JobSummary.of(JOB, later, said);
    for (String key : KEYS) {
      Optional<Said.Value> last =
          said.all().stream()
              .map(Answer::said)
              .filter(Said.Value.class::isInstance)
              .map(Said.Value.class::cast)
              .filter(value -> value.key().equals(key))
              .reduce((earlier, one) -> one);
      last.ifPresent(
          value ->
              assertThat(job.benchCard(key))
                  .get()
                  .extracting(FieldReading::text)
                  .isEqualTo(value.text()));
    }
  }

  @Property
  void whatAllFieldsWereAnsweredLeavesNoDoubt(@ForAll("cards") List<PageReading> cards) {
    PageReading seen = Rescan.of(cards);
    List<Answer> answers = new ArrayList<>();
    for (String key : KEYS) {
      answers.add(says(0, key, 6.5, seen.field(key).orElseThrow().words()));
    }
    Collections.reverse(answers);
    assertThat(sum(cards, answers).sheets().get(0).state()).isEqualTo(ReadingState.READ);
  }
}
