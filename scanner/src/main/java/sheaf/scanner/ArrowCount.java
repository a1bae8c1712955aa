package sheaf.scanner;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.function.Predicate;
import sheaf.core.reading.Head;
import sheaf.core.reading.Hole;
import sheaf.core.reading.Reason;
import sheaf.core.reading.ReasonCode;
import sheaf.scanner.hole.ArrowsShot;

/** Holds the arrows ticked as shot against the holes found. */
final class ArrowCount {

  private static final String HEADS =
      "%d %s are ticked as shot, but %d of their holes are found: look at the picture and correct one of them.";

  private static final String ARROWS =
      "Arrows ticked as shot%2$s: %1$d, holes found: %3$d. Look at the picture and correct one of them.";

  private final List<Hole> holes;
  private final List<Reason> differences = new ArrayList<>();

  private ArrowCount(List<Hole> holes) {
    this.holes = holes;
  }

  /** What does not agree. A count left blank checks nothing and is no doubt. */
  static List<Reason> against(List<Hole> holes, ArrowsShot shot) {
    ArrowCount count = new ArrowCount(holes);
    count.compare(HEADS, "field points", shot.field(), hole -> hole.head() == Head.FIELD);
    count.compare(HEADS, "broadheads", shot.broadheads(), hole -> hole.head() == Head.BROADHEAD);
    if (shot.field().isEmpty() && shot.broadheads().isEmpty()) {
      count.compare(ARROWS, "", shot.all(), any -> true);
    }
    new TreeMap<>(shot.byZone()).forEach(count::compare);
    return count.differences;
  }

  private void compare(int zone, int shot) {
    Predicate<Hole> own = hole -> hole.zone().orElse(0) == zone;
    compare(ARROWS, " at band " + zone, OptionalInt.of(shot), own);
  }

  private void compare(String message, String which, OptionalInt shot, Predicate<Hole> own) {
    long found = holes.stream().filter(own).count();
    if (shot.isPresent() && shot.getAsInt() != found) {
      differences.add(
          Reason.of(
              ReasonCode.ARROWS_AGAINST_HOLES, message.formatted(shot.getAsInt(), which, found)));
    }
  }
}
