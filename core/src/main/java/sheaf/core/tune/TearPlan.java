package sheaf.core.tune;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import sheaf.core.layout.BowType;
import sheaf.core.page.MmVector;
import sheaf.core.record.Tear;
import sheaf.core.record.Visit;

/**
 * What a tear alone says to move, by common practice.
 *
 * <p>Sideways the trade disagrees: some move the rest to the side that the tail tore to, some away
 * from it, many say only to try (no published source for either rule). Sheaf starts toward the
 * tail's side, because that agrees with what is done for broadheads: an arrow whose tail is right
 * points left, its broadhead planes left, and the rest follows the field points to the right. Up
 * and down the trade agrees: tail high, lower the nocking point or raise the rest.
 */
final class TearPlan {

  private TearPlan() {}

  /** The plan of a visit without pair sheets. */
  static Plan of(Visit visit, BowSetup setup) {
    Optional<Tear> last = last(visit);
    if (last.isEmpty()) {
      return Plan.without(
          Plan.Kind.SHOOT_FIRST,
          "Nothing has been shot yet that says what to move: shoot a tear sheet or a pair sheet.");
    }
    if (last.get().isBulletHole()) {
      return Plan.without(
          Plan.Kind.SHOOT_FIRST,
          "The last tear is a bullet hole: shoot a pair sheet to compare broadheads.");
    }
    Axis axis = axis(last.get());
    return move(last.get(), axis, setup)
        .map(move -> starting(last.get(), move))
        .orElseGet(() -> shootPair(setup));
  }

  private static Plan shootPair(BowSetup setup) {
    return Plan.without(
        Plan.Kind.SHOOT_FIRST,
        setup.bow() == BowType.CROSSBOW
            ? "A crossbow has neither rest nor nocking point to move: see to bolts and nocks."
            : "Loosed by fingers, a sideways tear speaks first of the arrow's stiffness, and rules"
                + " made for a release do not hold: shoot a pair sheet.");
  }

  private static Plan starting(Tear tear, Move move) {
    List<String> remarks = new ArrayList<>();
    remarks.add(
        "The last tear has its tail at %d o'clock: as common practice, move %s, nothing else, and shoot again."
            .formatted(tear.clock(), move.words()));
    if (move.lever().axis() == Axis.SIDEWAYS) {
      remarks.add(
          "No standard says so, and sources disagree: some move it the other way. If the next tear"
              + " is longer, go back and the other way.");
    }
    remarks.add("Vane clearance and grip can turn a tear round: look at them first.");
    return new Plan(
        Plan.Kind.STARTING_MOVE,
        Optional.of(move),
        Optional.empty(),
        Optional.empty(),
        OptionalInt.empty(),
        List.of(),
        remarks);
  }

  /** The last tear of a visit. */
  static Optional<Tear> last(Visit visit) {
    return visit.tears().stream().reduce((earlier, later) -> later);
  }

  /** Along which way a tear is longer. */
  static Axis axis(Tear tear) {
    MmVector way = tear.pointToTail();
    return Math.abs(way.dx()) >= Math.abs(way.dy()) ? Axis.SIDEWAYS : Axis.UPRIGHT;
  }

  /** What a tear says to do along an axis; empty where no rule holds. */
  static Optional<Move> move(Tear tear, Axis axis, BowSetup setup) {
    boolean fingers =
        setup.bow() == BowType.RECURVE
            || setup.loosedBy().filter(by -> by == BowSetup.LoosedBy.FINGERS).isPresent();
    if (fingers && axis == Axis.SIDEWAYS) {
      return Optional.empty();
    }
    return setup
        .first(axis)
        .map(
            lever -> {
              // A nocking point goes the other way than a rest does.
              double sign = lever.part() == Part.NOCKING ? -1 : 1;
              double toTail = Math.signum(axis.along(tear.pointToTail()));
              return new Move(lever, sign * toTail * lever.step().small());
            });
  }
}
