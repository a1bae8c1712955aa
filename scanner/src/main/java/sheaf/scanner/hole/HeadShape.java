package sheaf.scanner.hole;

import java.util.List;
import sheaf.core.reading.Head;
import sheaf.scanner.sheet.FlatSheet;

/**
 * What a hole's shape says of the head.
 *
 * @param blades the number of blades that the lines running outward fit best, 2 to 4
 * @param slits how far such blades' slits run beyond the shaft's circle on average, in millimetres;
 *     missing ones count as nothing
 * @param reach length of the longest of them from the axis, in pixels
 */
record HeadShape(int blades, double slits, double reach) {

  private static final double MM = FlatSheet.PIXELS_PER_MM;

  /** Shortest line beyond the circle that is looked at, in pixels. */
  static final double SHORTEST = 1.5 * MM;

  /** Tears of a field point that happen to lie like blades run this far on average, at most. */
  static final double FIELD = 3;

  /** The shortest slits, of a 20 mm cut on a thick shaft, run about this far. */
  static final double BROADHEAD = 4.5;

  /** Blades stand at equal angles to within this, the tracer's own error included. */
  private static final double UNEVEN = Math.toRadians(25);

  /** More blades are believed when their slits run nearly as far on average as fewer would. */
  private static final double NEARLY = 0.75;

  /** Fits blades to the lines that run outward from a hole. */
  static HeadShape of(Circle hole, List<Slit> lines) {
    HeadShape best = new HeadShape(2, 0, 0);
    for (int blades = 2; blades <= 4; blades++) {
      for (Slit first : lines) {
        HeadShape shape = from(first, lines, blades, hole.radius());
        boolean more = shape.blades > best.blades;
        if (shape.slits > best.slits * (more ? NEARLY : 1)) {
          best = shape;
        }
      }
    }
    return best;
  }

  private static HeadShape from(Slit first, List<Slit> lines, int blades, double radius) {
    double sum = 0;
    double reach = 0;
    for (int i = 0; i < blades; i++) {
      Slit expected = new Slit(first.angle() + 2 * Math.PI * i / blades, 0, 1);
      double longest =
          lines.stream()
              .filter(line -> line.angleTo(expected) < UNEVEN)
              .mapToDouble(Slit::length)
              .max()
              .orElse(radius);
      sum += (longest - radius) / MM;
      reach = Math.max(reach, longest);
    }
    return new HeadShape(blades, sum / blades, reach);
  }

  /** The head, as far as the shape alone tells. */
  Head head() {
    if (slits <= FIELD) {
      return Head.FIELD;
    }
    return slits >= BROADHEAD ? Head.BROADHEAD : Head.UNKNOWN;
  }
}
