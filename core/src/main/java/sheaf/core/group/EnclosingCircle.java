package sheaf.core.group;

import java.util.List;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmVector;

/**
 * The smallest circle that holds the middle of every shot of a group: the least ring that would
 * have scored them all.
 *
 * <p>Found shot by shot: a shot outside the circle so far lies on the edge of the next one. Source:
 * E. Welzl, Smallest enclosing disks, 1991, in its well-known form without recursion. The circle is
 * unique; its radius lies between a half and 1/√3 of the extreme spread (H. Jung, 1901).
 *
 * @param centre in millimetres on the target
 * @param radius in millimetres, zero or more; zero for one shot
 */
public record EnclosingCircle(MmPoint centre, double radius) {

  /** A shot so little outside counts as on the edge: rounding must not start a new circle. */
  private static final double ROUNDING = 1 + 1e-12;

  /** The smallest circle around a group. */
  public static EnclosingCircle of(Group group) {
    List<MmPoint> shots = group.shots();
    EnclosingCircle circle = new EnclosingCircle(shots.get(0), 0);
    for (int i = 1; i < shots.size(); i++) {
      if (!circle.holds(shots.get(i))) {
        circle = through(shots.get(i), shots.subList(0, i));
      }
    }
    return circle;
  }

  /** The smallest circle that holds some shots and has another on its edge. */
  private static EnclosingCircle through(MmPoint edge, List<MmPoint> shots) {
    EnclosingCircle circle = new EnclosingCircle(edge, 0);
    for (int i = 0; i < shots.size(); i++) {
      if (!circle.holds(shots.get(i))) {
        circle = through(edge, shots.get(i), shots.subList(0, i));
      }
    }
    return circle;
  }

  /** The smallest circle that holds some shots and has two others on its edge. */
  private static EnclosingCircle through(MmPoint one, MmPoint two, List<MmPoint> shots) {
    EnclosingCircle circle = across(one, two);
    for (MmPoint shot : shots) {
      if (!circle.holds(shot)) {
        circle = around(one, two, shot);
      }
    }
    return circle;
  }

  private static EnclosingCircle across(MmPoint one, MmPoint two) {
    return new EnclosingCircle(one.plus(two.minus(one).times(0.5)), one.distanceTo(two) / 2);
  }

  /** Through three shots; three on a line cannot come here, as the outer two hold the third. */
  private static EnclosingCircle around(MmPoint one, MmPoint two, MmPoint three) {
    MmVector a = two.minus(one);
    MmVector b = three.minus(one);
    double area = 2 * (a.dx() * b.dy() - a.dy() * b.dx());
    double aa = a.dx() * a.dx() + a.dy() * a.dy();
    double bb = b.dx() * b.dx() + b.dy() * b.dy();
    MmVector toCentre =
        new MmVector((b.dy() * aa - a.dy() * bb) / area, (a.dx() * bb - b.dx() * aa) / area);
    return new EnclosingCircle(one.plus(toCentre), toCentre.length());
  }

  private boolean holds(MmPoint shot) {
    return shot.distanceTo(centre) <= radius * ROUNDING;
  }
}
