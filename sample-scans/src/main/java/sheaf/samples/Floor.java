package sheaf.samples;

import java.util.ArrayList;
import java.util.List;
import org.opencv.core.CvType;
import org.opencv.core.Mat;
import org.opencv.core.MatOfByte;
import org.opencv.core.MatOfPoint2f;
import org.opencv.core.Point;
import org.opencv.core.Size;
import org.opencv.core.TermCriteria;
import org.opencv.imgcodecs.Imgcodecs;
import org.opencv.imgproc.Imgproc;
import org.opencv.objdetect.ArucoDetector;
import org.opencv.objdetect.DetectorParameters;
import org.opencv.objdetect.Objdetect;

/**
 * What reading any picture of a sheet costs at least, in plain OpenCV calls: decoding it, finding
 * its register marks (on half its size, their corners then in full), and one warp of it to ten
 * pixels a millimetre of a letter page. A colour picture is decoded and warped in colour.
 *
 * <p>It is a yardstick: the warp is a plain perspective through the marks' outermost corners, and
 * nothing is told of what is seen.
 */
final class Floor {

  private static final Size LETTER = new Size(2159, 2794);

  private static final double HALF = 0.5;

  /** Half the window in which a corner is sought, in pixels: under half a cell of a mark. */
  private static final int WINDOW = 6;

  private Floor() {}

  /** Does the work once; returns how many marks it saw. */
  static int of(byte[] file, boolean colour) {
    MatOfByte bytes = new MatOfByte(file);
    Mat picture =
        Imgcodecs.imdecode(bytes, colour ? Imgcodecs.IMREAD_COLOR : Imgcodecs.IMREAD_GRAYSCALE);
    Mat grey = picture;
    if (colour) {
      grey = new Mat();
      Imgproc.cvtColor(picture, grey, Imgproc.COLOR_BGR2GRAY);
    }
    List<Point> corners = corners(grey);
    Mat flat = warp(picture, corners);
    int marks = corners.size() / 4;
    flat.release();
    if (colour) {
      grey.release();
    }
    picture.release();
    bytes.release();
    return marks;
  }

  private static List<Point> corners(Mat grey) {
    Mat half = new Mat();
    Imgproc.resize(grey, half, new Size(), HALF, HALF, Imgproc.INTER_AREA);
    DetectorParameters parameters = new DetectorParameters();
    parameters.set_adaptiveThreshWinSizeMin(23);
    parameters.set_adaptiveThreshWinSizeMax(23);
    List<Mat> marks = new ArrayList<>();
    Mat ids = new Mat();
    new ArucoDetector(Objdetect.getPredefinedDictionary(Objdetect.DICT_APRILTAG_36h11), parameters)
        .detectMarkers(half, marks, ids);
    List<Point> corners = new ArrayList<>();
    for (Mat mark : marks) {
      for (int i = 0; i < 4; i++) {
        double[] xy = mark.get(0, i);
        corners.add(new Point(xy[0] / HALF, xy[1] / HALF));
      }
      mark.release();
    }
    MatOfPoint2f refined = new MatOfPoint2f(corners.toArray(Point[]::new));
    Imgproc.cornerSubPix(
        grey,
        refined,
        new Size(WINDOW, WINDOW),
        new Size(-1, -1),
        new TermCriteria(TermCriteria.EPS + TermCriteria.COUNT, 30, 0.01));
    List<Point> found = refined.toList();
    refined.release();
    ids.release();
    half.release();
    return found;
  }

  /** From the outermost corners of the marks to those of the page. */
  private static Mat warp(Mat picture, List<Point> corners) {
    MatOfPoint2f from =
        new MatOfPoint2f(
            farthest(corners, -1, -1),
            farthest(corners, 1, -1),
            farthest(corners, 1, 1),
            farthest(corners, -1, 1));
    double right = LETTER.width - 1;
    double bottom = LETTER.height - 1;
    MatOfPoint2f to =
        new MatOfPoint2f(
            new Point(0, 0), new Point(right, 0), new Point(right, bottom), new Point(0, bottom));
    Mat map = Imgproc.getPerspectiveTransform(from, to);
    Mat flat = new Mat(LETTER, CvType.makeType(CvType.CV_8U, picture.channels()));
    Imgproc.warpPerspective(picture, flat, map, LETTER, Imgproc.INTER_LINEAR);
    map.release();
    from.release();
    to.release();
    return flat;
  }

  private static Point farthest(List<Point> corners, int right, int down) {
    Point best = corners.get(0);
    for (Point corner : corners) {
      if (right * corner.x + down * corner.y > right * best.x + down * best.y) {
        best = corner;
      }
    }
    return best;
  }
}
