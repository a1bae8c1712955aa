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
    count.compare(shot.field(), hole -> hole.head() == Head.FIELD, "field point", "");
    count.compare(shot.broadheads(), hole -> hole.head() == Head.BROADHEAD, "broadhead", "");
    if (shot.field().isEmpty() && shot.broadheads().isEmpty()) {
      count.compare(shot.all(), any -> true, "arrow", "");
    }
    new TreeMap<>(shot.byZone())
        .forEach(
            (zone, arrows) ->
                count.compare(
                    OptionalInt.of(arrows),
                    hole -> hole.zone().orElse(0) == zone,
                    "arrow",
                    " at " + zone));
    return count.differences;
  }

  private void compare(OptionalInt shot, Predicate<Hole> own, String arrow, String where) {
    long found = holes.stream().filter(own).count();
    if (shot.isPresent() && shot.getAsInt() != found) {
      differences.add(
          Reason.of(
              ReasonCode.ARROWS_AGAINST_HOLES,
              "%s%s ticked as shot%s, but %s found: count the holes on the sheet, and look at the ticks."
                  .formatted(
                      many(shot.getAsInt(), arrow),
                      shot.getAsInt() == 1 ? " is" : " are",
                      where,
                      many(found, "such hole") + (found == 1 ? " is" : " are"))));
    }
  }

  private static String many(long count, String what) {
    return count + " " + what + (count == 1 ? "" : "s");
  }
}
