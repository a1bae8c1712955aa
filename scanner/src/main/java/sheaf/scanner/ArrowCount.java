package sheaf.scanner;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import sheaf.core.reading.FieldReading;
import sheaf.core.reading.Head;
import sheaf.core.reading.Hole;
import sheaf.core.reading.Reason;
import sheaf.core.reading.ReasonCode;

/** Holds the arrows ticked as shot against the holes found. */
final class ArrowCount {

  private ArrowCount() {}

  /** What does not agree. A count left blank checks nothing and is no doubt. */
  static List<Reason> against(List<Hole> holes, List<FieldReading> fields) {
    return List.of(Head.FIELD, Head.BROADHEAD).stream()
        .flatMap(head -> compare(head, holes, fields).stream())
        .toList();
  }

  private static Optional<Reason> compare(Head head, List<Hole> holes, List<FieldReading> fields) {
    String key = "arrows_" + head.name().toLowerCase(Locale.ROOT);
    return fields.stream()
        .filter(field -> field.key().equals(key) && field.value().isPresent())
        .findFirst()
        .flatMap(
            field -> {
              long found = holes.stream().filter(hole -> hole.head() == head).count();
              long shot = Math.round(field.value().getAsDouble());
              return found == shot ? Optional.empty() : Optional.of(differ(head, shot, found));
            });
  }

  private static Reason differ(Head head, long shot, long found) {
    String heads = head == Head.FIELD ? "field points" : "broadheads";
    return Reason.of(
        ReasonCode.ARROWS_AGAINST_HOLES,
        "%d %s are ticked as shot, but %d of their holes are found: look at the picture and correct one of them."
            .formatted(shot, heads, found));
  }
}
