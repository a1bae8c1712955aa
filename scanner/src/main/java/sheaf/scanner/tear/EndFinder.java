package sheaf.scanner.tear;

import java.util.List;
import sheaf.core.layout.Zone;
import sheaf.scanner.hole.Circle;
import sheaf.scanner.hole.Slit;
import sheaf.scanner.sheet.FlatSheet;

/** Tells a tear's tail from its point: vanes cut slits around the tail, a point does not. */
final class EndFinder {

  private static final double MM = FlatSheet.PIXELS_PER_MM;

  /** The shortest line beyond the shaft that may be a vane's, in millimetres. */
  private static final double SHORTEST = 2.2;

  /** Ends nearer than this, in millimetres, are one. */
  private static final double SAME = 1;

  /** Lines whose ends lie nearer than this, in millimetres, are one slit. */
  private static final double ONE_SLIT = 2;

  /** A tail is moved to where its slits meet this often: slits are sought anew from there. */
  private static final int ROUNDS = 3;

  /** What a slit tears open and bends on each side of its line, in millimetres. */
  private static final double HALF_SLIT = 1.1;

  private final TornMap map;
  private final TearFit fit;
  private final TearView view;

  /** Looks at a tear's surroundings. */
  EndFinder(TornMap map, TearView view) {
    this.map = map;
    this.fit = new TearFit(map, view.kind());
    this.view = view;
  }

  /** Looks at a tear both ways round and takes the better. */
  FoundTear find(Zone zone, Capsule tear) {
    FoundTear one = refined(zone, tear);
    FoundTear other = refined(zone, fit.settled(tear.turned()));
    FoundTear better = worth(one) >= worth(other) ? one : other;
    boolean same =
        one.point().distanceTo(other.point()) < SAME && one.tail().distanceTo(other.tail()) < SAME;
    return same ? better.agreed(ownStar(better)) : better;
  }

  /** Quality of the star at the point without the slits that belong to the tail. */
  private double ownStar(FoundTear found) {
    Capsule turned = found.capsule().turned();
    List<Slit> own =
        lines(hub(turned)).stream()
            .filter(line -> found.star().slits().stream().noneMatch(s -> isOne(found, line, s)))
            .toList();
    return star(turned, own).quality();
  }

  /** Whether a line seen from the point ends where a slit of the tail does. */
  private static boolean isOne(FoundTear found, Slit line, Slit slit) {
    double right =
        found.point().x()
            + line.length() / MM * Math.cos(line.angle())
            - found.tail().x()
            - slit.length() / MM * Math.cos(slit.angle());
    double down =
        found.point().y()
            + line.length() / MM * Math.sin(line.angle())
            - found.tail().y()
            - slit.length() / MM * Math.sin(slit.angle());
    return Math.hypot(right, down) < ONE_SLIT;
  }

  private static double worth(FoundTear found) {
    return found.star().quality() + TearFit.SHARE * found.score();
  }

  private FoundTear refined(Zone zone, Capsule tear) {
    Capsule best = tear;
    VaneStar star = star(best);
    TearFit shaft = fit;
    TearFit.End tail = fit.tail(best);
    for (int round = 0; round < ROUNDS; round++) {
      shaft = new TearFit(without(map, best, star.slits()), view.kind());
      best = shaft.settled(best);
      tail = view.lines().meeting(shaft.tail(best), star.slits());
      best = shaft.pointSettled(at(best, tail));
      star = star(best);
    }
    Capsule straight = new Capsule(tail.x(), tail.y(), tail.x(), tail.y(), best.radius());
    return new FoundTear(
        zone,
        fit.score(best),
        best.radius(),
        shaft.point(best),
        tail,
        star,
        star(best.turned()).quality(),
        TearFit.SHARE * (fit.score(best) - fit.score(best.turned())),
        TearFit.SHARE * (shaft.score(best) - shaft.score(straight)),
        false,
        Unexplained.NOTHING);
  }

  /** The map without the vanes' slits: what is left is the shaft's. */
  static TornMap without(TornMap map, Capsule tear, List<Slit> slits) {
    TornMap left = map;
    for (Slit slit : slits) {
      double cos = Math.cos(slit.angle());
      double sin = Math.sin(slit.angle());
      double from = tear.radius() + HALF_SLIT;
      double to = Math.max(from, slit.length() / MM);
      left =
          left.without(
              tear.tailX() + from * cos,
              tear.tailY() + from * sin,
              tear.tailX() + to * cos,
              tear.tailY() + to * sin,
              HALF_SLIT);
    }
    return left;
  }

  private static Capsule at(Capsule tear, TearFit.End tail) {
    return new Capsule(tear.pointX(), tear.pointY(), tail.x(), tail.y(), tear.radius());
  }

  private VaneStar star(Capsule tear) {
    return star(tear, lines(hub(tear)));
  }

  private static VaneStar star(Capsule tear, List<Slit> lines) {
    double way = Math.atan2(tear.pointY() - tear.tailY(), tear.pointX() - tear.tailX());
    return VaneStar.of(lines, way, tear.length(), tear.radius());
  }

  /** The lines that run outward from a hub. */
  private List<Slit> lines(Circle hub) {
    return view.slits().tracer().trace(hub, SHORTEST * MM);
  }

  private static Circle hub(Capsule tear) {
    return new Circle(tear.tailX() * MM - 0.5, tear.tailY() * MM - 0.5, tear.radius() * MM);
  }
}
