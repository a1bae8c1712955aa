package sheaf.core.tune;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import sheaf.core.group.Ellipse;
import sheaf.core.page.MmVector;

/**
 * What to do next with a bow.
 *
 * @param kind what sort of step it is
 * @param move what to move; only for a starting or a computed move
 * @param now where broadheads go now, from all of the job's sheets; empty before any was shot
 * @param after where they are expected to go after the move; only for a computed move
 * @param moreOfEach how many more arrows of each head would settle this setting; empty when that is
 *     not asked, or too many to tell
 * @param learnt what this bow's own sheets taught of what was moved so far
 * @param remarks whole sentences, in the order in which they should be read
 */
public record Plan(
    Kind kind,
    Optional<Move> move,
    Optional<Forecast> now,
    Optional<Forecast> after,
    OptionalInt moreOfEach,
    List<Learnt> learnt,
    List<String> remarks) {

  /** Sorts of next steps. */
  public enum Kind {
    /** A part is not sound: nothing is shot. */
    DO_NOT_SHOOT,
    /** There is nothing to go by yet: shoot a tear sheet or a pair sheet. */
    SHOOT_FIRST,
    /** Both heads are shown to hit the same point: leave the bow alone. */
    SAME_POINT,
    /** Shots scatter too much to say: shoot again and change nothing. */
    MORE_ARROWS,
    /** A small move by common practice, to see how this bow answers. */
    STARTING_MOVE,
    /** A move computed from how this bow, or the shop's earlier ones, answered. */
    COMPUTED_MOVE,
    /** Nothing on this bow is known to move the heads together: see to arrows and heads. */
    NO_LEVER
  }

  /**
   * Where broadheads go, from the field points, at 20 yd.
   *
   * @param offset in millimetres, x right, y down
   * @param region where the true offset is with 95 % confidence
   */
  public record Forecast(MmVector offset, Ellipse region) {}

  /**
   * A lever and its answer.
   *
   * @param lever what was moved
   * @param response to one of its steps, in millimetres at 20 yd
   */
  public record Learnt(Lever lever, Response response) {}

  /** Copies the lists. */
  public Plan {
    learnt = List.copyOf(learnt);
    remarks = List.copyOf(remarks);
  }

  static Plan without(Kind kind, String... remarks) {
    return new Plan(
        kind,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        OptionalInt.empty(),
        List.of(),
        List.of(remarks));
  }
}
