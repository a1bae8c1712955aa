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

  /** A sign of so much of the paper's tone counts fully; more says no more. */
  private static final float FULL_EDGE = 0.12f;

  private static final float FULL_FAINT_EDGE = 0.04f;
  private static final float FULL_SHADE = 0.10f;
  private static final float FULL_FAINT_SHADE = 0.03f;
  private static final float FULL_DARK = 0.20f;
  private static final float FULL_BRIGHT = 0.10f;

  /** From this on a place counts as open; below {@link #SURELY_PAPER} it is paper. */
  private static final float OPEN = 0.5f;

  private static final float SURELY_PAPER = 0.3f;

  /** An opening has ended when so many pixels in a row are closed: fibres cross openings. */
  private static final int ENDED = 3;

  private final Closeup closeup;
  private final float[][] sums = new float[Sign.values().length][LAST + 1];

  private RimProfile(Closeup closeup, int centre) {
    this.closeup = closeup;
    int[] at = new int[LAST + MARGIN];
    boolean[] paper = new boolean[LAST + MARGIN];
    for (int[] ray : closeup.rays()) {
      for (int distance = 0; distance < at.length; distance++) {
        at[distance] = centre + ray[distance];
        paper[distance] = isPaper(at[distance]);
      }
      look(at, paper);
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
    return sums[sign.ordinal()][Math.max(FIRST, Math.min(LAST, distance))] / DIRECTIONS;
  }

  /** From a centre to the places on each ray, as steps in a square of so many pixels a side. */
  static int[][] rays(int side) {
    int[][] rays = new int[DIRECTIONS][LAST + MARGIN];
    for (int direction = 0; direction < DIRECTIONS; direction++) {
      double angle = 2 * Math.PI * direction / DIRECTIONS;
      for (int distance = 0; distance < rays[direction].length; distance++) {
        int column = (int) Math.rint(Math.cos(angle) * distance);
        int row = (int) Math.rint(Math.sin(angle) * distance);
        rays[direction][distance] = row * side + column;
      }
    }
    return rays;
  }

  private void look(int[] at, boolean[] paper) {
    if (closeup.showsOpenings()) {
      addEnd(at);
    }
    for (int distance = FIRST; distance <= LAST; distance++) {
      int here = at[distance];
      if (!closeup.hidesOpening(here)) {
        add(Sign.OPEN, distance, closeup.open(here));
      }
      if (paper[distance]) {
        addPaper(distance, closeup.tone(here));
        if (paper[distance - STEP] && paper[distance + STEP]) {
          addEdge(distance, closeup.tone(at[distance + STEP]) - closeup.tone(at[distance - STEP]));
        }
      }
    }
  }

  private void addPaper(int distance, float tone) {
    add(Sign.PAPER, distance, 1);
    add(Sign.SHADE, distance, Math.abs(tone) / FULL_SHADE);
    add(Sign.FAINT_SHADE, distance, Math.abs(tone) / FULL_FAINT_SHADE);
    add(Sign.DARK, distance, tone / FULL_DARK);
    add(Sign.BRIGHT, distance, -tone / FULL_BRIGHT);
  }

  private void addEdge(int distance, float change) {
    add(Sign.EDGE, distance, Math.abs(change) / FULL_EDGE);
    add(Sign.FAINT_EDGE, distance, Math.abs(change) / FULL_FAINT_EDGE);
    add(Sign.DARKENING, distance, change / FULL_EDGE);
  }

  private void add(Sign sign, int distance, float share) {
    sums[sign.ordinal()][distance] += Math.max(0, Math.min(1, share));
  }

  private boolean isPaper(int index) {
    return !closeup.isHidden(index) && closeup.open(index) < SURELY_PAPER;
  }

  private void addEnd(int[] ray) {
    int closed = 0;
    for (int distance = FIRST; distance < ray.length; distance++) {
      closed = closeup.open(ray[distance]) > OPEN ? 0 : closed + 1;
      if (closed == ENDED) {
        int end = distance - ENDED + 1;
        if (!closeup.hidesOpening(ray[end])) {
          add(Sign.END, end, 1);
        }
        return;
      }
    }
  }
}
