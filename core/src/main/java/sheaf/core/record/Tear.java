package sheaf.core.record;

import sheaf.core.page.MmVector;

/**
 * The hole of an arrow that did not fly straight through paper.
 *
 * @param sheet the number of the sheet it was shot at
 * @param zone on that sheet, 1 or more; within a sheet the zones are shot in order
 * @param pointToTail from where the point went through to where the nock end did, in true
 *     millimetres as the archer sees it: x to the right, y down
 */
public record Tear(int sheet, int zone, MmVector pointToTail) {

  /** Below this many millimetres no tear can be told from the point's own hole. */
  public static final double NOTHING_MM = 1;

  /** How long a tear is, as a shop judges it. */
  public enum Size {
    /** Too short to tell a way. */
    BULLET_HOLE,
    /** No longer than what the shop leaves as it is. */
    SMALL,
    /** Longer. */
    LARGE
  }

  /**
   * Its size class.
   *
   * @param smallMm up to this many millimetres the shop leaves a tear as it is
   */
  public Size size(double smallMm) {
    if (isBulletHole()) {
      return Size.BULLET_HOLE;
    }
    return pointToTail.length() <= smallMm ? Size.SMALL : Size.LARGE;
  }

  private static final int HOURS = 12;

  /** Whether the tear is too short to tell a way. */
  public boolean isBulletHole() {
    return pointToTail.length() < NOTHING_MM;
  }

  /** Where the tail went on a clock's face, 1 to 12, as the archer sees it; 12 is high. */
  public int clock() {
    double turn = Math.atan2(pointToTail.dx(), -pointToTail.dy()) / (2 * Math.PI);
    int hour = (int) Math.floorMod(Math.round(turn * HOURS), (long) HOURS);
    return hour == 0 ? HOURS : hour;
  }
}
