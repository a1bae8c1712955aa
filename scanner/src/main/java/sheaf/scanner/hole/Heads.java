package sheaf.scanner.hole;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import sheaf.core.reading.Head;

/** Which head made which hole, as far as their shapes and the arrows ticked as shot tell. */
final class Heads {

  /** Slits of broadheads run farther than other lines by this at least, in millimetres. */
  private static final double CLEARLY_LONGER = 1.5;

  private Heads() {}

  /** The head of each hole; unknown where shapes and ticks leave it open. */
  static Map<FoundHole, Head> of(List<FoundHole> holes, ArrowsShot shot) {
    Map<FoundHole, Head> heads = new HashMap<>();
    holes.forEach(hole -> heads.put(hole, hole.shape().head()));
    if (shot.compared().equals(OptionalInt.of(holes.size()))) {
      rank(holes, shot.broadheads().getAsInt(), heads);
      count(Head.BROADHEAD, shot, heads);
      count(Head.FIELD, shot, heads);
    }
    return heads;
  }

  /** So many broadheads were shot, and so many holes have clearly longer slits than the rest. */
  private static void rank(List<FoundHole> holes, int broadheads, Map<FoundHole, Head> heads) {
    List<FoundHole> longest =
        holes.stream()
            .sorted(Comparator.comparingDouble((FoundHole hole) -> hole.shape().slits()).reversed())
            .toList();
    if (apart(longest, broadheads)) {
      longest.forEach(
          hole ->
              heads.put(hole, longest.indexOf(hole) < broadheads ? Head.BROADHEAD : Head.FIELD));
    }
  }

  private static boolean apart(List<FoundHole> longest, int broadheads) {
    if (broadheads == 0 || broadheads == longest.size()) {
      return false;
    }
    double last = longest.get(broadheads - 1).shape().slits();
    double next = longest.get(broadheads).shape().slits();
    return last - next >= CLEARLY_LONGER && last >= HeadShape.FIELD && next <= HeadShape.BROADHEAD;
  }

  /** When all the arrows of one head are found, those that are left open are of the other. */
  private static void count(Head head, ArrowsShot shot, Map<FoundHole, Head> heads) {
    long found = heads.values().stream().filter(head::equals).count();
    if (found == shot.of(head).getAsInt()) {
      Head other = head == Head.FIELD ? Head.BROADHEAD : Head.FIELD;
      heads.replaceAll((hole, own) -> own == Head.UNKNOWN ? other : own);
    }
  }
}
