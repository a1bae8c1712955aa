package sheaf.core.group;

import sheaf.core.measure.Distance;
import sheaf.core.measure.Unit;

/**
 * How close two groups must be to count as hitting the same point.
 *
 * <p>One inch at twenty yards, and the same angle at any other distance. Common practice, no
 * published source.
 */
public final class SamePoint {

  private static final Distance REFERENCE = new Distance(20, Unit.YARD);
  private static final double AT_REFERENCE_MM = Unit.INCH.convert(1, Unit.MILLIMETRE);

  private SamePoint() {}

  /** The largest shift that counts as the same point at a distance, in millimetres. */
  public static double toleranceAt(Distance distance) {
    return AT_REFERENCE_MM * (distance.millimetres() / REFERENCE.millimetres());
  }
}
