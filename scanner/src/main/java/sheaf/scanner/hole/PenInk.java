package sheaf.scanner.hole;

import java.util.Optional;
import org.opencv.core.CvType;
import org.opencv.core.Mat;
import org.opencv.core.Scalar;
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

  /** Somewhere along a slit's width the backing is seen: within so many pixels. */
  private static final int WIDTH = 9;

  /** Difference of the channels, as a share of the paper's tone, from which ink has a colour. */
  private static final double COLOURFUL = 0.22;

  /** The blurred edge of a line belongs to it: so many pixels. */
  private static final int EDGE = 7;

  /** What lies so far beside a place, in pixels, tells whether there is ink. */
  private static final int AROUND = WIDTH / 2 + EDGE / 2;

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
    byte[] inks = new byte[wide.pixels()];
    byte[] backings = new byte[inks.length];
    if (!split(wide, inks, backings)) {
      return;
    }
    try (Mats mats = new Mats()) {
      Mat ink = mats.own(new Mat(wide.side(), wide.side(), CvType.CV_8U));
      ink.put(0, 0, inks);
      if (behind.isPresent()) {
        Mat backing = mats.own(new Mat(wide.side(), wide.side(), CvType.CV_8U));
        backing.put(0, 0, backings);
        Imgproc.dilate(backing, backing, mats.disc(WIDTH));
        ink.setTo(new Scalar(0), backing);
      }
      Imgproc.dilate(ink, ink, mats.disc(EDGE));
      ink.get(0, 0, inks);
    }
    for (int i = 0; i < set.length; i++) {
      int row = i / tile.side() + AROUND;
      set[i] |= inks[row * wide.side() + i % tile.side() + AROUND] != 0;
    }
  }

  /** What may be ink, and what surely is backing; whether there may be ink at all. */
  private boolean split(Square square, byte[] inks, byte[] backings) {
    byte[] pixels = square.bytes(colour);
    boolean any = false;
    int end = square.endColumn(colour.cols());
    int last = square.endRow(colour.rows());
    for (int y = square.firstRow(); y < last; y++) {
      for (int x = square.firstColumn(); x < end; x++) {
        int i = y * square.side() + x;
        float blue = (pixels[CHANNELS * i] & 0xFF) * whites[0];
        float green = (pixels[CHANNELS * i + 1] & 0xFF) * whites[1];
        float red = (pixels[CHANNELS * i + 2] & 0xFF) * whites[2];
        if (isInk(blue, green, red)) {
          inks[i] = 1;
          any = true;
        }
        if (behind.isPresent() && isBacking(blue, green, red)) {
          backings[i] = 1;
        }
      }
    }
    return any;
  }

  private boolean isInk(float blue, float green, float red) {
    // What the eye takes for brightness (ITU-R BT.601).
    double darkness = 1 - 0.299 * red - 0.587 * green - 0.114 * blue;
    return darkness > DARK
        && (behind.isPresent()
            || Math.max(blue, Math.max(green, red)) - Math.min(blue, Math.min(green, red))
                > COLOURFUL);
  }

  private boolean isBacking(float blue, float green, float red) {
    BehindColour seen = behind.get();
    return seen.shines(seen.amount(blue, green, red));
  }
}
