package sheaf.scanner.tear;

import java.util.ArrayList;
import java.util.List;
import org.opencv.core.Mat;
import sheaf.core.layout.Zone;
import sheaf.scanner.hole.Circle;
import sheaf.scanner.hole.Grid;
import sheaf.scanner.hole.Seeds;
import sheaf.scanner.hole.Slit;
import sheaf.scanner.hole.SlitTracer;
import sheaf.scanner.hole.Surface;
import sheaf.scanner.sheet.FlatSheet;

/** Tells a tear's tail from its point: vanes cut slits around the tail, a point does not. */
final class EndFinder {

  private static final double MM = FlatSheet.PIXELS_PER_MM;

  /** The shortest line beyond the shaft that may be a vane's, in millimetres. */
  private static final double SHORTEST = 2.2;

  /** A slit in front of something dark is darker than the paper beside it by this. */
  private static final double DARK_SLIT = 0.08;

  /** A slit in front of white differs from the paper beside it by this. */
  private static final double FAINT_SLIT = 0.03;

  /** A slit in front of the backing is more of its colour than what lies beside it by this. */
  private static final double COLOURED_SLIT = 0.15;

  /** A tail is moved to where its slits meet this often: slits are sought anew from there. */
  private static final int ROUNDS = 3;

  /** What a slit tears open and bends on each side of its line, in millimetres. */
  private static final double HALF_SLIT = 1.1;

  private final TornMap map;
  private final TearFit fit;
  private final Surface surface;
  private final Seeds.Kind kind;

  EndFinder(TornMap map, Surface surface, Seeds.Kind kind) {
    this.map = map;
    this.fit = new TearFit(map, kind);
    this.surface = surface;
    this.kind = kind;
  }

  /** Looks at a tear both ways round and takes the better. */
  FoundTear find(Zone zone, Capsule tear) {
    FoundTear one = refined(zone, tear);
    FoundTear other = refined(zone, fit.settled(tear.turned()));
    return worth(one) >= worth(other) ? one.comparedWith(other) : other.comparedWith(one);
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
      shaft = new TearFit(without(map, best, star.slits()), kind);
      best = shaft.settled(best);
      tail = lines(best).meeting(shaft.tail(best), star.slits());
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
    Circle hub = new Circle(tear.tailX() * MM - 0.5, tear.tailY() * MM - 0.5, tear.radius() * MM);
    List<Slit> slits = new SlitTracer(layers(hub)).trace(hub, SHORTEST * MM);
    double way = Math.atan2(tear.pointY() - tear.tailY(), tear.pointX() - tear.tailX());
    return VaneStar.of(slits, way, tear.length(), tear.radius());
  }

  private List<SlitTracer.Layer> layers(Circle hub) {
    List<SlitTracer.Layer> layers = new ArrayList<>();
    layers.add(
        new SlitTracer.Layer(
            grid(surface.darkness(), hub), grid(surface.hidden(), hub), toneContrast()));
    if (kind == Seeds.Kind.COLOURED) {
      Grid backing = grid(surface.backing().orElseThrow(), hub);
      layers.add(new SlitTracer.Layer(backing, Grid.zero(), COLOURED_SLIT));
    }
    return layers;
  }

  private double toneContrast() {
    return kind == Seeds.Kind.FAINT ? Math.max(FAINT_SLIT, 3 * surface.noise()) : DARK_SLIT;
  }

  private SlitLines lines(Capsule tear) {
    Circle hub = new Circle(tear.tailX() * MM - 0.5, tear.tailY() * MM - 0.5, tear.radius() * MM);
    return kind == Seeds.Kind.COLOURED
        ? new SlitLines(grid(surface.backing().orElseThrow(), hub), COLOURED_SLIT)
        : new SlitLines(grid(surface.darkness(), hub), toneContrast());
  }

  private static Grid grid(Mat map, Circle hub) {
    return Grid.around(map, hub.x(), hub.y(), SlitTracer.REACH + 2 * MM);
  }
}
