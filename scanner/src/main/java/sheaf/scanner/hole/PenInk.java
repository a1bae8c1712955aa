package sheaf.scanner.hole;

import java.util.Optional;
import org.opencv.core.CvType;
import org.opencv.core.Mat;
import org.opencv.core.Rect;
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

  private static final int CHANNELS = 3;

  private PenInk() {}

  /**
   * 1 where there is ink and no slit, else 0.
   *
   * @param colour the sheet in blue, green, red
   * @param kind what lies behind
   * @param behind its colour, where it has one
   * @param reach how far from the circle's centre to look, in pixels
   */
  static Grid around(
      Mat colour, Seeds.Kind kind, BehindColour behind, Circle circle, double reach) {
    int half = (int) Math.ceil(reach) + 2;
    int left = Math.max(0, (int) circle.x() - half);
    int top = Math.max(0, (int) circle.y() - half);
    int right = Math.min(colour.cols(), (int) circle.x() + half);
    int bottom = Math.min(colour.rows(), (int) circle.y() + half);
    try (Mats mats = new Mats()) {
      Mat part = mats.own(colour.submat(new Rect(left, top, right - left, bottom - top)));
      byte[] pixels = new byte[(int) part.total() * CHANNELS];
      mats.own(part.clone()).get(0, 0, pixels);
      Mat backing = mats.own(new Mat(part.size(), CvType.CV_8U));
      Mat ink = mats.own(new Mat(part.size(), CvType.CV_8U));
      split(
          pixels,
          kind == Seeds.Kind.COLOURED ? Optional.of(behind) : Optional.empty(),
          ink,
          backing);
      Imgproc.dilate(backing, backing, mats.disc(WIDTH));
      ink.setTo(new Scalar(0), backing);
      Imgproc.dilate(ink, ink, mats.disc(EDGE));
      return Grid.around(ink, circle.x() - left, circle.y() - top, reach).cutFrom(left, top);
    }
  }

  /** What may be ink, and what surely is backing. */
  private static void split(byte[] pixels, Optional<BehindColour> behind, Mat ink, Mat backing) {
    double[] paper = new double[CHANNELS];
    for (int c = 0; c < CHANNELS; c++) {
      paper[c] = Tones.percentile(pixels, c, CHANNELS, 0.5);
    }
    byte[] inks = new byte[pixels.length / CHANNELS];
    byte[] backings = new byte[inks.length];
    for (int i = 0; i < inks.length; i++) {
      float blue = (float) ((pixels[CHANNELS * i] & 0xFF) / paper[0]);
      float green = (float) ((pixels[CHANNELS * i + 1] & 0xFF) / paper[1]);
      float red = (float) ((pixels[CHANNELS * i + 2] & 0xFF) / paper[2]);
      // What the eye takes for brightness (ITU-R BT.601).
      double darkness = 1 - 0.299 * red - 0.587 * green - 0.114 * blue;
      double spread = Math.max(blue, Math.max(green, red)) - Math.min(blue, Math.min(green, red));
      inks[i] = (byte) (darkness > DARK && (behind.isPresent() || spread > COLOURFUL) ? 1 : 0);
      backings[i] =
          (byte)
              (behind.filter(seen -> seen.shines(seen.amount(blue, green, red))).isPresent()
                  ? 1
                  : 0);
    }
    ink.put(0, 0, inks);
    backing.put(0, 0, backings);
  }
}
