package sheaf.scanner.tear;

import java.util.ArrayList;
import java.util.List;
import sheaf.scanner.hole.Slit;
import sheaf.scanner.sheet.FlatSheet;

/**
 * The slits of an arrow's vanes around a centre, at even angles.
 *
 * @param vanes 3 or 4, whichever fits better
 * @param quality how far its slits run beyond the shaft, in millimetres, together and as far as
 *     they were surely seen, less what is missing
 * @param other the same for the other number of vanes
 * @param slits those that belong to it
 */
record VaneStar(int vanes, double quality, double other, List<Slit> slits) {

  private static final double MM = FlatSheet.PIXELS_PER_MM;

  /** Vanes stand at even angles to within this, the tracer's own error included. */
  private static final double UNEVEN = Math.toRadians(17);

  /** A vane's slit ends at most so far from the axis, in millimetres; what runs on is no slit. */
  private static final double LONGEST = 17;

  /** More of a slit than this says no more, in millimetres beyond the shaft. */
  private static final double ENOUGH = 8;

  /** A point's tears run out about so far beyond the shaft, a vane's slit at least so far. */
  private static final double TEAR = 2.6;

  private static final double SLIT = 4.2;

  /** A slit that should be there and is not takes away so much, in millimetres. */
  private static final double MISSING = 4;

  /** A number of vanes that fits so much better than the other says no more, in millimetres. */
  private static final double MOST_CLEAR = 12;

  /** Toward the other end the tear itself hides slits: within this angle. */
  private static final double BESIDE_WAY = Math.toRadians(30);

  /** Below this length, in radii, a tear hides none of the slits. */
  private static final double SHORT = 1.2;

  /**
   * The best star of the lines that run outward from an end.
   *
   * @param way angle toward the tear's other end, in radians
   * @param length of the tear in millimetres
   * @param radius of the shaft in millimetres
   */
  static VaneStar of(List<Slit> lines, double way, double length, double radius) {
    Slit toOther = new Slit(way, 0, 1);
    boolean hides = length > SHORT * radius;
    VaneStar[] best = {
      new VaneStar(3, -3 * MISSING, 0, List.of()), new VaneStar(4, -4 * MISSING, 0, List.of())
    };
    for (int vanes = 3; vanes <= 4; vanes++) {
      for (Slit first : lines) {
        VaneStar star = around(first, vanes, lines, hides ? toOther : null, radius);
        if (star.quality > best[vanes - 3].quality) {
          best[vanes - 3] = star;
        }
      }
    }
    VaneStar better = best[0].quality >= best[1].quality ? best[0] : best[1];
    double other = better == best[0] ? best[1].quality : best[0].quality;
    return new VaneStar(better.vanes, better.quality, other, better.slits);
  }

  /** How much more this star's slits speak for three vanes than for four. */
  double forThree() {
    double clearer = Math.min(MOST_CLEAR, quality - other);
    return vanes == 3 ? clearer : -clearer;
  }

  private static VaneStar around(
      Slit first, int vanes, List<Slit> lines, Slit toOther, double radius) {
    double quality = 0;
    List<Slit> found = new ArrayList<>();
    for (int i = 0; i < vanes; i++) {
      Slit expected = new Slit(first.angle() + 2 * Math.PI * i / vanes, 0, 1);
      Slit longest = null;
      for (Slit line : lines) {
        boolean fits = line.angleTo(expected) < UNEVEN && line.length() < LONGEST * MM;
        if (fits && (longest == null || line.length() > longest.length())) {
          longest = line;
        }
      }
      if (longest != null) {
        found.add(longest);
        quality += longest.strength() * worth(longest.length() / MM - radius);
      } else if (toOther == null || expected.angleTo(toOther) > BESIDE_WAY) {
        quality -= MISSING;
      }
    }
    return new VaneStar(vanes, quality, 0, found);
  }

  /** What a line says that runs so far beyond the shaft: a short one may be a point's tear. */
  private static double worth(double beyond) {
    double share = Math.max(0, Math.min(1, (beyond - TEAR) / (SLIT - TEAR)));
    return share * Math.min(ENOUGH, beyond);
  }
}
