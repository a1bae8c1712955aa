package sheaf.scanner.hole;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import sheaf.core.reading.Head;

/** Which head made which hole, as far as their shapes and the arrows ticked as shot tell. */
final class Heads {

  private Heads() {}

  /**
   * The head of each hole; unknown where shapes and ticks leave it open.
   *
   * @param dots the head that was to be shot at the dot beside each hole; unknown for a shared one
   */
  static Map<FoundHole, Head> of(
      List<FoundHole> holes, Map<FoundHole, Head> dots, ArrowsShot shot) {
    Map<FoundHole, Head> heads = new HashMap<>();
    holes.forEach(hole -> heads.put(hole, hole.shape().head()));
    if (shot.compared().equals(OptionalInt.of(holes.size()))) {
      HeadChoice.of(holes, dots, shot.broadheads().getAsInt())
          .ifPresent(
              chosen ->
                  heads.replaceAll(
                      (hole, own) -> chosen.contains(hole) ? Head.BROADHEAD : Head.FIELD));
      count(Head.BROADHEAD, shot, heads);
      count(Head.FIELD, shot, heads);
    }
    return heads;
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
