package sheaf.scanner.hole;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import sheaf.core.reading.Head;
import sheaf.scanner.sheet.FlatSheet;

/**
 * What a hole's shape says of the head.
 *
 * <p>One line may be missed, and a neighbour's slit or a pen may run into the hole; but only blades
 * make two long lines that stand at a blade's angle to each other. So the second longest counts.
 *
 * @param slits how far the second longest of such slits runs beyond the shaft's circle, in
 *     millimetres; 0 when there are no two
 * @param longest how far the longest line of all runs beyond the circle, in millimetres
 */
record HeadShape(double slits, double longest) {

  private static final double MM = FlatSheet.PIXELS_PER_MM;

  /** Blades of a head. */
  static final int FEWEST = 2;

  static final int MOST = 4;

  /** Shortest line beyond the circle that is looked at, in pixels. */
  static final double SHORTEST = 1.5 * MM;

  /** The second longest tear of a field point that happens to lie like a blade runs this far. */
  static final double FIELD = 3.9;

  /** The shortest slits, of a 20 mm cut on a thick shaft, run about this far. */
  static final double BROADHEAD = 4.9;

  /** Hardly any tear runs farther than this: a longer line is a slit, its own or a neighbour's. */
  private static final double ONE_SLIT = 5;

  /** Longer slits say no more: all are beyond the longest tears. */
  private static final double TELLING = 9;

  /** What a third slit as long as any says for four blades, and its lack against, in mm. */
  private static final double FOUR = 1.5;

  /** Blades stand at equal angles to within this, the tracer's own error included. */
  static final double UNEVEN = Math.toRadians(18);

  /** Fits blades to the lines that run outward from a hole. */
  static HeadShape of(Circle hole, List<Slit> lines) {
    double longest =
        lines.stream().mapToDouble(line -> (line.length() - hole.radius()) / MM).max().orElse(0);
    double slits = 0;
    // Four blades are two pairs of two, so they tell nothing that two do not.
    for (int blades = FEWEST; blades < MOST; blades++) {
      for (Slit first : lines) {
        slits = Math.max(slits, beyond(first, lines, blades, hole.radius())[blades - 2]);
      }
    }
    return new HeadShape(slits, longest);
  }

  /** How far the longest slit of so many blades reaches from the axis, in pixels. */
  static double reach(Circle hole, List<Slit> lines, int blades) {
    return lines.stream()
        .map(first -> beyond(first, lines, blades, hole.radius()))
        .max(Comparator.comparingDouble(beyond -> beyond[blades - 2]))
        .map(beyond -> hole.radius() + beyond[blades - 1] * MM)
        .orElse(hole.radius());
  }

  /**
   * How much speaks for a head of so many blades, in millimetres of slits, 0 to {@link #TELLING}:
   * the mean of the two longest, a little more or less for four blades, of which two may be those
   * of a head with two.
   */
  static double telling(Circle hole, List<Slit> lines, int blades) {
    double most = 0;
    for (Slit first : lines) {
      double[] beyond = beyond(first, lines, blades, hole.radius());
      double longest = Math.min(TELLING, beyond[blades - 1]);
      double second = Math.min(TELLING, beyond[blades - 2]);
      double four = blades < 4 ? 0 : beyond[1] > FIELD ? FOUR : -FOUR;
      most = Math.max(most, (longest + second) / 2 + four);
    }
    return most;
  }

  /** How far each blade's slit runs beyond the circle, in millimetres, shortest first. */
  private static double[] beyond(Slit first, List<Slit> lines, int blades, double radius) {
    double[] beyond = new double[blades];
    for (int i = 0; i < blades; i++) {
      Slit expected = new Slit(first.angle() + 2 * Math.PI * i / blades, 0, 1);
      double longest =
          lines.stream()
              .filter(line -> line.angleTo(expected) < UNEVEN)
              .mapToDouble(Slit::length)
              .max()
              .orElse(radius);
      beyond[i] = (longest - radius) / MM;
    }
    Arrays.sort(beyond);
    return beyond;
  }

  /** The head, as far as the shape alone tells; one long line by itself may be anything. */
  Head head() {
    if (slits >= BROADHEAD) {
      return Head.BROADHEAD;
    }
    return slits <= FIELD && longest < ONE_SLIT ? Head.FIELD : Head.UNKNOWN;
  }
}
