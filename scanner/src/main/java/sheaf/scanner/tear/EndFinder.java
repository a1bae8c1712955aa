package sheaf.scanner.tear;

import java.util.List;
import java.util.Optional;
import sheaf.core.layout.Zone;
import sheaf.scanner.hole.Circle;
import sheaf.scanner.hole.Slit;
import sheaf.scanner.sheet.FlatSheet;

/** Looks for the slits of vanes around a tear's tail, and places both ends by what is torn. */
final class EndFinder {

  private static final double MM = FlatSheet.PIXELS_PER_MM;

  /** The shortest line beyond the shaft that may be a vane's, in millimetres. */
  private static final double SHORTEST = 2.2;

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

  /**
   * Places a tear's ends once more by the cells and the slits, and takes the mean of that and of
   * what the net said.
   *
   * @param choice what the net said
   * @param other the likeliest end besides
   */
  FoundTear find(Zone zone, EndChoice choice, Optional<EndMap.End> other) {
    Capsule best = choice.capsule();
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
    TearFit.End point = shaft.point(best);
    Capsule straight = new Capsule(tail.x(), tail.y(), tail.x(), tail.y(), best.radius());
    return new FoundTear(
        zone,
        choice,
        fit.score(choice.capsule()),
        new TwoPlaces(choice.point(), point),
        new TwoPlaces(choice.tail(), tail),
        star(choice.capsule()),
        TearFit.SHARE * (shaft.score(best) - shaft.score(straight)),
        other.map(EndMap.End::probability).orElse(0.0),
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

  VaneStar star(Capsule tear) {
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
