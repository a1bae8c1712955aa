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

  private final Surface surface;

  DrawnSurface() {
    NativeLibraries.load();
    surface =
        new Surface(
            Mat.zeros(SIDE, SIDE, CvType.CV_32F),
            Optional.empty(),
            Mat.zeros(SIDE, SIDE, CvType.CV_8U),
            Mat.zeros(SIDE, SIDE, CvType.CV_8U),
            Mat.zeros(SIDE, SIDE, CvType.CV_8U),
            new Rect(0, 0, SIDE, SIDE),
            0.01);
  }

  Surface surface() {
    return surface;
  }

  DrawnSurface disc(double x, double y, int radius, double darkness) {
    Imgproc.circle(surface.darkness(), new Point(x, y), radius, new Scalar(darkness), -1);
    return this;
  }

  DrawnSurface circle(double x, double y, int radius, double darkness) {
    Imgproc.circle(surface.darkness(), new Point(x, y), radius, new Scalar(darkness), 1);
    return this;
  }

  DrawnSurface line(double fromX, double fromY, double toX, double toY, double darkness) {
    Point from = new Point(fromX, fromY);
    Imgproc.line(surface.darkness(), from, new Point(toX, toY), new Scalar(darkness), 2);
    return this;
  }

  DrawnSurface area(double darkness, Point... corners) {
    MatOfPoint outline = new MatOfPoint(corners);
    Imgproc.fillConvexPoly(surface.darkness(), outline, new Scalar(darkness));
    outline.release();
    return this;
  }

  DrawnSurface hide(int x, int y, int width, int height) {
    Imgproc.rectangle(surface.hidden(), new Rect(x, y, width, height), new Scalar(255), -1);
    return this;
  }

  DrawnSurface cover(int x, int y, int width, int height) {
    Imgproc.rectangle(surface.covered(), new Rect(x, y, width, height), new Scalar(255), -1);
    return hide(x, y, width, height);
  }

  @Override
  public void close() {
    surface.close();
  }
}
