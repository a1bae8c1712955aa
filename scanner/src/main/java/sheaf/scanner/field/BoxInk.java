package sheaf.scanner.field;

import org.opencv.core.Core;
import org.opencv.core.CvType;
import org.opencv.core.Mat;
import org.opencv.core.Rect;
import org.opencv.core.Scalar;
import org.opencv.core.Size;
import org.opencv.imgproc.Imgproc;
import sheaf.core.page.MmRect;
import sheaf.scanner.opencv.Mats;
import sheaf.scanner.sheet.FlatSheet;
import sheaf.scanner.sheet.Tones;

/** How much of a printed box is covered with ink, its own line not counted. */
final class BoxInk {

  /** The box's line and an uncertainty of place are left out: this much inside the edge, in mm. */
  private static final double INSIDE = 0.6;

  /** Beside a box is a strip from here on and so wide, in millimetres: the next row is farther. */
  private static final double FROM = 0.35;

  private static final double BESIDE = 0.75;

  /** The paper's tone is taken from this far around the box, in millimetres. */
  private static final double AROUND = 2;

  /** Share of the surroundings that is surely plain paper: they hold the line and a word too. */
  private static final double PAPER_PERCENTILE = 0.7;

  /** Darker than paper by less than this is shading or noise, as a share of the paper's tone. */
  private static final double SHADING = 0.08;

  /** Darker than paper by this counts as full ink: pencil and a thin pen at 150 dpi reach it. */
  private static final double FULL = 0.45;

  /** A box filled all over with the palest pen or pencil is darker by this, and surely by that. */
  private static final double SOLID = 0.2;

  private static final double SOLID_FULL = 0.35;

  /** Where a shadow lies over the box, only what is darker than any shadow is surely ink. */
  private static final double SHADOWED = 0.5;

  private static final double SHADOWED_FULL = 0.65;

  /** A shadow reaches beyond the surroundings of a box: over more than this share of their edge. */
  private static final double SHADOW_AT_EDGE = 0.08;

  /** Wider than the widest stroke of a pen, in millimetres. */
  private static final double STROKE = 2.5;

  private BoxInk() {}

  /** Share of the box's inside that is ink, 0 to 1; lighter ink counts in part. */
  static double share(FlatSheet sheet, MmRect box) {
    return share(sheet, box, box.grow(-INSIDE));
  }

  /**
   * Share of what lies beside a box that is ink, 0 to 1: above, below and to the left, where no
   * word stands.
   */
  static double around(FlatSheet sheet, MmRect box) {
    double wide = box.width();
    double high = box.height();
    double above = box.y() - FROM - BESIDE;
    MmRect left = new MmRect(box.x() - FROM - BESIDE, box.y(), BESIDE, high);
    MmRect top = new MmRect(box.x(), above, wide, BESIDE);
    MmRect bottom = new MmRect(box.x(), box.bottom() + FROM, wide, BESIDE);
    return (share(sheet, box, left) + share(sheet, box, top) + share(sheet, box, bottom)) / 3;
  }

  private static double share(FlatSheet sheet, MmRect box, MmRect of) {
    Rect around = sheet.pixels(box.grow(AROUND));
    double paper = paper(sheet.grey(), around);
    try (Mats mats = new Mats()) {
      Mat crop = mats.own(sheet.grey().submat(around));
      Mat closed = closed(crop, mats);
      boolean shadow = reachesOut(closed, (1 - SOLID) * paper);
      Mat solid =
          shadow
              ? ramp(crop, paper, SHADOWED, SHADOWED_FULL, mats)
              : ramp(closed, paper, SOLID, SOLID_FULL, mats);
      Mat ink = mats.mat();
      Core.max(strokes(crop, closed, mats), solid, ink);
      Rect inside = sheet.pixels(of);
      Rect within = new Rect(inside.x - around.x, inside.y - around.y, inside.width, inside.height);
      return Core.mean(mats.own(ink.submat(within))).val[0];
    }
  }

  /**
   * The same without all that is narrower than a pen's widest stroke; the edge of a shadow stays,
   * since a closing (Serra 1982) leaves a straight edge as it is.
   */
  private static Mat closed(Mat crop, Mats mats) {
    Mat closed = mats.mat();
    int size = (int) (STROKE * FlatSheet.PIXELS_PER_MM) | 1;
    Mat square = mats.own(Imgproc.getStructuringElement(Imgproc.MORPH_RECT, new Size(size, size)));
    Imgproc.morphologyEx(crop, closed, Imgproc.MORPH_CLOSE, square);
    return closed;
  }

  /** Whether something wide and darker than this reaches the edge of what is looked at. */
  private static boolean reachesOut(Mat closed, double tone) {
    int rows = closed.rows();
    int cols = closed.cols();
    byte[] pixels = new byte[rows * cols];
    closed.get(0, 0, pixels);
    int dark = 0;
    for (int i = 0; i < pixels.length; i++) {
      int x = i % cols;
      int y = i / cols;
      boolean edge = x == 0 || y == 0 || x == cols - 1 || y == rows - 1;
      dark += edge && (pixels[i] & 0xff) < tone ? 1 : 0;
    }
    return dark > SHADOW_AT_EDGE * 2 * (rows + cols);
  }

  /** Lines narrower than a pen's widest stroke, darker than the paper beside them. */
  private static Mat strokes(Mat crop, Mat closed, Mats mats) {
    Mat bright = mats.mat();
    Core.divide(crop, closed, bright, 1, CvType.CV_32F);
    return ramp(bright, 1, SHADING, FULL, mats);
  }

  /** From darkness 0 at {@code from} to 1 at {@code full}, as shares of the paper's tone. */
  private static Mat ramp(Mat bright, double paper, double from, double full, Mats mats) {
    double gain = 1 / (full - from);
    Mat ramp = mats.mat();
    bright.convertTo(ramp, CvType.CV_32F, -gain / paper, (1 - from) * gain);
    Core.max(ramp, new Scalar(0), ramp);
    Core.min(ramp, new Scalar(1), ramp);
    return ramp;
  }

  private static double paper(Mat grey, Rect around) {
    try (Mats mats = new Mats()) {
      Mat crop = mats.mat();
      mats.own(grey.submat(around)).copyTo(crop);
      byte[] pixels = new byte[(int) crop.total()];
      crop.get(0, 0, pixels);
      return Tones.percentile(pixels, 0, 1, PAPER_PERCENTILE);
    }
  }
}
