package sheaf.scanner.hole;

/**
 * What single pixels say, in whole numbers: all that is known of a pixel shares one int, and
 * several signs share one long, so that one addition counts them all. A ring of pixels adds up to
 * less than a part of the long can hold.
 */
final class Signs {

  /** A ring has no more pixels than this. */
  static final int RING = 72;

  /** Tones differ from paper by all of its tone at most, in steps; grain is twenty steps. */
  private static final int HALF = 2048;

  private static final int TONES = 2 * HALF + 1;

  /** Bits of a pixel's tone, above which one says whether it is paper at all. */
  private static final int TONE_BITS = 13;

  private static final int TONE = (1 << TONE_BITS) - 1;

  /** Above that a ring's paper is counted in so many bits, and then how far it is open. */
  private static final int PAPER_BITS = 7;

  private static final int PAPER = (1 << PAPER_BITS) - 1;

  private static final int OPEN_SHIFT = TONE_BITS + PAPER_BITS;

  /** Fully open. */
  private static final int OPEN = 1 << 11;

  /** A sign of so much of the paper's tone counts fully; more says no more. */
  private static final float FULL_EDGE = 0.12f;

  private static final float FULL_FAINT_EDGE = 0.04f;
  private static final float FULL_SHADE = 0.10f;
  private static final float FULL_FAINT_SHADE = 0.03f;
  private static final float FULL_DARK = 0.20f;
  private static final float FULL_BRIGHT = 0.10f;

  /** Bits of each of four parts of a long. */
  private static final int BITS = 16;

  private static final long PART = (1L << BITS) - 1;

  /** A full sign of one pixel: a ring's stay within a part. */
  private static final float FULL = PART / RING;

  private static final long[] SHADES = shades();

  private static final long[] EDGES = edges();

  private Signs() {}

  private static long[] shades() {
    long[] shades = new long[TONES];
    for (int i = 0; i < shades.length; i++) {
      float darkness = (i - HALF) / (float) HALF;
      float size = Math.abs(darkness);
      shades[i] =
          pack(
              size / FULL_SHADE,
              size / FULL_FAINT_SHADE,
              darkness / FULL_DARK,
              -darkness / FULL_BRIGHT);
    }
    return shades;
  }

  private static long[] edges() {
    long[] edges = new long[2 * TONES - 1];
    for (int i = 0; i < edges.length; i++) {
      float change = (i - (TONES - 1)) / (float) HALF;
      float size = Math.abs(change);
      edges[i] = pack(size / FULL_EDGE, size / FULL_FAINT_EDGE, change / FULL_EDGE, 0);
    }
    return edges;
  }

  /**
   * A pixel of paper.
   *
   * @param darkness of its smoothed tone
   * @param open how surely it is open, 0 to 1
   */
  static int paper(float darkness, float open) {
    int tone = Math.max(-HALF, Math.min(HALF, Math.round(darkness * HALF)));
    return HALF + tone | 1 << TONE_BITS | open(open);
  }

  /**
   * A pixel that is no paper: open, hidden, or both in part.
   *
   * @param open how surely it is open, 0 to 1
   */
  static int noPaper(float open) {
    return HALF | open(open);
  }

  private static int open(float share) {
    return Math.round(share * OPEN) << OPEN_SHIFT;
  }

  /** Whether a pixel is more open than not. */
  static boolean isOpen(int pixel) {
    return pixel >>> OPEN_SHIFT > OPEN / 2;
  }

  /** Of a pixel: shade, faint shade, darker, brighter. */
  static long shades(int pixel) {
    return SHADES[pixel & TONE];
  }

  /** Of three pixels outward: edge, faint edge, darkening; nothing unless all are paper. */
  static long edge(int inner, int here, int outer) {
    int allPaper = (inner & here & outer) << 31 - TONE_BITS >> 31;
    int change = (outer & TONE) - (inner & TONE);
    return EDGES[(change & allPaper) + TONES - 1];
  }

  /** What adds up to how much of a ring is paper and how far it is open. */
  static int seen(int pixel) {
    return pixel >>> TONE_BITS;
  }

  /** How many pixels are paper, from the sum of what was seen. */
  static float paper(int seen) {
    return seen & PAPER;
  }

  /** How many pixels are open, from the sum of what was seen. */
  static float open(int seen) {
    return (seen >>> PAPER_BITS) / (float) OPEN;
  }

  private static long pack(float first, float second, float third, float fourth) {
    return count(first)
        | count(second) << BITS
        | count(third) << 2 * BITS
        | count(fourth) << 3 * BITS;
  }

  private static long count(float share) {
    return Math.round(FULL * Math.max(0, Math.min(1, share)));
  }

  /** The sum of one of the parts, 0 to 3, a full sign counting 1. */
  static float share(long sums, int part) {
    return (sums >>> part * BITS & PART) / FULL;
  }
}
