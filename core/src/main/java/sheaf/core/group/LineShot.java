package sheaf.core.group;

import sheaf.core.measure.Distance;

/**
 * A shot at the vertical line from one of several distances.
 *
 * @param distance shot from
 * @param rightMm how far right of the line it hit, in true millimetres; negative is left
 */
public record LineShot(Distance distance, double rightMm) {

  /** Throws when the place is not finite. */
  public LineShot {
    if (!Double.isFinite(rightMm)) {
      throw new IllegalArgumentException("a shot's place must be finite: " + rightMm);
    }
  }
}
