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
public final class NoShot {

  /** Office punches: 6 mm by ISO 838, 7 to 8 mm elsewhere (from memory); with some room. */
  private static final double LEAST_DIAMETER = 5;

  private static final double MOST_DIAMETER = 9;

  /** How far a punched edge may lie off its circle, as a share of the radius. */
  private static final double ROUND = 0.06;

  /** Punches reach so far from the page's edge, in millimetres: ISO 838 says 12, with some room. */
  private static final double PUNCHED = 20;

  /** There it is enough that so many of these parts of the circle are seen: print hides others. */
  private static final int PARTS = 36;

  private static final int SEEN = 15;

  /** Beside the page's outermost edge so far, in millimetres, what lies behind may be seen. */
  private static final double EDGE = 1.5;

  /** In OpenCV's nesting of outlines, where the one around is told; below 0 there is none. */
  private static final int PARENT = 3;

  /** Outlines so many levels further in belong to an outline: those of its gaps. */
  private static final int WITHIN = 1;

  private NoShot() {}

  /**
   * Takes them out of a map of openings.
   *
   * @param open 255 where it is surely open; 8-bit
   * @param pixelsPerMm of the map
   */
  public static void clear(Mat open, double pixelsPerMm) {
    try (Mats mats = new Mats()) {
      Mat set = mats.mat();
      Core.compare(open, new Scalar(128), set, Core.CMP_GE);
      List<MatOfPoint> outlines = new ArrayList<>();
      Mat nesting = mats.mat();
      Imgproc.findContours(set, outlines, nesting, Imgproc.RETR_CCOMP, Imgproc.CHAIN_APPROX_NONE);
      outlines.forEach(mats::own);
      for (int i = 0; i < outlines.size(); i++) {
        boolean outer = nesting.get(0, i)[PARENT] < 0;
        if (outer
            && (atEdge(outlines.get(i), open, EDGE * pixelsPerMm)
                || isPunched(outlines.get(i), pixelsPerMm)
                || isPartOfPunch(outlines.get(i), open, pixelsPerMm))) {
          // With the blurred rim, which is open in part.
          draw(open, outlines, i, Imgproc.FILLED, nesting);
          draw(open, outlines, i, (int) pixelsPerMm, nesting);
        }
      }
    }
  }

  /** Paper may be missing all around: what lies within is the page, and stays. */
  private static void draw(
      Mat open, List<MatOfPoint> outlines, int outline, int thickness, Mat nesting) {
    Imgproc.drawContours(
        open, outlines, outline, new Scalar(0), thickness, Imgproc.LINE_8, nesting, WITHIN);
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

  /**
   * Whether an outline near the page's edge is the part of a punched hole that print or something
   * dark behind leaves to be seen: most of its circle, and nothing outside of it.
   */
  private static boolean isPartOfPunch(MatOfPoint outline, Mat open, double pixelsPerMm) {
    if (!atEdge(outline, open, PUNCHED * pixelsPerMm)) {
      return false;
    }
    Point[] points = outline.toArray();
    int apart = points.length / 6;
    for (int i = 0; apart > 0 && i < points.length; i++) {
      Circle circle =
          through(
              points[i],
              points[(i + apart) % points.length],
              points[(i + 2 * apart) % points.length]);
      double diameter = 2 * circle.radius() / pixelsPerMm;
      if (diameter > LEAST_DIAMETER && diameter < MOST_DIAMETER && seen(circle, points) >= SEEN) {
        return true;
      }
    }
    return false;
  }

  /** How many parts of a circle an outline follows; none if it goes outside. */
  private static int seen(Circle circle, Point[] points) {
    boolean[] parts = new boolean[PARTS];
    double round = Math.max(ROUND, 1 / circle.radius());
    for (Point point : points) {
      double dx = point.x - circle.x();
      double dy = point.y - circle.y();
      double off = Math.hypot(dx, dy) / circle.radius() - 1;
      if (off > 2 * round) {
        return 0;
      }
      if (off > -round) {
        double turn = Math.atan2(dy, dx) / (2 * Math.PI) + 0.5;
        parts[(int) Math.min(PARTS - 1, turn * PARTS)] = true;
      }
    }
    int seen = 0;
    for (boolean part : parts) {
      seen += part ? 1 : 0;
    }
    return seen;
  }

  /** The circle through three places; of no size when they lie on a line. */
  private static Circle through(Point a, Point b, Point c) {
    double bx = b.x - a.x;
    double by = b.y - a.y;
    double cx = c.x - a.x;
    double cy = c.y - a.y;
    double twice = 2 * (bx * cy - by * cx);
    if (twice == 0) {
      return new Circle(a.x, a.y, 0);
    }
    double x = (cy * (bx * bx + by * by) - by * (cx * cx + cy * cy)) / twice;
    double y = (bx * (cx * cx + cy * cy) - cx * (bx * bx + by * by)) / twice;
    return new Circle(a.x + x, a.y + y, Math.hypot(x, y));
  }
}
