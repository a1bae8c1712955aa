package sheaf.samples;

import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import sheaf.core.layout.Aim;
import sheaf.core.layout.AimDot;
import sheaf.core.layout.Layout;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmVector;
import sheaf.core.reading.Head;
import sheaf.samples.scene.Arrow;

/**
 * Arrows of one kind shot at one dot.
 *
 * @param head on them
 * @param count how many
 * @param blades of each head, 0 for field points
 * @param cut cutting diameter in millimetres, 0 for field points
 * @param off from the dot to the group's centre, in millimetres
 * @param spread standard deviation in each direction, in millimetres
 */
record Volley(Head head, int count, int blades, double cut, MmVector off, double spread) {

  /** Holes of one volley are kept apart by this, in millimetres. */
  private static final double APART = 12;

  static Volley fieldPoints(int count, MmVector off, double spread) {
    return new Volley(Head.FIELD, count, 0, 0, off, spread);
  }

  static Volley broadheads(int count, int blades, double cut, MmVector off, double spread) {
    return new Volley(Head.BROADHEAD, count, blades, cut, off, spread);
  }

  /** Shoots them; the group's centre lies exactly where it is said to. */
  List<Arrow> shoot(Layout layout, RandomGenerator random) {
    AimDot dot = dot(layout);
    while (true) {
      List<MmVector> ways = new ArrayList<>();
      for (int i = 0; i < count; i++) {
        ways.add(new MmVector(random.nextGaussian() * spread, random.nextGaussian() * spread));
      }
      List<MmPoint> places = centred(ways, dot.centre().plus(off));
      if (apart(places)) {
        return places.stream().map(at -> new Arrow(at, head, blades, cut, dot.aim())).toList();
      }
    }
  }

  private AimDot dot(Layout layout) {
    Aim own = head == Head.FIELD ? Aim.FIELD : Aim.BROADHEAD;
    return layout.dots().stream()
        .filter(dot -> dot.aim() == own || dot.aim() == Aim.SHARED)
        .findFirst()
        .orElseThrow();
  }

  private static List<MmPoint> centred(List<MmVector> ways, MmPoint centre) {
    double dx = ways.stream().mapToDouble(MmVector::dx).average().orElse(0);
    double dy = ways.stream().mapToDouble(MmVector::dy).average().orElse(0);
    return ways.stream()
        .map(way -> centre.plus(new MmVector(way.dx() - dx, way.dy() - dy)))
        .toList();
  }

  private static boolean apart(List<MmPoint> places) {
    for (int i = 0; i < places.size(); i++) {
      for (int j = 0; j < i; j++) {
        if (places.get(i).distanceTo(places.get(j)) < APART) {
          return false;
        }
      }
    }
    return true;
  }
}
