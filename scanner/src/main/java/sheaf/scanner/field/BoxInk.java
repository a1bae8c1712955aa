package sheaf.scanner.field;

import org.opencv.core.Core;
import org.opencv.core.CvType;
import org.opencv.core.Mat;
import org.opencv.core.Rect;
import org.opencv.core.Scalar;
import sheaf.core.page.MmRect;
import sheaf.scanner.opencv.Mats;
import sheaf.scanner.sheet.FlatSheet;

/** How much of a printed box is covered with ink, its own line not counted. */
final class BoxInk {

  /** The box's line and an uncertainty of place are left out: this much inside the edge, in mm. */
  private static final double INSIDE = 0.6;

  /** The paper's tone is taken from this far around the box, in millimetres. */
  private static final double AROUND = 2;

  /** Share of the surroundings that is surely plain paper: they hold the line and a word too. */
  private static final double PAPER_PERCENTILE = 0.7;

  /** Darker than paper by less than this is shading or noise, as a share of the paper's tone. */
  private static final double SHADING = 0.08;

  /** Darker than paper by this counts as full ink: pencil and a thin pen at 150 dpi reach it. */
  private static final double FULL = 0.45;

  private BoxInk() {}

  /** Share of the box's inside that is ink, 0 to 1; lighter ink counts in part. */
  static double share(FlatSheet sheet, MmRect box) {
    double paper = paper(sheet.grey(), sheet.pixels(box.grow(AROUND)));
    try (Mats mats = new Mats()) {
      Mat inside = mats.own(sheet.grey().submat(sheet.pixels(box.grow(-INSIDE))));
      Mat ink = mats.mat();
      // From darkness 0 at SHADING to 1 at FULL.
      double gain = 1 / (FULL - SHADING);
      inside.convertTo(ink, CvType.CV_32F, -gain / paper, (1 - SHADING) * gain);
      Core.max(ink, new Scalar(0), ink);
      Core.min(ink, new Scalar(1), ink);
      return Core.mean(ink).val[0];
    }
  }

  private static double paper(Mat grey, Rect around) {
    try (Mats mats = new Mats()) {
      Mat crop = mats.mat();
      grey.submat(around).copyTo(crop);
      byte[] pixels = new byte[(int) crop.total()];
      crop.get(0, 0, pixels);
      int[] histogram = new int[256];
      for (byte pixel : pixels) {
        histogram[pixel & 0xFF]++;
      }
      int left = (int) (pixels.length * PAPER_PERCENTILE);
      int tone = 0;
      while (tone < 255 && left >= histogram[tone]) {
        left -= histogram[tone++];
      }
      return Math.max(1, tone);
    }
  }
}
