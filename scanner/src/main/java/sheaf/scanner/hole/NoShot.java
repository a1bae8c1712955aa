package sheaf.scanner.hole;

import java.util.ArrayList;
import java.util.List;
import org.opencv.core.Core;
import org.opencv.core.Mat;
import org.opencv.core.MatOfPoint;
import org.opencv.core.Point;
import org.opencv.core.Rect;
import org.opencv.core.Scalar;
import org.opencv.imgproc.Imgproc;
import sheaf.scanner.opencv.Mats;

/**
 * Openings that no arrow made: where paper is missing from the page's edge inward, and the clean
 * round holes of an office punch. Paper torn by a point opens over four fifths of the shaft's disc
 * at most, and never so round.
 */
final class NoShot {

  /** Office punches: 6 mm by ISO 838, 7 to 8 mm elsewhere (from memory); with some room. */
  private static final double LEAST_DIAMETER = 5;

  private static final double MOST_DIAMETER = 9;

  /** How far a punched edge may lie off its circle, as a share of the radius. */
  private static final double ROUND = 0.06;

  /** Beside the page's outermost edge so far, in millimetres, what lies behind may be seen. */
  private static final double EDGE = 1.5;

  private NoShot() {}

  /**
   * Takes them out of a map of openings.
   *
   * @param open 255 where it is surely open; 8-bit
   * @param pixelsPerMm of the map
   */
  static void clear(Mat open, double pixelsPerMm) {
    try (Mats mats = new Mats()) {
      Mat set = mats.mat();
      Core.compare(open, new Scalar(128), set, Core.CMP_GE);
      List<MatOfPoint> outlines = new ArrayList<>();
      Imgproc.findContours(
          set, outlines, mats.mat(), Imgproc.RETR_EXTERNAL, Imgproc.CHAIN_APPROX_NONE);
      outlines.forEach(mats::own);
      for (int i = 0; i < outlines.size(); i++) {
        if (atEdge(outlines.get(i), open, EDGE * pixelsPerMm)
            || isPunched(outlines.get(i), pixelsPerMm)) {
          // With the blurred rim, which is open in part.
          Imgproc.drawContours(open, outlines, i, new Scalar(0), Imgproc.FILLED);
          Imgproc.drawContours(open, outlines, i, new Scalar(0), (int) pixelsPerMm);
        }
      }
    }
  }

  private static boolean atEdge(MatOfPoint outline, Mat open, double edge) {
    Rect box = Imgproc.boundingRect(outline);
    return box.x <= edge
        || box.y <= edge
        || box.x + box.width >= open.cols() - edge
        || box.y + box.height >= open.rows() - edge;
  }

  private static boolean isPunched(MatOfPoint outline, double pixelsPerMm) {
    Rect box = Imgproc.boundingRect(outline);
    double diameter = (box.width + box.height) / (2 * pixelsPerMm);
    if (diameter < LEAST_DIAMETER || diameter > MOST_DIAMETER) {
      return false;
    }
    double x = box.x + (box.width - 1) / 2.0;
    double y = box.y + (box.height - 1) / 2.0;
    double sum = 0;
    double squares = 0;
    Point[] points = outline.toArray();
    for (Point point : points) {
      double radius = Math.hypot(point.x - x, point.y - y);
      sum += radius;
      squares += radius * radius;
    }
    double mean = sum / points.length;
    double spread = Math.sqrt(Math.max(0, squares / points.length - mean * mean));
    return spread < ROUND * mean;
  }
}
