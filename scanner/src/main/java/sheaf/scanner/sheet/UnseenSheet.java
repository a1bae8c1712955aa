package sheaf.scanner.sheet;

import org.opencv.core.Core;
import org.opencv.core.Mat;
import org.opencv.core.MatOfDouble;
import org.opencv.core.Size;
import org.opencv.imgproc.Imgproc;
import sheaf.core.reading.ReasonCode;
import sheaf.scanner.opencv.Mats;
import sheaf.scanner.picture.UnreadableException;

/** Finds out why no register mark is seen in a picture, so that a person knows what to do. */
final class UnseenSheet {

  /** Grey levels are looked at on a picture this many pixels wide: noise is averaged out. */
  private static final int WIDE = 200;

  /** Print on a page moves its grey levels apart by 25 and more, an empty page by under 10. */
  private static final double EVEN = 12;

  /** Paper darker than this is not lit. */
  private static final double DARK = 30;

  /** A blank page is lighter than this. */
  private static final double PAPER = 150;

  private UnseenSheet() {}

  /** The reason to give for a picture in which {@link MarkFinder} sees nothing. */
  static UnreadableException why(Mat grey) {
    try (Mats mats = new Mats()) {
      Mat changed = mats.mat();
      Core.flip(grey, changed, 1);
      if (MarkFinder.seesAny(changed)) {
        return new UnreadableException(
            ReasonCode.MIRRORED,
            "The picture is mirrored, or shows the sheet from behind: turn mirroring off, lay the printed side to the camera or the glass, and take it again.");
      }
      Core.bitwise_not(grey, changed);
      if (MarkFinder.seesAny(changed)) {
        return new UnreadableException(
            ReasonCode.NEGATIVE,
            "The picture is a negative, black where the paper is white: turn the inversion off and take it again.");
      }
      return new UnreadableException(ReasonCode.NO_SHEET, inWords(grey, mats));
    }
  }

  private static String inWords(Mat grey, Mats mats) {
    Mat small = mats.mat();
    double scale = Math.min(1, WIDE / (double) grey.cols());
    Imgproc.resize(grey, small, new Size(), scale, scale, Imgproc.INTER_AREA);
    MatOfDouble mean = mats.own(new MatOfDouble());
    MatOfDouble deviation = mats.own(new MatOfDouble());
    Core.meanStdDev(small, mean, deviation);
    double light = mean.get(0, 0)[0];
    boolean even = deviation.get(0, 0)[0] < EVEN;
    if (light < DARK) {
      return "The picture is too dark to see a sheet in: take it again with more light.";
    }
    if (even && light > PAPER) {
      return "The picture is blank: lay the sheet with its printed side to the camera or the glass, and take it again.";
    }
    return "No Sheaf sheet is seen in this picture: take the whole sheet, its printed side in view, sharp and well lit.";
  }
}
