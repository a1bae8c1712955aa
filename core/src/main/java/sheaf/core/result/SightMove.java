package sheaf.core.result;

import java.util.Optional;
import sheaf.core.group.Centre;
import sheaf.core.group.Claim;
import sheaf.core.group.Estimate;
import sheaf.core.group.SamePoint;
import sheaf.core.measure.Distance;

/**
 * How far a sight must be moved so that the next group's middle is where it was aimed: as far as
 * the hits are off, on the target, the way the arrows went.
 *
 * <p>A sight's housing follows the arrow: hits right, sight right; hits high, sight up (common
 * practice, no published source).
 *
 * @param right millimetres on the target, negative to the left
 * @param up millimetres on the target, negative down
 * @param tolerance largest error that does not matter, in millimetres; zero when the distance is
 *     not known
 */
public record SightMove(Estimate right, Estimate up, double tolerance) {

  /** The move that brings a group's middle onto the spot. */
  static SightMove of(Centre centre, Optional<Distance> distance) {
    return new SightMove(
        centre.right(), centre.down().times(-1), distance.map(SamePoint::toleranceAt).orElse(0.0));
  }

  /** Whether it is shown that the sight must be moved sideways. */
  public Claim sideways() {
    return right.differsFromZero(tolerance);
  }

  /** Whether it is shown that the sight must be moved up or down. */
  public Claim upright() {
    return up.differsFromZero(tolerance);
  }
}
