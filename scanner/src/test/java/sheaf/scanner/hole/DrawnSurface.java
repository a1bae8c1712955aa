package sheaf.scanner.hole;

import java.util.Optional;
import org.opencv.core.CvType;
import org.opencv.core.Mat;
import org.opencv.core.MatOfPoint;
import org.opencv.core.Point;
import org.opencv.core.Rect;
import org.opencv.core.Scalar;
import org.opencv.imgproc.Imgproc;
import sheaf.scanner.opencv.NativeLibraries;

/** A flat sheet's surface, 40 mm square, drawn for a test. */
final class DrawnSurface implements AutoCloseable {

  static final int SIDE = 400;

  /** The paper's tone: shares of it that are drawn are whole grey levels. */
  private static final double PAPER = 200;

  private final Mat grey;
  private final Mat hidden;
  private final Mat covered;
  private final Mat solid;

  DrawnSurface() {
    NativeLibraries.load();
    grey = new Mat(SIDE, SIDE, CvType.CV_8U, tone(0));
    hidden = Mat.zeros(SIDE, SIDE, CvType.CV_8U);
    covered = Mat.zeros(SIDE, SIDE, CvType.CV_8U);
    solid = Mat.zeros(SIDE, SIDE, CvType.CV_8U);
  }

  /** The surface as drawn so far. */
  Surface surface() {
    Rect all = new Rect(0, 0, SIDE, SIDE);
    return new Surface(grey, Optional.empty(), new KnownInk(hidden, covered, solid), all, all);
  }

  private static Scalar tone(double darkness) {
    return new Scalar(Math.rint(PAPER * (1 - darkness)));
  }

  DrawnSurface disc(double x, double y, int radius, double darkness) {
    Imgproc.circle(grey, new Point(x, y), radius, tone(darkness), -1);
    return this;
  }

  DrawnSurface circle(double x, double y, int radius, double darkness) {
    Imgproc.circle(grey, new Point(x, y), radius, tone(darkness), 1);
    return this;
  }

  DrawnSurface line(double fromX, double fromY, double toX, double toY, double darkness) {
    Point from = new Point(fromX, fromY);
    Imgproc.line(grey, from, new Point(toX, toY), tone(darkness), 2);
    return this;
  }

  DrawnSurface area(double darkness, Point... corners) {
    MatOfPoint outline = new MatOfPoint(corners);
    Imgproc.fillConvexPoly(grey, outline, tone(darkness));
    outline.release();
    return this;
  }

  DrawnSurface hide(int x, int y, int width, int height) {
    Imgproc.rectangle(hidden, new Rect(x, y, width, height), new Scalar(255), -1);
    return this;
  }

  DrawnSurface cover(int x, int y, int width, int height) {
    Imgproc.rectangle(covered, new Rect(x, y, width, height), new Scalar(255), -1);
    return hide(x, y, width, height);
  }

  @Override
  public void close() {
    grey.release();
    hidden.release();
    covered.release();
    solid.release();
  }
}
