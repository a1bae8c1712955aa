package sheaf.scanner.hole;

import java.util.function.DoubleUnaryOperator;

/**
 * What lies at each distance from a centre, averaged over all directions.
 *
 * <p>A point tears paper: between the tears, flaps fold along the shaft's circle. At a tear, the
 * opening reaches the circle and a little beyond; where a flap is folded away, the opening's edge
 * is the circle; where it closes the hole again, the fold shows as a faint line or a change of
 * shading on the circle. So around the shaft's axis all that gathers at one distance, and around
 * any other centre it is smeared out.
 */
final class RimProfile {

  /** What is counted at each distance. */
  enum Sign {
    /** Here the opening ends, as seen from the centre. */
    END,
    /** Here it is open. */
    OPEN,
    /** Paper changes its tone here. */
    EDGE,
    /** The same, when it is but a little. */
    FAINT_EDGE,
    /** Paper gets darker outward here. */
    DARKENING,
    /** Paper differs from undisturbed paper here. */
    SHADE,
    /** The same, when it is but a little. */
    FAINT_SHADE,
    /** Paper is darker than undisturbed paper here. */
    DARK,
    /** Paper is brighter than undisturbed paper here. */
    BRIGHT,
    /** Paper is seen here: neither open nor hidden. */
    PAPER
  }

  /** Distances from here to {@link #LAST} pixels are looked at. */
  static final int FIRST = 3;

  static final int LAST = 72;

  /** How far beyond the last distance the closeup must reach. */
  static final int MARGIN = 3;

  private static final int DIRECTIONS = Signs.RING;

  /** Half the distance over which a change of tone is measured, in pixels. */
  private static final int STEP = 2;

  private static final int SIGNS = Sign.values().length;

  private static final int RINGS = LAST + MARGIN;

  private static final int[] RIGHT = steps(Math::cos);

  private static final int[] DOWN = steps(Math::sin);

  private final float[] shares = new float[SIGNS * (LAST + 1)];

  private RimProfile(Closeup closeup, int centre) {
    look(closeup.pixels(), closeup.rings(), centre);
    if (closeup.showsOpenings()) {
      for (int direction = 0; direction < DIRECTIONS; direction++) {
        int end = closeup.end(centre, direction);
        if (end >= 0) {
          shares[index(Sign.END, end)] += 1f / DIRECTIONS;
        }
      }
    }
  }

  /** Looks outward from a pixel of the sheet. */
  static RimProfile around(Closeup closeup, int x, int y) {
    return new RimProfile(closeup, closeup.index(x, y));
  }

  /**
   * Share of the directions in which a sign is seen at a distance, 0 to 1; beyond the distances
   * looked at, what the nearest of them shows.
   */
  float share(Sign sign, int distance) {
    return shares[index(sign, Math.max(FIRST, Math.min(LAST, distance)))];
  }

  /**
   * Adds the shares of all signs at a distance, in the order of {@link Sign}, to sums.
   *
   * @param sums so many of them from an index on; what comes out stands behind them
   */
  void add(int distance, float[] sums, int from) {
    int share = index(0, Math.max(FIRST, Math.min(LAST, distance)));
    for (int sign = 0; sign < SIGNS; sign++) {
      sums[from + SIGNS + sign] = sums[from + sign] + shares[share + sign];
    }
  }

  /**
   * From a centre to the places at each distance, ring by ring, as steps in a square so many pixels
   * a side.
   */
  static int[] rings(int side) {
    int[] rings = new int[RINGS * DIRECTIONS];
    for (int i = 0; i < rings.length; i++) {
      rings[i] = DOWN[i] * side + RIGHT[i];
    }
    return rings;
  }

  private static int[] steps(DoubleUnaryOperator along) {
    int[] steps = new int[RINGS * DIRECTIONS];
    for (int i = 0; i < steps.length; i++) {
      double angle = 2 * Math.PI * (i % DIRECTIONS) / DIRECTIONS;
      steps[i] = (int) Math.rint(along.applyAsDouble(angle) * (i / DIRECTIONS));
    }
    return steps;
  }

  /**
   * Goes outward ring by ring; this is where reading spends most of its time. Pixels are fetched
   * once and kept for as long as edges are measured with them.
   */
  private void look(int[] pixels, int[] rings, int centre) {
    int[][] kept = new int[2 * STEP + 1][DIRECTIONS];
    for (int distance = FIRST - STEP; distance <= LAST + STEP; distance++) {
      int[] ring = kept[distance % kept.length];
      int from = distance * DIRECTIONS;
      for (int direction = 0; direction < DIRECTIONS; direction++) {
        ring[direction] = pixels[centre + rings[from + direction]];
      }
      int middle = distance - STEP;
      if (middle >= FIRST) {
        count(middle, kept[(middle - STEP) % kept.length], kept[middle % kept.length], ring);
      }
    }
  }

  private void count(int distance, int[] inner, int[] here, int[] outer) {
    int seen = 0;
    long shades = 0;
    long edges = 0;
    for (int direction = 0; direction < DIRECTIONS; direction++) {
      int pixel = here[direction];
      seen += Signs.seen(pixel);
      shades += Signs.shades(pixel);
      edges += Signs.edge(inner[direction], pixel, outer[direction]);
    }
    put(Sign.EDGE, distance, Signs.share(edges, 0));
    put(Sign.FAINT_EDGE, distance, Signs.share(edges, 1));
    put(Sign.DARKENING, distance, Signs.share(edges, 2));
    put(Sign.SHADE, distance, Signs.share(shades, 0));
    put(Sign.FAINT_SHADE, distance, Signs.share(shades, 1));
    put(Sign.DARK, distance, Signs.share(shades, 2));
    put(Sign.BRIGHT, distance, Signs.share(shades, 3));
    put(Sign.PAPER, distance, Signs.paper(seen));
    put(Sign.OPEN, distance, Signs.open(seen));
  }

  private void put(Sign sign, int distance, float count) {
    shares[index(sign, distance)] = count / DIRECTIONS;
  }

  private static int index(Sign sign, int distance) {
    return index(sign.ordinal(), distance);
  }

  private static int index(int sign, int distance) {
    return distance * SIGNS + sign;
  }
}
