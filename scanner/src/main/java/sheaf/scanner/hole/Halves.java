package sheaf.scanner.hole;

import org.opencv.core.Mat;
import org.opencv.core.Scalar;
import org.opencv.core.Size;
import org.opencv.imgproc.Imgproc;
import sheaf.scanner.opencv.Mats;

/** Pictures half as fine, each pixel the mean of four. */
final class Halves {

  private static final Scalar WHITE = Scalar.all(255);

  private Halves() {}

  /**
   * Of a picture; the caller releases it. A last odd row or column becomes white: averaging over a
   * whole number of pixels is ten times as fast, and what lies there is no paper.
   */
  static Mat of(Mat picture) {
    int columns = picture.cols() / 2;
    int rows = picture.rows() / 2;
    Mat half = new Mat((picture.rows() + 1) / 2, (picture.cols() + 1) / 2, picture.type(), WHITE);
    try (Mats mats = new Mats()) {
      Mat even = mats.own(picture.submat(0, 2 * rows, 0, 2 * columns));
      Mat whole = mats.own(half.submat(0, rows, 0, columns));
      Imgproc.resize(even, whole, new Size(columns, rows), 0, 0, Imgproc.INTER_AREA);
    }
    return half;
  }
}
