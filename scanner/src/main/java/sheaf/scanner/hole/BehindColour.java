package sheaf.scanner.hole;

/**
 * The colour of what is seen through a sheet's holes: how a place of that colour is told from
 * paper, toner and pens.
 *
 * <p>Colours are blue, green and red as shares of the paper's own, so paper is 1, 1, 1 and what the
 * light does to it is taken out. What has no colour, like toner and shadow, adds nothing.
 */
final class BehindColour {

  /** Weaker than this it is no more than a few times a camera's noise, which is smoothed first. */
  static final double WEAK = 0.2;

  /**
   * The printed backing: magenta is what green light does not come back from, and unlike a red
   * pen's ink it has much more blue than green. It reaches 0.5 to 0.75, a pen a tenth of that.
   */
  static final BehindColour BACKING =
      new BehindColour(
          new float[] {0.5f, -1, 0.5f},
          new float[] {2.2f, -2.2f, 0},
          new float[] {0, 0, 0, 1},
          0.22f,
          0.45f,
          1,
          false);

  /** Of a colour's strength, from where on a place may show it, and from where it does. */
  private static final float FROM = 0.35f;

  private static final float FULL = 0.7f;

  /**
   * What is of another hue counts less by this: red ink, 30 degrees off wood's, adds nothing. Of a
   * weak colour a camera's noise changes the hue.
   */
  private static final double ASIDE = 1.5;

  private static final double ASIDE_OF_WEAK = 1;

  /**
   * What lies behind is hardly darker through a hole than this share of itself; with less it may be
   * a pen's ink of like colour.
   */
  private static final float DARKEST = 0.35f;

  private static final float SURELY = 0.55f;

  /** Slits are shaded: at least so much darker than paper, whatever lies behind. */
  private static final float LEAST_DARK = 0.3f;

  /** What the eye takes for brightness, of blue, green and red (ITU-R BT.601). */
  private static final float[] LUMA = {0.114f, 0.587f, 0.299f};

  private final float[] left;
  private final float[] right;
  private final float[] light;
  private final float from;
  private final float full;
  private final float perDarkness;
  private final boolean weak;

  /**
   * Three weighted sums of blue, green and red, the least of which counts.
   *
   * @param left how far along the colour's way, less how far off it to one side
   * @param right the same to the other side
   * @param light how light it is; a constant stands behind the weights
   * @param perDarkness how much of the colour a place has for each share that it is darker than
   *     paper
   */
  private BehindColour(
      float[] left,
      float[] right,
      float[] light,
      float from,
      float full,
      float perDarkness,
      boolean weak) {
    this.left = left;
    this.right = right;
    this.light = light;
    this.from = from;
    this.full = full;
    this.perDarkness = perDarkness;
    this.weak = weak;
  }

  /**
   * A colour seen through the holes of a sheet; the backing's where it may be that.
   *
   * @param seen blue, green and red as shares of the paper's
   */
  static BehindColour seen(double[] seen) {
    float backing = BACKING.amount((float) seen[0], (float) seen[1], (float) seen[2]);
    return BACKING.share(backing) > 0.5f ? BACKING : of(seen);
  }

  private static BehindColour of(double[] seen) {
    double mean = (seen[0] + seen[1] + seen[2]) / 3;
    double strength =
        Math.sqrt(square(seen[0] - mean) + square(seen[1] - mean) + square(seen[2] - mean));
    boolean weak = strength < WEAK;
    double narrow = (weak ? ASIDE_OF_WEAK : ASIDE) / Math.sqrt(3);
    float[] left = new float[seen.length];
    float[] right = new float[seen.length];
    for (int c = 0; c < seen.length; c++) {
      double along = (seen[c] - mean) / strength;
      // Square to it, among colours without brightness.
      double aside = narrow * (seen[(c + 1) % 3] - seen[(c + 2) % 3]) / strength;
      left[c] = (float) (along + aside);
      right[c] = (float) (along - aside);
    }
    float tone = light((float) seen[0], (float) seen[1], (float) seen[2]);
    float from = FROM * (float) strength;
    float full = FULL * (float) strength;
    float gain = (full - from) / (tone * (SURELY - DARKEST));
    float[] light = {gain * LUMA[0], gain * LUMA[1], gain * LUMA[2], from - gain * DARKEST * tone};
    float perDarkness = (float) strength / Math.max(LEAST_DARK, 1 - tone);
    return new BehindColour(left, right, light, from, full, perDarkness, weak);
  }

  private static double square(double value) {
    return value * value;
  }

  /** How much of the colour a place has. */
  float amount(float blue, float green, float red) {
    float one = left[0] * blue + left[1] * green + left[2] * red;
    float other = right[0] * blue + right[1] * green + right[2] * red;
    float most = light[0] * blue + light[1] * green + light[2] * red + light[3];
    return Math.min(most, Math.min(one, other));
  }

  /** How surely a place with so much of the colour shows what lies behind, 0 to 1. */
  float share(float amount) {
    return Math.max(0, Math.min(1, (amount - from) / (full - from)));
  }

  /** How much of the colour there is, usually, for each share that a place is darker than paper. */
  float perDarkness() {
    return perDarkness;
  }

  /** How light a place is to the eye; paper is 1. */
  static float light(float blue, float green, float red) {
    return LUMA[0] * blue + LUMA[1] * green + LUMA[2] * red;
  }

  /** With less in the mean of four pixels, none of them shows it, even if rounding took of it. */
  float none() {
    return from / 5;
  }

  /** Whether it takes smoothing to tell it from a camera's noise. */
  boolean isWeak() {
    return weak;
  }
}
