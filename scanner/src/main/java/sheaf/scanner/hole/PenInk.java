package sheaf.scanner.hole;

import org.opencv.core.CvType;
import org.opencv.core.Mat;
import org.opencv.core.Rect;
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
      Mat ink = inks(pixels, part.size(), kind == Seeds.Kind.COLOURED, behind, mats);
      Imgproc.dilate(ink, ink, mats.disc(EDGE));
      return Grid.around(ink, circle.x() - left, circle.y() - top, reach).cutFrom(left, top);
    }
  }

  /** 1 where there is ink, else 0. */
  private static Mat inks(
      byte[] pixels, Size size, boolean coloured, BehindColour behind, Mats mats) {
    double[] paper = new double[CHANNELS];
    for (int c = 0; c < CHANNELS; c++) {
      paper[c] = Tones.percentile(pixels, c, CHANNELS, 0.5);
    }
    byte[] inks = new byte[pixels.length / CHANNELS];
    float[] dark = new float[inks.length];
    float[] amounts = new float[inks.length];
    for (int i = 0; i < inks.length; i++) {
      float blue = (float) ((pixels[CHANNELS * i] & 0xFF) / paper[0]);
      float green = (float) ((pixels[CHANNELS * i + 1] & 0xFF) / paper[1]);
      float red = (float) ((pixels[CHANNELS * i + 2] & 0xFF) / paper[2]);
      double darkness = 1 - BehindColour.light(blue, green, red);
      double spread = Math.max(blue, Math.max(green, red)) - Math.min(blue, Math.min(green, red));
      inks[i] = (byte) (darkness > DARK && (coloured || spread > COLOURFUL) ? 1 : 0);
      dark[i] = (float) darkness;
      amounts[i] = behind.amount(blue, green, red);
    }
    if (coloured) {
      spread(dark, size);
      spread(amounts, size);
      for (int i = 0; i < inks.length; i++) {
        float asked = INK_HAS * behind.perDarkness() * dark[i] * Math.min(1, dark[i] / PEN);
        inks[i] = amounts[i] < asked ? inks[i] : 0;
      }
    }
    Mat ink = mats.own(new Mat(size, CvType.CV_8U));
    ink.put(0, 0, inks);
    return ink;
  }

  private static void spread(float[] values, Size size) {
    try (Mats mats = new Mats()) {
      Mat map = mats.own(new Mat(size, CvType.CV_32F));
      map.put(0, 0, values);
      Imgproc.GaussianBlur(map, map, new Size(0, 0), SPREAD);
      map.get(0, 0, values);
    }
  }
}
