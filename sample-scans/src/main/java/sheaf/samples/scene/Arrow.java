package sheaf.samples.scene;

import java.util.OptionalInt;
import sheaf.core.layout.Aim;
import sheaf.core.page.MmPoint;
import sheaf.core.reading.Head;

/**
 * An arrow to shoot at a sheet.
 *
 * @param axis where, on the page as designed
 * @param head on it
 * @param blades of the head, 0 for a field point
 * @param cut cutting diameter in true millimetres, 0 for a field point
 * @param aim the dot meant
 * @param zone the number of the zone meant; empty on a sheet without zones
 */
public record Arrow(MmPoint axis, Head head, int blades, double cut, Aim aim, OptionalInt zone) {

  /** At a sheet without zones. */
  public Arrow(MmPoint axis, Head head, int blades, double cut, Aim aim) {
    this(axis, head, blades, cut, aim, OptionalInt.empty());
  }
}
