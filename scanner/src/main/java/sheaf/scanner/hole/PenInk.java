package sheaf.scanner.hole;

import java.util.Optional;
import org.opencv.core.CvType;
import org.opencv.core.Mat;
import org.opencv.core.Size;
import org.opencv.imgproc.Imgproc;
import sheaf.scanner.opencv.Mats;
import sheaf.scanner.sheet.Tones;

/**
 * Where a pen wrote, as far as colour tells: a pen's line through a hole looks like two slits.
 *
 * <p>A slit shows what lies behind, the coloured backing or something without a colour; ink has a
 * colour of its own, or in front of the backing none.
 */
final class PenInk {

  /** Darker than paper by less than this it may be a hairline's shadow. */
  private static final double DARK = 0.35;

  /**
   * A hairline is narrower than the patches in which pictures are stored with colour, so its colour
   * is spread out: what is dark and what has colour is held against each other over so many pixels.
   */
  private static final double SPREAD = 2.5;

  /** Farther than this from a place, in pixels, nothing is spread to it. */
  private static final int FARTHEST = 8;

  /**
   * With less than this share of the colour that what lies behind has where it is as dark, it is
   * ink: a blue pen has 0.27 and less.
   */
  private static final float INK_HAS = 0.33f;

  /**
   * A pen's line is at least this dark when it is spread out; a hairline is not, and in its shadow
   * has little colour, so the less dark, the less colour is asked of it.
   */
  private static final float PEN = 0.35f;

  /** Difference of the channels, as a share of the paper's tone, from which ink has a colour. */
  private static final double COLOURFUL = 0.22;

  /** The blurred edge of a line belongs to it: so many pixels. */
  private static final int EDGE = 7;

  /** What lies so far beside a place, in pixels, tells whether there is ink. */
  private static final int AROUND = FARTHEST + EDGE / 2;

  /** Of the paper's tone every so many pixels along and down tell enough. */
  private static final int PITCH = 4;

  private static final int CHANNELS = 3;

  private final Mat colour;
  private final Optional<BehindColour> behind;
  private final float[] whites;

  private PenInk(Mat colour, Optional<BehindColour> behind, float[] whites) {
    this.colour = colour;
    this.behind = behind;
    this.whites = whites;
  }

  /**
   * In a square, where the paper has one tone.
   *
   * @param colour the sheet in blue, green, red, looked at as long as this is used
   * @param behind the colour that lies behind; empty where it has none
   */
  static PenInk in(Mat colour, Square square, Optional<BehindColour> behind) {
    float[] whites = new float[CHANNELS];
    byte[] some = square.some(colour, PITCH);
    for (int c = 0; c < CHANNELS; c++) {
      whites[c] = 1f / Tones.percentile(some, c, CHANNELS, 0.5);
    }
    return new PenInk(colour, behind, whites);
  }

  /**
   * Sets where there is ink and no slit.
   *
   * @param set for each pixel of a tile, row by row
   */
  void addTo(boolean[] set, Square tile) {
    Square wide = tile.grow(AROUND);
    byte[] inks = inks(wide);
    if (inks.length == 0) {
      return;
    }
    try (Mats mats = new Mats()) {
      Mat ink = mats.own(new Mat(wide.side(), wide.side(), CvType.CV_8U));
      ink.put(0, 0, inks);
      Imgproc.dilate(ink, ink, mats.disc(EDGE));
      ink.get(0, 0, inks);
    }
    for (int i = 0; i < set.length; i++) {
      int row = i / tile.side() + AROUND;
      set[i] |= inks[row * wide.side() + i % tile.side() + AROUND] != 0;
    }
  }

  /** 1 where there is ink, else 0; empty where there is none at all. */
  private byte[] inks(Square square) {
    byte[] pixels = square.bytes(colour);
    byte[] inks = new byte[square.pixels()];
    float[] dark = new float[inks.length];
    float[] amounts = new float[inks.length];
    boolean any = false;
    int end = square.endColumn(colour.cols());
    int last = square.endRow(colour.rows());
    for (int y = square.firstRow(); y < last; y++) {
      for (int x = square.firstColumn(); x < end; x++) {
        int i = y * square.side() + x;
        float blue = (pixels[CHANNELS * i] & 0xFF) * whites[0];
        float green = (pixels[CHANNELS * i + 1] & 0xFF) * whites[1];
        float red = (pixels[CHANNELS * i + 2] & 0xFF) * whites[2];
        dark[i] = 1 - BehindColour.light(blue, green, red);
        amounts[i] = behind.isPresent() ? behind.get().amount(blue, green, red) : 0;
        if (dark[i] > DARK && (behind.isPresent() || difference(blue, green, red) > COLOURFUL)) {
          inks[i] = 1;
          any = true;
        }
      }
    }
    if (any) {
      behind.ifPresent(seen -> clearHairlines(inks, dark, amounts, seen.perDarkness(), square));
    }
    return any ? inks : new byte[0];
  }

  private static float difference(float blue, float green, float red) {
    return Math.max(blue, Math.max(green, red)) - Math.min(blue, Math.min(green, red));
  }

  private static void clearHairlines(
      byte[] inks, float[] dark, float[] amounts, float perDarkness, Square square) {
    spread(dark, square.side());
    spread(amounts, square.side());
    for (int i = 0; i < inks.length; i++) {
      float asked = INK_HAS * perDarkness * dark[i] * Math.min(1, dark[i] / PEN);
      if (amounts[i] >= asked) {
        inks[i] = 0;
      }
    }
  }

  private static void spread(float[] values, int side) {
    try (Mats mats = new Mats()) {
      Mat map = mats.own(new Mat(side, side, CvType.CV_32F));
      map.put(0, 0, values);
      Imgproc.GaussianBlur(map, map, new Size(0, 0), SPREAD);
      map.get(0, 0, values);
    }
  }
}
