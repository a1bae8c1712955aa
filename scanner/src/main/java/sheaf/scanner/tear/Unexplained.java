package sheaf.scanner.tear;

import java.util.List;
import java.util.stream.IntStream;
import sheaf.core.page.MmPoint;
import sheaf.scanner.hole.Slit;
import sheaf.scanner.sheet.FlatSheet;

/**
 * What is torn in a zone and belongs to no part of the tear found.
 *
 * @param area of it that hangs together with the tear, in square millimetres
 * @param middle of it; the page's corner when there is none
 * @param second how much the cells speak for another tear, in a spot of its own; 0 without such
 */
record Unexplained(double area, MmPoint middle, double second) {

  static final Unexplained NOTHING = new Unexplained(0, new MmPoint(0, 0), 0);

  /** Flaps lie on the paper and small tears run out this far beside a tear, in millimetres. */
  private static final double BESIDE = 2.5;

  /** A slit gapes and wanders this far aside of its line, in millimetres. */
  private static final double BESIDE_SLIT = 1.6;

  /** So far from the tail vanes may have cut, in millimetres. */
  private static final double VANES = 16;

  /** What the spots of a zone hold besides a tear. */
  static Unexplained by(FoundTear tear, List<TornSpots.Spot> spots, double second) {
    int count = 0;
    double sumX = 0;
    double sumY = 0;
    for (TornSpots.Spot spot : spots) {
      boolean own = holdsSome(spot, tear);
      for (int i = 0; i < spot.xs().length; i++) {
        if (isBeside(tear, spot.xs()[i], spot.ys()[i])) {
          count += own ? 1 : 0;
          sumX += own ? spot.xs()[i] : 0;
          sumY += own ? spot.ys()[i] : 0;
        }
      }
    }
    MmPoint middle = count == 0 ? NOTHING.middle() : new MmPoint(sumX / count, sumY / count);
    return new Unexplained(count / (TornMap.PER_MM * TornMap.PER_MM), middle, second);
  }

  /** The spots that hold nothing of a tear. */
  static List<TornSpots.Spot> spots(FoundTear tear, List<TornSpots.Spot> spots) {
    return spots.stream().filter(spot -> !holdsSome(spot, tear)).toList();
  }

  /** Whether a tear runs through a spot. */
  private static boolean holdsSome(TornSpots.Spot spot, FoundTear tear) {
    return IntStream.range(0, spot.xs().length)
        .anyMatch(i -> !isBeside(tear, spot.xs()[i], spot.ys()[i]));
  }

  private static boolean isBeside(FoundTear tear, double x, double y) {
    return tear.capsule().distance(x, y) > tear.radius() + BESIDE && !isSlit(tear, x, y);
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
