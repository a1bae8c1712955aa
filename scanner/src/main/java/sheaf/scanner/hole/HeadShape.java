package sheaf.scanner.hole;

import java.util.List;
import sheaf.core.reading.Head;
import sheaf.scanner.sheet.FlatSheet;

/**
 * What a hole's shape says of the head.
 *
 * @param head field point, broadhead or unknown
 * @param blades slits found, 0 for a field point
 * @param reach length of the longest slit from the axis, in pixels
 */
record HeadShape(Head head, int blades, double reach) {

  private static final double MM = FlatSheet.PIXELS_PER_MM;

  /**
   * Tears of a field point end within this many shaft radii of its circle, nearly always; blades
   * reach farther: the smallest cutting diameter, 20 mm, is more than twice any shaft's.
   */
  private static final double TEAR = 1.35;

  /** Shortest way beyond the circle that is taken for a slit, in pixels. */
  static final double SHORTEST = 3.2 * MM;

  /** Blades stand at equal angles to within this, with the trackers' own error. */
  private static final double UNEVEN = Math.toRadians(28);

  /** Slits of one head are at least this share of the longest. */
  private static final double SIMILAR = 0.5;

  /** Judges the lines that run outward from a hole, longest first. */
  static HeadShape of(Circle hole, List<Slit> lines) {
    double tear = hole.radius() * (1 + TEAR);
    List<Slit> slits = lines.stream().filter(line -> line.length() > tear).toList();
    if (slits.isEmpty()) {
      return new HeadShape(Head.FIELD, 0, 0);
    }
    double longest = slits.stream().mapToDouble(Slit::length).max().orElseThrow();
    List<Slit> alike = lines.stream().filter(line -> line.length() > SIMILAR * longest).toList();
    for (int blades = 4; blades >= 2; blades--) {
      if (regular(alike, blades)) {
        return new HeadShape(Head.BROADHEAD, blades, longest);
      }
    }
    return new HeadShape(Head.UNKNOWN, 0, longest);
  }

  /** Whether some slit has others at every equal part of the circle from it. */
  private static boolean regular(List<Slit> slits, int blades) {
    return slits.size() >= blades
        && slits.stream().anyMatch(first -> regularFrom(first, slits, blades));
  }

  private static boolean regularFrom(Slit first, List<Slit> slits, int blades) {
    for (int i = 1; i < blades; i++) {
      Slit expected = new Slit(first.angle() + 2 * Math.PI * i / blades, 0, 1);
      if (slits.stream().noneMatch(slit -> slit.angleTo(expected) < UNEVEN)) {
        return false;
      }
    }
    return true;
  }
}
