package sheaf.scanner.hole;

import java.util.List;
import java.util.Locale;
import java.util.OptionalInt;
import sheaf.core.reading.FieldReading;
import sheaf.core.reading.Head;

/**
 * How many arrows of each head are ticked as shot.
 *
 * @param field points; empty when left blank or unsure
 * @param broadheads the same
 */
public record ArrowsShot(OptionalInt field, OptionalInt broadheads) {

  /** Takes the counts from the fields read. */
  public static ArrowsShot of(List<FieldReading> fields) {
    return new ArrowsShot(count(fields, Head.FIELD), count(fields, Head.BROADHEAD));
  }

  private static OptionalInt count(List<FieldReading> fields, Head head) {
    String key = "arrows_" + head.name().toLowerCase(Locale.ROOT);
    return fields.stream()
        .filter(field -> field.key().equals(key) && field.value().isPresent())
        .mapToInt(field -> (int) Math.round(field.value().getAsDouble()))
        .findFirst();
  }

  /** Of one head. */
  public OptionalInt of(Head head) {
    return head == Head.FIELD ? field : broadheads;
  }

  /** Of both heads; empty unless both are ticked. */
  OptionalInt all() {
    return field.isPresent() && broadheads.isPresent()
        ? OptionalInt.of(field.getAsInt() + broadheads.getAsInt())
        : OptionalInt.empty();
  }
}
