package sheaf.scanner.sheet;

import org.opencv.core.CvType;
import org.opencv.core.Mat;
import org.opencv.core.Size;
import org.opencv.imgproc.Imgproc;
import sheaf.scanner.opencv.Mats;

/**
 * Resamples a picture by a smooth map that is known at coarse places, a strip of rows at a time: a
 * fine map of the whole sheet would be eight times as large as the sheet, and the time would go
 * into memory.
 */
final class Remapping {

  /** Rows of a strip, about: its map stays within a processor's cache. */
  private static final int STRIP = 64;

  private Remapping() {}

  /**
   * Resamples a picture.
   *
   * @param coarse where the middle of each block of the result comes from
   * @param block side of a block, in pixels
   * @return so many columns and rows; the caller releases it
   */
  static Mat of(Mat picture, Mat coarse, int block, int columns, int rows) {
    Mat flat = new Mat(rows, columns, CvType.makeType(CvType.CV_8U, picture.channels()));
    int blocks = Math.max(1, STRIP / block);
    try (Mats mats = new Mats()) {
      Mat fine = mats.mat();
      for (int first = 0; first * block < rows; first += blocks) {
        // One block more on both sides, so that it is interpolated as if in one piece.
        int from = Math.max(0, first - 1);
        int to = Math.min(coarse.rows(), first + blocks + 1);
        Size size = new Size((double) coarse.cols() * block, (double) (to - from) * block);
        Mat part = mats.own(coarse.submat(from, to, 0, coarse.cols()));
        Imgproc.resize(part, fine, size, 0, 0, Imgproc.INTER_LINEAR);
        int top = first * block;
        int bottom = Math.min(rows, (first + blocks) * block);
        int skipped = (first - from) * block;
        Mat map = mats.own(fine.submat(skipped, skipped + bottom - top, 0, columns));
        Mat strip = mats.own(flat.submat(top, bottom, 0, columns));
        Imgproc.remap(picture, strip, map, mats.mat(), Imgproc.INTER_LINEAR);
      }
    }
    return flat;
  }
}
