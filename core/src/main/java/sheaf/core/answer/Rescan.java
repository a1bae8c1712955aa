package sheaf.core.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sheaf.core.page.MmPoint;
import sheaf.core.reading.FieldReading;
import sheaf.core.reading.FieldReading.State;
import sheaf.core.reading.PageReading;
import sheaf.core.reading.Reason;
import sheaf.core.reading.ReasonCode;

/**
 * One sheet that was read several times, from several scans or files. The last reading counts; but
 * what its fields surely said before is not forgotten.
 */
public final class Rescan {

  private final List<PageReading> readings;
  private final PageReading last;
  private final List<FieldReading> fields = new ArrayList<>();
  private final List<Reason> reasons;

  private Rescan(List<PageReading> readings) {
    this.readings = readings;
    this.last = readings.get(readings.size() - 1);
    this.reasons = new ArrayList<>(last.reasons());
  }

  /**
   * What the readings of one sheet come to. A value that differs from the one before says so; one
   * that was sure and now is unsure or missing is doubtful, unless it is still likeliest.
   *
   * @param readings of one sheet, in the order in which they were made; at least one
   */
  public static PageReading of(List<PageReading> readings) {
    return new Rescan(readings).merged();
  }

  private PageReading merged() {
    if (readings.size() == 1) {
      return last;
    }
    last.fields().forEach(field -> fields.add(merged(field)));
    return last.saying(reasons, last.holes(), last.tears(), fields);
  }

  /** A sure reading of a field, and the page that said it. */
  private record Sure(FieldReading field, String source) {}

  private FieldReading merged(FieldReading now) {
    List<Sure> sure = sure(now.key());
    if (sure.isEmpty()) {
      return now;
    }
    Sure latest = sure.get(sure.size() - 1);
    return switch (now.state()) {
      case READ -> {
        if (sure.size() > 1) {
          reasons.add(revised(now, sure.get(sure.size() - 2)));
        }
        yield now;
      }
      case CHECK -> now.words().equals(latest.field().words()) ? settled(latest.field()) : now;
      case BLANK -> {
        reasons.add(gone(latest));
        yield unsure(latest.field());
      }
    };
  }

  /** All that a field surely said, in order; the same said again counts once. */
  private List<Sure> sure(String key) {
    List<Sure> sure = new ArrayList<>();
    for (PageReading page : readings) {
      Optional<FieldReading> said = page.field(key).filter(f -> f.state() == State.READ);
      if (said.isPresent()
          && (sure.isEmpty()
              || !sure.get(sure.size() - 1).field().words().equals(said.get().words()))) {
        sure.add(new Sure(said.get(), page.source()));
      }
    }
    return sure;
  }

  private FieldReading settled(FieldReading sure) {
    reasons.removeIf(
        reason ->
            FieldPlaces.field(last, reason).filter(f -> f.key().equals(sure.key())).isPresent());
    return sure;
  }

  private static FieldReading unsure(FieldReading sure) {
    return new FieldReading(
        sure.key(), State.CHECK, sure.text(), sure.value(), sure.unit(), sure.confidence() / 2);
  }

  private Reason revised(FieldReading now, Sure before) {
    return at(
        now.key(),
        ReasonCode.VALUE_REVISED,
        "\"%s\" is now %s; it was %s when read from %s."
            .formatted(
                FieldPlaces.label(last, now.key()),
                now.words(),
                before.field().words(),
                before.source()));
  }

  private Reason gone(Sure before) {
    return at(
        before.field().key(),
        ReasonCode.VALUE_GONE,
        "At \"%s\" nothing is seen now; it was %s when read from %s. Which holds?"
            .formatted(
                FieldPlaces.label(last, before.field().key()),
                before.field().words(),
                before.source()));
  }

  private Reason at(String key, ReasonCode code, String message) {
    Optional<MmPoint> place = FieldPlaces.place(last, key);
    return new Reason(code, message, place);
  }
}
