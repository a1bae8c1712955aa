package sheaf.core.answer;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import sheaf.core.layout.Field;
import sheaf.core.layout.Layout;
import sheaf.core.layout.Layouts;
import sheaf.core.page.MmPoint;
import sheaf.core.reading.PageReading;
import sheaf.core.reading.Reason;
import sheaf.core.reading.ReasonCode;

/** Which field of a page a doubt is about. */
public final class FieldPlaces {

  private static final Set<ReasonCode> ABOUT_FIELDS =
      EnumSet.of(
          ReasonCode.TICK_UNSURE,
          ReasonCode.TWO_TICKS,
          ReasonCode.WRITTEN_NUMBER,
          ReasonCode.NUMBER_IMPLAUSIBLE,
          ReasonCode.VALUE_GONE,
          ReasonCode.VALUE_REVISED,
          ReasonCode.ANSWER_AGAINST_SHEET);

  private FieldPlaces() {}

  /** The fields of a page's sheet; none for a page that names no known one. */
  public static List<Field> fields(PageReading page) {
    return page.sheet()
        .flatMap(code -> Layouts.find(code.layout()))
        .map(Layout::fields)
        .orElse(List.of());
  }

  /** The field that a doubt is about; empty when it is about something else. */
  public static Optional<Field> field(PageReading page, Reason doubt) {
    return ABOUT_FIELDS.contains(doubt.code())
        ? doubt.place().flatMap(place -> field(page, place))
        : Optional.empty();
  }

  private static Optional<Field> field(PageReading page, MmPoint place) {
    return fields(page).stream()
        .filter(field -> field.boxes().stream().anyMatch(box -> box.contains(place)))
        .findFirst();
  }

  /** Where a field stands: in its first box. */
  static Optional<MmPoint> place(PageReading page, String key) {
    return fields(page).stream()
        .filter(field -> field.key().equals(key))
        .map(field -> field.boxes().get(0).centre())
        .findFirst();
  }

  /** What a person calls a field. */
  static String label(PageReading page, String key) {
    return fields(page).stream()
        .filter(field -> field.key().equals(key))
        .map(Field::label)
        .findFirst()
        .orElse(key);
  }
}
