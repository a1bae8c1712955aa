package sheaf.scanner.hole;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import sheaf.scanner.sheet.FlatSheet;

/**
 * Follows the slits that blades cut: narrow lines, darker or brighter than the paper on both sides,
 * that run outward from the shaft's circle and wander a little.
 */
final class SlitTracer {

  private static final double MM = FlatSheet.PIXELS_PER_MM;

  /** Directions that are tried, around the circle. */
  private static final int ANGLES = 180;

  /** The largest cutting diameter is 55 mm; a line that runs on is a crease or print. */
  static final double REACH = 30 * MM;

  /** Tracing begins this far outside the shaft's circle, where its torn rim is passed. */
  private static final double BEGIN = 0.7 * MM;

  private static final double STEP = 0.2 * MM;

  /** A slit may turn aside this much at each step. */
  private static final double ASIDE = 0.08 * MM;

  /** Half the width of the widest slit, and the paper compared with on each side of it. */
  private static final double WIDE = 1.7 * MM;

  /** A slit may be lost for this long: closed, or worn off by a flap. */
  private static final double LOST = 1.4 * MM;

  /** Print may hide a slit for this long. */
  private static final double HIDDEN = 6 * MM;

  /** Slits from one hub are at least this far apart. */
  private static final double APART = Math.toRadians(22);

  private final Grid tone;
  private final Grid known;
  private final double contrast;

  /**
   * Prepares tracing.
   *
   * @param tone darkness against paper
   * @param known above zero where print is known
   * @param contrast from which a line is seen, as a share of the paper's tone
   */
  SlitTracer(Grid tone, Grid known, double contrast) {
    this.tone = tone;
    this.known = known;
    this.contrast = contrast;
  }

  /** Lines that run at least so far beyond a circle, longest first. */
  List<Slit> trace(Circle hole, double beyond) {
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

  private Slit follow(Circle hole, double start) {
    double angle = start;
    double end = hole.radius();
    double endAngle = start;
    double begin = hole.radius() + BEGIN;
    double lost = 0;
    double hidden = 0;
    double seen = 0;
    double looked = 0;
    for (double radius = begin; radius <= REACH; radius += STEP) {
      if (isHidden(hole, angle, radius)) {
        hidden += STEP;
        if (hidden > HIDDEN) {
          break;
        }
        continue;
      }
      Look best = best(hole, angle, radius);
      looked += STEP;
      if (best.contrast >= contrast) {
        angle = best.angle;
        end = radius;
        endAngle = angle;
        seen += STEP;
        lost = 0;
      } else {
        lost += STEP;
        if (lost > LOST || lost > seen + STEP) {
          break;
        }
      }
    }
    double way = Math.max(STEP, looked - lost);
    return new Slit(endAngle, end, Math.min(1, seen / way));
  }

  /** What was seen at an angle: how much a place differs from the paper on both sides. */
  private record Look(double angle, double contrast) {}

  private Look best(Circle hole, double angle, double radius) {
    Look best = look(hole, angle, radius);
    for (double turn : new double[] {-ASIDE / radius, ASIDE / radius}) {
      Look look = look(hole, angle + turn, radius);
      if (look.contrast > best.contrast) {
        best = look;
      }
    }
    return best;
  }

  private Look look(Circle hole, double angle, double radius) {
    double line = at(hole, angle, radius);
    double left = at(hole, angle - WIDE / radius, radius);
    double right = at(hole, angle + WIDE / radius, radius);
    double darker = line - Math.max(left, right);
    double brighter = Math.min(left, right) - line;
    return new Look(angle, Math.max(darker, brighter));
  }

  private boolean isHidden(Circle hole, double angle, double radius) {
    return known.at(hole.x() + radius * Math.cos(angle), hole.y() + radius * Math.sin(angle)) > 0;
  }

  private double at(Circle hole, double angle, double radius) {
    return tone.at(hole.x() + radius * Math.cos(angle), hole.y() + radius * Math.sin(angle));
  }
}
