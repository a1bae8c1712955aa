package sheaf.scanner.tear;

import java.util.ArrayList;
import java.util.List;
import sheaf.core.layout.Zone;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;
import sheaf.core.page.MmVector;
import sheaf.scanner.hole.Slit;
import sheaf.scanner.sheet.FlatSheet;

/**
 * A tear before it is judged.
 *
 * @param zone it was found in
 * @param score how much the cells speak for it; 0 when there is nothing
 * @param radius of the shaft in millimetres
 * @param point the point's end
 * @param tail the tail's end
 * @param star of the vanes at the tail
 * @param turned quality of the star that would be at the point
 * @param rims how much more the cells speak for this way round than for the other
 * @param torn how much more the cells speak for a tear than for a bullet hole
 * @param agreed whether the same was found when looking at it the other way round first
 * @param unexplained what else is torn in the zone
 */
record FoundTear(
    Zone zone,
    double score,
    double radius,
    TearFit.End point,
    TearFit.End tail,
    VaneStar star,
    double turned,
    double rims,
    double torn,
    boolean agreed,
    Unexplained unexplained) {

  /** Paper is bent beside a slit so far on both sides together, in millimetres. */
  private static final double BESIDE_SLIT = 2;

  /** A zone with nothing in it. */
  static FoundTear nothing(Zone zone) {
    MmPoint centre = zone.rect().centre();
    TearFit.End nowhere = new TearFit.End(centre.x(), centre.y(), 0);
    VaneStar none = VaneStar.of(List.of(), 0, 0, 0);
    return new FoundTear(zone, 0, 0, nowhere, nowhere, none, 0, 0, 0, false, Unexplained.NOTHING);
  }

  /** The same with what else is torn in its zone. */
  FoundTear with(Unexplained other) {
    return new FoundTear(zone, score, radius, point, tail, star, turned, rims, torn, agreed, other);
  }

  /**
   * The same after the other way round led here too.
   *
   * @param own quality of the star at the point without the tail's slits
   */
  FoundTear agreed(double own) {
    return new FoundTear(
        zone, score, radius, point, tail, star, own, rims, torn, true, unexplained);
  }

  /** From end to end, in millimetres. */
  double length() {
    return Math.hypot(tail.x() - point.x(), tail.y() - point.y());
  }

  /** Its middle line. */
  Capsule capsule() {
    return new Capsule(point.x(), point.y(), tail.x(), tail.y(), radius);
  }

  /** Squares that cover the way and the vanes' slits. */
  List<MmRect> surroundings() {
    List<MmRect> squares = new ArrayList<>();
    MmPoint end = new MmPoint(tail.x(), tail.y());
    cover(new MmPoint(point.x(), point.y()), end, 2 * radius, squares);
    for (Slit slit : star.slits()) {
      double length = slit.length() / FlatSheet.PIXELS_PER_MM;
      MmVector way = new MmVector(length * Math.cos(slit.angle()), length * Math.sin(slit.angle()));
      cover(end, end.plus(way), BESIDE_SLIT, squares);
    }
    return squares;
  }

  private static void cover(MmPoint from, MmPoint to, double side, List<MmRect> squares) {
    MmVector way = to.minus(from);
    int steps = (int) Math.ceil(way.length() / side);
    for (int i = 0; i <= steps; i++) {
      squares.add(MmRect.square(from.plus(way.times(i / (double) Math.max(1, steps))), side));
    }
  }
}
