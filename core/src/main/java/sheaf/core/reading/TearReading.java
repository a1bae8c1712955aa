package sheaf.core.reading;

import java.util.Optional;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmVector;

/**
 * What one arrow left in a zone of a tear sheet: its point's hole, and where its tail went through.
 *
 * @param zone number of the zone, from 1
 * @param point where the shaft's axis went in, on the page as designed
 * @param pointError radius in millimetres within which the true place lies 19 times in 20
 * @param tail the middle of what the vanes cut, on the page as designed; the point itself for a
 *     bullet hole
 * @param tailError radius in millimetres within which the true place lies 19 times in 20
 * @param vanes how many vanes cut their slits: {@link #UNKNOWN_VANES}, 3 or 4
 * @param confidence 0 to 1 that this is one arrow's tear, and this way round
 */
public record TearReading(
    int zone,
    MmPoint point,
    double pointError,
    MmPoint tail,
    double tailError,
    int vanes,
    double confidence) {

  /** The slits do not tell how many vanes the arrow has. */
  public static final int UNKNOWN_VANES = 0;

  /** Throws when the zone or the number of vanes cannot be. */
  public TearReading {
    if (zone < 1) {
      throw new IllegalArgumentException("zones are numbered from 1, not " + zone);
    }
    if (vanes != UNKNOWN_VANES && vanes != 3 && vanes != 4) {
      throw new IllegalArgumentException("an arrow has 3 or 4 vanes, not " + vanes);
    }
  }

  /** Whether the paper shows the point's hole with the vanes' slits around it and no tear. */
  public boolean isBulletHole() {
    return tail.equals(point);
  }

  /**
   * From the point to the tail in true millimetres on paper, as the archer sees it: x to the right,
   * y down.
   *
   * @param scale of the print; empty where it is not known, as from a photo, which counts as true
   */
  public MmVector pointToTail(Optional<PrintScale> scale) {
    return scale.orElse(PrintScale.TRUE_SIZE).onPaper(tail.minus(point));
  }
}
