package sheaf.scanner.hole;

/**
 * What single pixels say, in whole numbers: three signs share one long, so that one addition counts
 * all three. A ring of pixels adds up to less than a part of the long can hold.
 */
final class Signs {

  /** Tones count in steps of this share of the paper's tone; grain is a hundred times as much. */
  private static final float TONE_STEP = 1f / 8192;

  /** Tones differ from paper by all of its tone at most, in steps. */
  private static final int HALF = 8192;

  /** Larger differences of two tones, in steps, say no more: an edge is full at 983. */
  private static final int MOST = 1000;

  /** Stands for the tone where no paper is seen; the only negative one. */
  static final int NO_PAPER = -1;

  /** A sign of so much of the paper's tone counts fully; more says no more. */
  private static final float FULL_EDGE = 0.12f;

  private static final float FULL_FAINT_EDGE = 0.04f;
  private static final float FULL_SHADE = 0.10f;
  private static final float FULL_FAINT_SHADE = 0.03f;
  private static final float FULL_DARK = 0.20f;
  private static final float FULL_BRIGHT = 0.10f;

  /** Bits of each of the three parts: a ring's 72 full signs need 21. */
  private static final int BITS = 21;

  private static final long PART = (1L << BITS) - 1;

  /** A full sign of one pixel. */
  private static final float FULL = 1 << 14;

  private static final long[] EDGES = edges();

  private Signs() {}

  private static long[] edges() {
    long[] edges = new long[2 * MOST + 1];
    for (int i = 0; i < edges.length; i++) {
      float change = (i - MOST) * TONE_STEP;
      edges[i] =
          pack(
              Math.abs(change) / FULL_EDGE, Math.abs(change) / FULL_FAINT_EDGE, change / FULL_EDGE);
    }
    return edges;
  }

  /** Of two pixels of paper, by how much darker the outer one is: edge, faint edge, darkening. */
  static long edge(int change) {
    return EDGES[Math.max(-MOST, Math.min(MOST, change)) + MOST];
  }

  /** A tone in steps from 0: darker is more. */
  static int tone(float darkness) {
    return HALF + Math.max(-HALF, Math.min(HALF, Math.round(darkness / TONE_STEP)));
  }

  /** Of a pixel of paper: shade, faint shade, paper. */
  static long shading(float darkness) {
    float size = Math.abs(darkness);
    return pack(size / FULL_SHADE, size / FULL_FAINT_SHADE, 1);
  }

  /** Of a pixel of paper: darker, brighter, how surely open. */
  static long opening(float darkness, float open) {
    return pack(darkness / FULL_DARK, -darkness / FULL_BRIGHT, open);
  }

  /** Of a pixel that is no paper: how surely open. */
  static long opening(float open) {
    return pack(0, 0, open);
  }

  private static long pack(float first, float second, float third) {
    return count(first) | count(second) << BITS | count(third) << 2 * BITS;
  }

  private static long count(float share) {
    return Math.round(FULL * Math.max(0, Math.min(1, share)));
  }

  /** The sum of one of the parts, 0 to 2, a full sign counting 1. */
  static float share(long sums, int part) {
    return (sums >>> part * BITS & PART) / FULL;
  }
}
