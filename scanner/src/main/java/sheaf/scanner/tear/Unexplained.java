package sheaf.scanner.tear;

import java.util.List;
import sheaf.core.page.MmPoint;
import sheaf.scanner.hole.Slit;
import sheaf.scanner.sheet.FlatSheet;

/**
 * What is torn in a zone and belongs to no part of the tear found.
 *
 * @param area in square millimetres
 * @param middle of it; the page's corner when there is none
 */
record Unexplained(double area, MmPoint middle) {

  static final Unexplained NOTHING = new Unexplained(0, new MmPoint(0, 0));

  /** Flaps lie on the paper and small tears run out this far beside a tear, in millimetres. */
  private static final double BESIDE = 2.5;

  /** A slit gapes and wanders this far aside of its line, in millimetres. */
  private static final double BESIDE_SLIT = 1.6;

  /** So far from the tail vanes may have cut, in millimetres. */
  private static final double VANES = 16;

  /** What the spots of a zone hold besides a tear. */
  static Unexplained by(FoundTear tear, List<TornSpots.Spot> spots) {
    int count = 0;
    double sumX = 0;
    double sumY = 0;
    Capsule capsule = tear.capsule();
    for (TornSpots.Spot spot : spots) {
      for (int i = 0; i < spot.xs().length; i++) {
        double x = spot.xs()[i];
        double y = spot.ys()[i];
        if (capsule.distance(x, y) > tear.radius() + BESIDE && !isSlit(tear, x, y)) {
          count++;
          sumX += x;
          sumY += y;
        }
      }
    }
    return count == 0
        ? NOTHING
        : new Unexplained(
            count / (TornMap.PER_MM * TornMap.PER_MM), new MmPoint(sumX / count, sumY / count));
  }

  private static boolean isSlit(FoundTear tear, double x, double y) {
    double dx = x - tear.tail().x();
    double dy = y - tear.tail().y();
    double away = Math.hypot(dx, dy);
    Slit here = new Slit(Math.atan2(dy, dx), away, 1);
    return away < VANES
        && tear.star().slits().stream()
            .anyMatch(
                slit ->
                    away < slit.length() / FlatSheet.PIXELS_PER_MM + 1
                        && slit.angleTo(here) * away < BESIDE_SLIT);
  }
}
