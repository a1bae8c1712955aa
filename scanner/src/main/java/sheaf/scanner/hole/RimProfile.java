package sheaf.scanner.hole;

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

  private static final int DIRECTIONS = 72;

  /** Half the distance over which a change of tone is measured, in pixels. */
  private static final int STEP = 2;

  private static final int SIGNS = Sign.values().length;

  private final float[] shares = new float[SIGNS * (LAST + 1)];

  private RimProfile(Closeup closeup, int centre) {
    int[][] rings = closeup.rings();
    for (int distance = FIRST; distance <= LAST; distance++) {
      look(
          closeup,
          centre,
          rings[distance - STEP],
          rings[distance],
          rings[distance + STEP],
          distance);
    }
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

  /** From a centre to the places at each distance, as steps in a square so many pixels a side. */
  static int[][] rings(int side) {
    int[][] rings = new int[LAST + MARGIN][DIRECTIONS];
    for (int direction = 0; direction < DIRECTIONS; direction++) {
      double angle = 2 * Math.PI * direction / DIRECTIONS;
      for (int distance = 0; distance < rings.length; distance++) {
        int column = (int) Math.rint(Math.cos(angle) * distance);
        int row = (int) Math.rint(Math.sin(angle) * distance);
        rings[distance][direction] = row * side + column;
      }
    }
    return rings;
  }

  /** Counts what is seen on one ring; this is where reading spends most of its time. */
  private void look(
      Closeup closeup, int centre, int[] within, int[] here, int[] beyond, int distance) {
    long[] shading = closeup.shading();
    long[] opening = closeup.opening();
    int[] tone = closeup.tone();
    long shades = 0;
    long openings = 0;
    long changes = 0;
    for (int direction = 0; direction < DIRECTIONS; direction++) {
      int place = centre + here[direction];
      shades += shading[place];
      openings += opening[place];
      int inner = tone[centre + within[direction]];
      int outer = tone[centre + beyond[direction]];
      if ((tone[place] | inner | outer) >= 0) {
        changes += Signs.edge(outer - inner);
      }
    }
    unpack(changes, distance, Sign.EDGE, Sign.FAINT_EDGE, Sign.DARKENING);
    unpack(shades, distance, Sign.SHADE, Sign.FAINT_SHADE, Sign.PAPER);
    unpack(openings, distance, Sign.DARK, Sign.BRIGHT, Sign.OPEN);
  }

  private void unpack(long sums, int distance, Sign first, Sign second, Sign third) {
    shares[index(first, distance)] = Signs.share(sums, 0) / DIRECTIONS;
    shares[index(second, distance)] = Signs.share(sums, 1) / DIRECTIONS;
    shares[index(third, distance)] = Signs.share(sums, 2) / DIRECTIONS;
  }

  private static int index(Sign sign, int distance) {
    return index(sign.ordinal(), distance);
  }

  private static int index(int sign, int distance) {
    return distance * SIGNS + sign;
  }
}
