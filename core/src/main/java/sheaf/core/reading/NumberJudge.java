package sheaf.core.reading;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import sheaf.core.layout.Field;
import sheaf.core.reading.FieldReading.State;

/** Turns what stands in the digit boxes of a page into values, each as sure as it is. */
public final class NumberJudge {

  /** Values surer than this need nobody's look, where the shop does not say otherwise. */
  public static final double USUALLY_SURE = 0.99;

  /** A value that speaks against others is at most as likely right as wrong. */
  private static final double EVEN = 0.5;

  private static final List<String> COLUMNS = List.of("_found", "_left", "");

  private final double sure;
  private final Map<String, Field.Number> fields = new LinkedHashMap<>();
  private final Map<String, FieldReading> readings = new LinkedHashMap<>();
  private final List<Reason> doubts = new ArrayList<>();

  /** Field keys about which a doubt was already said. */
  private final Set<String> doubted = new TreeSet<>();

  /** Takes values for read that are at least this sure, 0 to 1. */
  public NumberJudge(double sure) {
    this.sure = sure;
  }

  /**
   * The numbers of a page.
   *
   * @param readings one for each field, in the order in which they came
   * @param doubts what a person must look at
   */
  public record Numbers(List<FieldReading> readings, List<Reason> doubts) {
    /** Copies the lists. */
    public Numbers {
      readings = List.copyOf(readings);
      doubts = List.copyOf(doubts);
    }
  }

  /** Takes in what the boxes of a field show, in the field's order. */
  public void add(Field.Number field, List<InBox> boxes) {
    fields.put(field.key(), field);
    if (boxes.stream().allMatch(InBox.Blank.class::isInstance)) {
      readings.put(field.key(), blank(field.key()));
    } else if (boxes.stream().anyMatch(InBox.Unclear.class::isInstance)) {
      unread(field, "Something at \"%s\" is no clear digit: what is written there?");
    } else {
      NumberInBoxes.of(field, boxes)
          .ifPresentOrElse(
              number -> readings.put(field.key(), reading(field, number)),
              () -> unread(field, "The boxes at \"%s\" make no number: what is written there?"));
    }
  }

  /** What all of them say together. */
  public Numbers judge() {
    fields.values().forEach(this::checkRange);
    COLUMNS.forEach(column -> Plausibility.RULES.forEach(rule -> check(rule, column)));
    List<FieldReading> judged = new ArrayList<>();
    for (FieldReading reading : readings.values()) {
      if (doubted.contains(reading.key())) {
        judged.add(unsure(reading, Math.min(reading.confidence(), EVEN)));
      } else if (reading.value().isPresent() && reading.confidence() < sure) {
        doubts.add(doubt(fields.get(reading.key()), asked(reading)));
        judged.add(unsure(reading, reading.confidence()));
      } else {
        judged.add(reading);
      }
    }
    return new Numbers(judged, doubts);
  }

  private static String asked(FieldReading reading) {
    return "Is it " + reading.text() + " that is written at \"%s\"?";
  }

  private void unread(Field.Number field, String question) {
    doubted.add(field.key());
    doubts.add(doubt(field, question));
    readings.put(
        field.key(),
        new FieldReading(field.key(), State.CHECK, "", OptionalDouble.empty(), field.unit(), 0));
  }

  private void checkRange(Field.Number field) {
    FieldReading reading = readings.get(field.key());
    Optional<UsualRange> range = UsualRange.of(field.key());
    if (reading.value().isEmpty() || field.unit().isEmpty() || range.isEmpty()) {
      return;
    }
    if (!range.get().holds(reading.value().getAsDouble(), field.unit().get())) {
      doubted.add(field.key());
      String beyond = " That is beyond what is usual.";
      doubts.add(implausible(field, asked(reading).formatted(field.label()) + beyond));
    }
  }

  private void check(Plausibility rule, String column) {
    Optional<Boolean> holds = rule.holds(readings, column);
    if (holds.isEmpty()) {
      return;
    }
    List<String> keys = rule.keys().stream().map(key -> key + column).toList();
    if (holds.get()) {
      keys.forEach(key -> readings.computeIfPresent(key, (k, r) -> confirmed(r, rule)));
    } else {
      doubted.addAll(keys);
      List<String> said =
          keys.stream()
              .map(key -> fields.get(key).label() + " " + readings.get(key).text())
              .toList();
      String message =
          "These do not go together: %s (%s). Was one misread or miswritten?"
              .formatted(String.join(", ", said), rule.says());
      doubts.add(implausible(fields.get(keys.get(0)), message));
    }
  }

  private static FieldReading confirmed(FieldReading reading, Plausibility rule) {
    return new FieldReading(
        reading.key(),
        reading.state(),
        reading.text(),
        reading.value(),
        reading.unit(),
        rule.confirmed(reading.confidence()));
  }

  private static FieldReading reading(Field.Number field, NumberInBoxes number) {
    return new FieldReading(
        field.key(),
        State.READ,
        number.text(),
        OptionalDouble.of(number.value()),
        field.unit(),
        number.confidence());
  }

  private static FieldReading unsure(FieldReading reading, double confidence) {
    return new FieldReading(
        reading.key(), State.CHECK, reading.text(), reading.value(), reading.unit(), confidence);
  }

  private static FieldReading blank(String key) {
    return new FieldReading(key, State.BLANK, "", OptionalDouble.empty(), Optional.empty(), 1);
  }

  private static Reason doubt(Field.Number field, String question) {
    return Reason.at(
        ReasonCode.WRITTEN_NUMBER,
        question.formatted(field.label()),
        field.digits().get(0).box().centre());
  }

  private static Reason implausible(Field.Number field, String message) {
    return Reason.at(ReasonCode.NUMBER_IMPLAUSIBLE, message, field.digits().get(0).box().centre());
  }
}
