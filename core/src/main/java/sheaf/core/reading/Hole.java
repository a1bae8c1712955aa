package sheaf.core.reading;

import java.util.OptionalInt;
import sheaf.core.layout.Aim;
import sheaf.core.page.MmPoint;

/**
 * One arrow's hole.
 *
 * @param axis where the shaft's axis went through, on the page as designed
 * @param axisError radius in millimetres within which the true axis lies 19 times in 20
 * @param diameter of the shaft in millimetres, as estimated over the sheet
 * @param head what the hole's shape, or failing that its dot, says of the head; where heads are not
 *     compared, what the sheet says
 * @param blades number of slits: 0 for a field point, 2 to 4 for a broadhead
 * @param cut cutting diameter in millimetres: twice the longest slit from the axis; 0 without slits
 * @param aim the dot it belongs to
 * @param zone number of the zone that it was shot at; empty on a sheet without zones
 * @param confidence 0 to 1 that this is a hole, with this head
 */
public record Hole(
    MmPoint axis,
    double axisError,
    double diameter,
    Head head,
    int blades,
    double cut,
    Aim aim,
    OptionalInt zone,
    double confidence) {

  /** A hole on a sheet without zones. */
  public Hole(
      MmPoint axis,
      double axisError,
      double diameter,
      Head head,
      int blades,
      double cut,
      Aim aim,
      double confidence) {
    this(axis, axisError, diameter, head, blades, cut, aim, OptionalInt.empty(), confidence);
  }

  /** The same hole, which may besides have been moved so far, in millimetres, 19 times in 20. */
  public Hole movedWithin(double millimetres) {
    return new Hole(
        axis,
        Math.hypot(axisError, millimetres),
        diameter,
        head,
        blades,
        cut,
        aim,
        zone,
        confidence);
  }
}
