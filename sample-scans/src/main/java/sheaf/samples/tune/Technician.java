package sheaf.samples.tune;

import java.util.Optional;
import sheaf.core.group.Comparison;
import sheaf.core.page.MmVector;
import sheaf.core.record.Visit;
import sheaf.core.tune.Axis;
import sheaf.core.tune.BowSetup;
import sheaf.core.tune.Lever;
import sheaf.core.tune.Move;
import sheaf.core.tune.Part;
import sheaf.core.tune.Plan;
import sheaf.core.tune.Planner;
import sheaf.core.tune.ShopPrior;
import sheaf.core.tune.Step;

/** Decides what to move after a sheet. */
interface Technician {

  /** The bow is handed on, as nothing that there is to move answers enough. */
  final class GivesUp extends Exception {
    private static final long serialVersionUID = 1L;
  }

  /** The move; empty to shoot again at the same setting. */
  Optional<Move> next(Visit visit) throws GivesUp;

  /** Follows the plan. */
  static Technician following(BowSetup setup, ShopPrior prior) {
    return visit -> {
      Plan plan = Planner.plan(visit, setup, prior);
      if (plan.kind() == Plan.Kind.NO_LEVER) {
        throw new GivesUp();
      }
      return plan.move();
    };
  }

  /**
   * Goes by the usual rule of thumb: while the last sheet shows the heads an inch or more apart,
   * the rest is moved 1/32 in along the way in which they are farther apart, always toward the
   * field points, or always away from them.
   *
   * @param sign 1 toward, -1 away
   */
  static Technician byThumb(int sign) {
    return visit -> {
      MmVector shift = lastShift(visit);
      return shift.length() <= MadeJob.TOLERANCE_MM
          ? Optional.empty()
          : Optional.of(thumb(shift, sign));
    };
  }

  /** The same, but turns round after a sheet that is worse than the one before it. */
  static Technician byThumbTurning() {
    return new Technician() {
      private int sign = 1;
      private double before = Double.POSITIVE_INFINITY;
      private Axis moved = Axis.SIDEWAYS;

      @Override
      public Optional<Move> next(Visit visit) {
        MmVector shift = lastShift(visit);
        if (shift.length() <= MadeJob.TOLERANCE_MM) {
          return Optional.empty();
        }
        if (shift.length() > before) {
          sign = -sign;
        }
        before = shift.length();
        return Optional.of(thumb(shift, sign));
      }
    };
  }

  private static MmVector lastShift(Visit visit) {
    var last = visit.pairs().get(visit.pairs().size() - 1);
    return Comparison.of(last.field().orElseThrow(), last.broadhead().orElseThrow()).shift();
  }

  private static Move thumb(MmVector shift, int sign) {
    boolean sideways = Math.abs(shift.dx()) >= Math.abs(shift.dy());
    double toward = sideways ? -Math.signum(shift.dx()) : Math.signum(shift.dy());
    Axis axis = sideways ? Axis.SIDEWAYS : Axis.UPRIGHT;
    return new Move(new Lever(Part.REST, axis, Step.SIXTY_FOURTH), 2 * sign * toward);
  }
}
