package sheaf.scanner;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import sheaf.core.reading.Head;
import sheaf.core.reading.Hole;
import sheaf.core.reading.Reason;
import sheaf.core.reading.ReasonCode;
import sheaf.scanner.hole.ArrowsShot;

/** Holds the arrows ticked as shot against the holes found. */
final class ArrowCount {

  private ArrowCount() {}

  /** What does not agree. A count left blank checks nothing and is no doubt. */
  static List<Reason> against(List<Hole> holes, ArrowsShot shot) {
    return List.of(Head.FIELD, Head.BROADHEAD).stream()
        .flatMap(head -> compare(head, holes, shot.of(head)).stream())
        .toList();
  }

  private static Optional<Reason> compare(Head head, List<Hole> holes, OptionalInt shot) {
    long found = holes.stream().filter(hole -> hole.head() == head).count();
    return shot.isPresent() && shot.getAsInt() != found
        ? Optional.of(differ(head, shot.getAsInt(), found))
        : Optional.empty();
  }

  private static Reason differ(Head head, long shot, long found) {
    String heads = head == Head.FIELD ? "field point" : "broadhead";
    return Reason.of(
        ReasonCode.ARROWS_AGAINST_HOLES,
        "%d %s%s ticked as shot, but %d such hole%s found: count the holes on the sheet, and look at the ticks."
            .formatted(
                shot, heads, shot == 1 ? " is" : "s are", found, found == 1 ? " is" : "s are"));
  }
}
