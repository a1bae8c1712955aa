package sheaf.core.answer;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import sheaf.core.layout.Field;
import sheaf.core.page.MmPoint;
import sheaf.core.reading.FieldReading;
import sheaf.core.reading.FieldReading.State;
import sheaf.core.reading.PageReading;
import sheaf.core.reading.Reason;
import sheaf.core.reading.ReasonCode;

/** Lays what people said over one page. */
final class Overlay {

  private final PageReading page;
  private final List<Answer> answers;
  private final List<Reason> reasons;

  /**
   * Lays over.
   *
   * @param answers about this page, the earliest first
   */
  Overlay(PageReading page, List<Answer> answers) {
    this.page = page;
    this.answers = answers;
    this.reasons = new ArrayList<>(page.reasons());
  }

  PageReading page() {
    Targets targets = new Targets(page);
    answers.forEach(answer -> targets.hear(answer.said()));
    reasons.removeIf(targets::settles);
    List<FieldReading> fields = fields();
    answers.stream()
        .map(Answer::said)
        .filter(Said.AsRead.class::isInstance)
        .forEach(said -> reasons.removeIf(reason -> isSame(reason, ((Said.AsRead) said).doubt())));
    return page.saying(reasons, targets.holes(), targets.tears(), fields);
  }

  private List<FieldReading> fields() {
    Map<String, Answer> last = new LinkedHashMap<>();
    for (Answer answer : answers) {
      if (answer.said() instanceof Said.Value value) {
        last.put(value.key(), answer);
      }
    }
    boolean together = settle(last.keySet());
    List<FieldReading> fields = new ArrayList<>();
    for (FieldReading machine : page.fields()) {
      Answer answer = last.get(machine.key());
      fields.add(answer == null ? machine : said(machine, answer));
    }
    if (together) {
      fields.forEach(this::askUnlessAsked);
    }
    return fields;
  }

  /**
   * Takes away the doubts about fields that were answered.
   *
   * @return whether one of them was about several fields
   */
  private boolean settle(Set<String> keys) {
    boolean together = false;
    for (Reason reason : page.reasons()) {
      Optional<Field> field = FieldPlaces.field(page, reason);
      if (field.isPresent() && keys.contains(field.get().key())) {
        reasons.remove(reason);
        together |= reason.code() == ReasonCode.NUMBER_IMPLAUSIBLE;
      }
    }
    return together;
  }

  private FieldReading said(FieldReading machine, Answer answer) {
    Said.Value value = (Said.Value) answer.said();
    FieldReading said = Answers.reading(value);
    boolean news =
        machine.state() == State.READ
            && !isSame(machine, said)
            && !machine.words().equals(value.seen());
    if (!news) {
      return said;
    }
    reasons.add(against(machine, answer, said));
    return new FieldReading(
        said.key(), State.CHECK, said.text(), said.value(), said.unit(), 0.5, said.teller());
  }

  private static boolean isSame(FieldReading one, FieldReading other) {
    if (one.unit().isPresent()
        && other.unit().isPresent()
        && one.value().isPresent()
        && other.value().isPresent()
        && one.unit().get().dimension() == other.unit().get().dimension()) {
      double same = other.unit().get().convert(other.value().getAsDouble(), one.unit().get());
      return Math.abs(same - one.value().getAsDouble()) < 1e-6;
    }
    return one.words().equalsIgnoreCase(other.words());
  }

  private Reason against(FieldReading machine, Answer answer, FieldReading said) {
    String message =
        "At \"%s\" %s said %s; this sheet says %s. Which holds?"
            .formatted(
                FieldPlaces.label(page, machine.key()),
                answer.who().orElse("a person"),
                said.text().isEmpty() ? "that nothing is written" : said.words(),
                machine.words());
    Optional<MmPoint> place = FieldPlaces.place(page, machine.key());
    return new Reason(ReasonCode.ANSWER_AGAINST_SHEET, message, place);
  }

  /** Fields that were doubted together are asked about one by one, once one is answered. */
  private void askUnlessAsked(FieldReading field) {
    Set<String> asked = new TreeSet<>();
    reasons.forEach(
        reason -> FieldPlaces.field(page, reason).ifPresent(found -> asked.add(found.key())));
    if (field.state() == State.CHECK && !asked.contains(field.key())) {
      String message =
          field.text().isEmpty()
              ? "What is written at \"%s\"?".formatted(FieldPlaces.label(page, field.key()))
              : "Is it %s that is written at \"%s\"?"
                  .formatted(field.text(), FieldPlaces.label(page, field.key()));
      reasons.add(
          new Reason(ReasonCode.WRITTEN_NUMBER, message, FieldPlaces.place(page, field.key())));
    }
  }

  private static boolean isSame(Reason one, Reason other) {
    boolean near =
        one.place().isPresent() == other.place().isPresent()
            && one.place()
                .map(at -> at.minus(other.place().orElseThrow()).length() <= Targets.NEAR)
                .orElse(true);
    return near && one.code() == other.code() && one.message().equals(other.message());
  }
}
