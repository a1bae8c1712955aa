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

  private final List<Hole> holes;
  private final List<Reason> differences = new ArrayList<>();

  private ArrowCount(List<Hole> holes) {
    this.holes = holes;
  }

  /** What does not agree. A count left blank checks nothing and is no doubt. */
  static List<Reason> against(List<Hole> holes, ArrowsShot shot) {
    ArrowCount count = new ArrowCount(holes);
    count.compare("field point", "", shot.field(), hole -> hole.head() == Head.FIELD);
    count.compare("broadhead", "", shot.broadheads(), hole -> hole.head() == Head.BROADHEAD);
    if (shot.field().isEmpty() && shot.broadheads().isEmpty()) {
      count.compare("arrow", "", shot.all(), any -> true);
    }
    new TreeMap<>(shot.byZone()).forEach(count::compare);
    return count.differences;
  }

  private void compare(int zone, int shot) {
    Predicate<Hole> own = hole -> hole.zone().orElse(0) == zone;
    compare("arrow", " at band " + zone, OptionalInt.of(shot), own);
  }

  private void compare(String arrow, String where, OptionalInt shot, Predicate<Hole> own) {
    long found = holes.stream().filter(own).count();
    if (shot.isPresent() && shot.getAsInt() != found) {
      differences.add(
          Reason.of(
              ReasonCode.ARROWS_AGAINST_HOLES,
              "%s ticked as shot%s, but %s found: count the holes on the sheet, and look at the ticks."
                  .formatted(are(shot.getAsInt(), arrow), where, are(found, "such hole"))));
    }
  }

  private static String are(long number, String noun) {
    return number + " " + noun + (number == 1 ? " is" : "s are");
  }
}
