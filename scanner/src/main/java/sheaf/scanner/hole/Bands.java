package sheaf.scanner.hole;

import java.util.HashSet;
import java.util.Set;
import sheaf.core.layout.Layout;
import sheaf.core.layout.Zone;
import sheaf.core.page.MmPoint;

/** Which holes may have been shot at another zone of the sheet than the one they lie in. */
final class Bands {

  /**
   * An arrow that hit this near to the next zone, in millimetres, may have been shot at it: an
   * eighth of a band's height on small paper.
   */
  private static final double NEAR_BORDER = 4;

  private final Layout layout;
  private final ArrowsShot shot;
  private final Set<Zone> complete = new HashSet<>();

  Bands(Layout layout, ArrowsShot shot) {
    this.layout = layout;
    this.shot = shot;
  }

  /** Tells how many holes lie in a zone; when as many arrows are ticked, they are its own. */
  void found(Zone zone, int holes) {
    if (shot.at(zone).orElse(-1) == holes) {
      complete.add(zone);
    }
  }

  /** Whether a hole may belong to the next zone; never on a sheet without zones. */
  boolean isUnsure(MmPoint axis) {
    boolean nearNext =
        layout.zones().stream().filter(zone -> zone.rect().distanceTo(axis) < NEAR_BORDER).count()
            > 1;
    return nearNext && !complete.contains(layout.zoneAt(axis).orElseThrow());
  }
}
