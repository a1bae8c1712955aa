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
 * @param choice of its ends
 * @param score how much the cells speak for it
 * @param points where the point's end is
 * @param tails where the tail's end is
 * @param star of the vanes at the tail
 * @param torn how much more the cells speak for a tear than for a bullet hole
 * @param other probability of an end that is none of its own
 * @param unexplained what else is torn in the zone
 */
record FoundTear(
    Zone zone,
    EndChoice choice,
    double score,
    TwoPlaces points,
    TwoPlaces tails,
    VaneStar star,
    double torn,
    double other,
    Unexplained unexplained) {

  /** Paper is bent beside a slit so far on both sides together, in millimetres. */
  private static final double BESIDE_SLIT = 2;

  /** The same with what else is torn in its zone. */
  FoundTear with(Unexplained more) {
    return new FoundTear(zone, choice, score, points, tails, star, torn, other, more);
  }

  /** Radius of the shaft in millimetres. */
  double radius() {
    return choice.radius();
  }

  /** Where the point went in. */
  TearFit.End point() {
    return points.mean();
  }

  /** Where the tail passed. */
  TearFit.End tail() {
    return tails.mean();
  }

  /** From end to end, in millimetres. */
  double length() {
    return point().distanceTo(tail());
  }

  /** Its middle line. */
  Capsule capsule() {
    return new Capsule(point().x(), point().y(), tail().x(), tail().y(), radius());
  }

  /** Squares that cover the way and the vanes' slits. */
  List<MmRect> surroundings() {
    List<MmRect> squares = new ArrayList<>();
    MmPoint end = new MmPoint(tail().x(), tail().y());
    cover(new MmPoint(point().x(), point().y()), end, 2 * radius(), squares);
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
