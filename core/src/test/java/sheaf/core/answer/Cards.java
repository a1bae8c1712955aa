package sheaf.core.answer;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import sheaf.core.job.JobId;
import sheaf.core.job.SheetCode;
import sheaf.core.layout.Aim;
import sheaf.core.layout.Field;
import sheaf.core.layout.Layout;
import sheaf.core.layout.Layouts;
import sheaf.core.layout.UnitSystem;
import sheaf.core.layout.Variant;
import sheaf.core.measure.Unit;
import sheaf.core.page.MmPoint;
import sheaf.core.page.Paper;
import sheaf.core.reading.FieldReading;
import sheaf.core.reading.FieldReading.State;
import sheaf.core.reading.FieldReading.Teller;
import sheaf.core.reading.Head;
import sheaf.core.reading.Hole;
import sheaf.core.reading.PageReading;
import sheaf.core.reading.Reason;
import sheaf.core.reading.ReasonCode;

/** Invented readings of a bench card and a pair sheet, and what people say of them. */
final class Cards {

  static final JobId JOB = JobId.parse("7G4KQ-2M8XE-0").orElseThrow();
  static final Instant NOON = Instant.parse("2026-09-14T12:00:00Z");
  static final MmPoint HOLE = new MmPoint(60, 90);

  private static final Layout CARD =
      Layouts.current(Variant.FRONT, Paper.LETTER, UnitSystem.INCHES);
  private static final Layout PAIR =
      Layouts.current(Variant.TWO_DOTS, Paper.LETTER, UnitSystem.INCHES);

  private Cards() {}

  /** A number of inches, surely read. */
  static FieldReading inches(String key, double value) {
    return inches(key, value, State.READ);
  }

  static FieldReading inches(String key, double value, State state) {
    String text = String.valueOf(value);
    double confidence = state == State.READ ? 0.999 : 0.6;
    return new FieldReading(
        key, state, text, OptionalDouble.of(value), Optional.of(Unit.INCH), confidence);
  }

  static FieldReading blank(String key) {
    return new FieldReading(key, State.BLANK, "", OptionalDouble.empty(), Optional.empty(), 1);
  }

  /** A bench card whose unsure fields are doubts. */
  static PageReading card(String source, FieldReading... fields) {
    List<Reason> doubts =
        List.of(fields).stream()
            .filter(field -> field.state() == State.CHECK)
            .map(
                field ->
                    Reason.at(
                        ReasonCode.WRITTEN_NUMBER, "Is it " + field.text() + "?", box(field.key())))
            .toList();
    return page(source, 1, CARD, doubts, List.of(), List.of(fields));
  }

  /** The same doubted together. */
  static PageReading atOdds(String source, FieldReading... fields) {
    Reason doubt =
        Reason.at(ReasonCode.NUMBER_IMPLAUSIBLE, "These do not go together.", box(fields[0].key()));
    return page(source, 1, CARD, List.of(doubt), List.of(), List.of(fields));
  }

  /** A pair sheet with one hole of unknown head, about which there is a doubt. */
  static PageReading pair() {
    Hole hole = new Hole(HOLE, 0.3, 6.2, Head.UNKNOWN, 2, 28, Aim.FIELD, 0.7);
    Reason doubt = Reason.at(ReasonCode.HEAD_UNSURE, "Which head made this hole?", HOLE);
    return page("pair.jpg", 2, PAIR, List.of(doubt), List.of(hole), List.of());
  }

  private static PageReading page(
      String source,
      int number,
      Layout layout,
      List<Reason> reasons,
      List<Hole> holes,
      List<FieldReading> fields) {
    return new PageReading(
        source,
        reasons,
        Optional.of(new SheetCode(JOB, number, layout.id())),
        OptionalDouble.of(11.8),
        Optional.empty(),
        holes,
        fields);
  }

  private static MmPoint box(String key) {
    Field field =
        CARD.fields().stream().filter(one -> one.key().equals(key)).findFirst().orElseThrow();
    return field.boxes().get(0).centre();
  }

  /** Somebody looked, {@code minutes} past noon, and says what is written on the card. */
  static Answer says(int minutes, String key, double value, String seen) {
    Said.Value said =
        new Said.Value(
            key,
            String.valueOf(value),
            OptionalDouble.of(value),
            Optional.of(Unit.INCH),
            Teller.LOOKED,
            seen);
    return new Answer(
        OptionalInt.empty(), said, Optional.of("T.S."), time(minutes), Optional.empty());
  }

  /** Somebody says something of a sheet. */
  static Answer says(int minutes, int sheet, Said said) {
    return new Answer(
        OptionalInt.of(sheet), said, Optional.of("T.S."), time(minutes), Optional.empty());
  }

  static Instant time(int minutes) {
    return NOON.plusSeconds(60L * minutes);
  }
}
