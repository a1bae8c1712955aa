package sheaf.scanner.hole;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import sheaf.scanner.sheet.FlatSheet;

/**
 * Follows the slits that blades cut: narrow lines, darker or brighter than the paper on both sides,
 * that run outward from the shaft's circle and wander a little.
 */
public final class SlitTracer {

  private static final double MM = FlatSheet.PIXELS_PER_MM;

  /** Directions that are tried, around the circle. */
  private static final int ANGLES = 180;

  /** The largest cutting diameter is 55 mm; a line that runs on is a crease or print. */
  public static final double REACH = 30 * MM;

  /** Tracing begins this far outside the shaft's circle, where its torn rim is passed. */
  private static final double BEGIN = 0.7 * MM;

  private static final double STEP = 0.2 * MM;

  private static final int STEPS = (int) (REACH / STEP) + 1;

  /** A slit may turn aside this much at each step. */
  private static final double ASIDE = 0.08 * MM;

  /** Blades cut straight out from the axis; paper tears this far beside that line. */
  private static final double ASTRAY = 1.0 * MM;

  /**
   * A line is held against the paper this far on both sides, in pixels: hairlines and wide ones.
   */
  private static final double[] BESIDE = {0.9 * MM, 1.7 * MM};

  /** What a stretch without the line takes away from what speaks for it. */
  private static final double MISSING = 0.5;

  /** What a stretch that print hides takes away. */
  private static final double UNSEEN = 0.15;

  /** When this much more is missing than seen, a slit has ended, or there is none. */
  private static final double ENOUGH = MISSING * 2 * MM;

  /** Print may hide a slit for this long. */
  private static final double HIDDEN = 6 * MM;

  /** Slits from one hub are at least this far apart. */
  private static final double APART = Math.toRadians(22);

  private final List<Layer> layers;

  /**
   * A map in which slits may show.
   *
   * @param tone 0 where there is paper
   * @param known above zero where print hides them
   * @param contrast from which a line is seen
   */
  public record Layer(Grid tone, Grid known, double contrast) {

    boolean hides(double x, double y) {
      return known.at(x, y) > 0;
    }
  }

  /** Traces in every map: what is seen in one of them is there. */
  public SlitTracer(List<Layer> layers) {
    this.layers = List.copyOf(layers);
  }

  /** Lines that run at least so far beyond a circle, longest first. */
  public List<Slit> trace(Circle hole, double beyond) {
    List<Slit> all = new ArrayList<>();
    for (int a = 0; a < ANGLES; a++) {
      Slit slit = follow(hole, 2 * Math.PI * a / ANGLES);
      if (slit.length() >= hole.radius() + beyond) {
        all.add(slit);
      }
    }
    all.sort(Comparator.comparingDouble((Slit s) -> s.length() * s.strength()).reversed());
    List<Slit> apart = new ArrayList<>();
    for (Slit slit : all) {
      if (apart.stream().allMatch(other -> slit.angleTo(other) > APART)) {
        apart.add(slit);
      }
    }
    return apart;
  }

  /** A slit ends where, on the way outward, most has spoken for it. */
  private Slit follow(Circle hole, double start) {
    double angle = start;
    double hidden = 0;
    double seen = 0;
    double looked = 0;
    double support = 0;
    double most = 0;
    Slit longest = new Slit(start, hole.radius(), 0);
    Trail trail = new Trail(STEPS);
    int placesOfLongest = 0;
    for (double radius = hole.radius() + BEGIN; radius <= REACH; radius += STEP) {
      if (isHidden(hole, angle, radius)) {
        hidden += STEP;
        support -= UNSEEN * STEP;
      } else {
        Look best = best(hole, start, angle, radius);
        looked += STEP;
        if (best.contrast >= 1) {
          angle = best.angle;
          trail.add(hole.x() + radius * Math.cos(angle), hole.y() + radius * Math.sin(angle));
          seen += STEP;
          support += STEP;
        } else {
          support -= MISSING * STEP;
        }
      }
      if (support > most) {
        most = support;
        longest = new Slit(angle, radius, seen / looked);
        placesOfLongest = trail.count();
      }
      if (support < most - ENOUGH || hidden > HIDDEN) {
        break;
      }
    }
    return longest.on(trail.heading(placesOfLongest));
  }

  /** What was seen at an angle: how clearly a line stands out, 1 being just enough. */
  private record Look(double angle, double contrast) {}

  private Look best(Circle hole, double start, double angle, double radius) {
    Look best = look(hole, angle, radius);
    for (double turn : new double[] {-ASIDE / radius, ASIDE / radius}) {
      if (Math.abs(angle + turn - start) * radius <= ASTRAY) {
        Look look = look(hole, angle + turn, radius);
        if (look.contrast > best.contrast) {
          best = look;
        }
      }
    }
    return best;
  }

  private Look look(Circle hole, double angle, double radius) {
    double contrast =
        layers.stream().mapToDouble(layer -> contrast(layer, hole, angle, radius)).max().orElse(0);
    return new Look(angle, contrast);
  }

  private static double contrast(Layer layer, Circle hole, double angle, double radius) {
    double x = hole.x() + radius * Math.cos(angle);
    double y = hole.y() + radius * Math.sin(angle);
    if (layer.hides(x, y)) {
      return 0;
    }
    double line = layer.tone.at(x, y);
    double[] lightest = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY};
    double[] darkest = {Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY};
    for (double beside : BESIDE) {
      for (int side = 0; side < 2; side++) {
        double turn = (side == 0 ? -beside : beside) / radius;
        double tone = at(layer.tone, hole, angle + turn, radius);
        lightest[side] = Math.min(lightest[side], tone);
        darkest[side] = Math.max(darkest[side], tone);
      }
    }
    double darker = line - Math.max(lightest[0], lightest[1]);
    double brighter = Math.min(darkest[0], darkest[1]) - line;
    return Math.max(darker, brighter) / layer.contrast;
  }

  private boolean isHidden(Circle hole, double angle, double radius) {
    double x = hole.x() + radius * Math.cos(angle);
    double y = hole.y() + radius * Math.sin(angle);
    return layers.stream().allMatch(layer -> layer.hides(x, y));
  }

  private static double at(Grid tone, Circle hole, double angle, double radius) {
    return tone.at(hole.x() + radius * Math.cos(angle), hole.y() + radius * Math.sin(angle));
  }
}
