package sheaf.scanner.sheet;

import java.lang.ref.Reference;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.opencv.core.Mat;
import org.opencv.core.MatOfPoint;
import org.opencv.core.MatOfPoint2f;
import org.opencv.core.Point;
import org.opencv.core.Rect;
import org.opencv.core.Size;
import org.opencv.core.TermCriteria;
import org.opencv.imgproc.Imgproc;
import org.opencv.objdetect.ArucoDetector;
import org.opencv.objdetect.DetectorParameters;
import org.opencv.objdetect.Objdetect;
import sheaf.core.layout.MarkFamily;
import sheaf.core.layout.RegisterMark;
import sheaf.scanner.opencv.Mats;

/** Finds register marks: on a reduced picture first, their corners then in the full one. */
final class MarkFinder {

  /**
   * Long sides of the reduced picture in pixels, about, tried in turn until enough marks are seen:
   * a mark is then 80 pixels wide on a page that fills the picture, and 40 on one that fills half.
   */
  private static final int[] LONG_SIDES = {1600, 2800, 1000};

  /** Marks that make it needless to look again at another size. */
  private static final int ENOUGH = MarkFamily.MARKS - 1;

  /** Half the corner search window, as a share of the mark's side: under half a cell. */
  private static final double SEARCH = 0.4 / RegisterMark.CELLS;

  private static final TermCriteria REFINED =
      new TermCriteria(TermCriteria.EPS + TermCriteria.COUNT, 30, 0.01);

  private MarkFinder() {}

  /** All marks of our family of tags that are seen in a picture, grey or colour. */
  static List<SeenMark> find(Mat picture) {
    List<SeenMark> best = List.of();
    for (int side : LONG_SIDES) {
      List<SeenMark> seen = at(picture, side);
      if (seen.size() > best.size()) {
        best = seen;
      }
      if (best.size() >= ENOUGH) {
        return best;
      }
    }
    return best;
  }

  /** Whether any mark is seen at a first look. */
  static boolean seesAny(Mat picture) {
    return !at(picture, LONG_SIDES[0]).isEmpty();
  }

  private static List<SeenMark> at(Mat picture, int longSide) {
    // Whole factors are averaged ten times as fast as others.
    double scale =
        1.0 / Math.max(1, Math.round(Math.max(picture.cols(), picture.rows()) / (double) longSide));
    try (Mats mats = new Mats()) {
      Mat small = grey(picture, mats);
      if (scale < 1) {
        Mat large = small;
        small = mats.mat();
        Imgproc.resize(large, small, new Size(), scale, scale, Imgproc.INTER_AREA);
      }
      List<Mat> corners = new ArrayList<>();
      Mat ids = mats.mat();
      ArucoDetector detector = detector();
      detector.detectMarkers(small, corners, ids);
      // Native code works on it for long; its finalizer must not free it meanwhile.
      Reference.reachabilityFence(detector);
      corners.forEach(mats::own);
      List<SeenMark> seen = new ArrayList<>();
      for (int i = 0; i < corners.size(); i++) {
        int tag = (int) ids.get(i, 0)[0];
        if (MarkFamily.ofTag(tag).isPresent()) {
          seen.add(new SeenMark(tag, refine(picture, corners.get(i), scale)));
        }
      }
      return seen;
    }
  }

  /** A picture without its colours; the same when it has none. */
  private static Mat grey(Mat picture, Mats mats) {
    if (picture.channels() == 1) {
      return picture;
    }
    Mat grey = mats.mat();
    Imgproc.cvtColor(picture, grey, Imgproc.COLOR_BGR2GRAY);
    return grey;
  }

  private static ArucoDetector detector() {
    DetectorParameters parameters = new DetectorParameters();
    parameters.set_adaptiveThreshWinSizeMin(23);
    parameters.set_adaptiveThreshWinSizeMax(23);
    parameters.set_minMarkerPerimeterRate(0.03);
    return new ArucoDetector(
        Objdetect.getPredefinedDictionary(Objdetect.DICT_APRILTAG_36h11), parameters);
  }

  /** Finds a mark's corners to a fraction of a pixel, looking at nothing else of the picture. */
  private static List<Point> refine(Mat picture, Mat corners, double scale) {
    try (Mats mats = new Mats()) {
      Point[] full = new Point[4];
      for (int i = 0; i < full.length; i++) {
        double[] xy = corners.get(0, i);
        // Pixel centres, not pixel corners, are whole numbers in both pictures.
        full[i] = new Point((xy[0] + 0.5) / scale - 0.5, (xy[1] + 0.5) / scale - 0.5);
      }
      double side = Math.hypot(full[1].x - full[0].x, full[1].y - full[0].y);
      int window = (int) Math.max(2, Math.round(side * SEARCH));
      Rect around = around(full, 3 * window, picture, mats);
      Mat part = grey(mats.own(picture.submat(around)), mats);
      MatOfPoint2f refined = mats.own(new MatOfPoint2f(moved(full, -around.x, -around.y)));
      Imgproc.cornerSubPix(part, refined, new Size(window, window), new Size(-1, -1), REFINED);
      return List.of(moved(refined.toArray(), around.x, around.y));
    }
  }

  /** The rectangle around some points and a margin, as far as it is in the picture. */
  private static Rect around(Point[] points, int margin, Mat picture, Mats mats) {
    Rect tight = Imgproc.boundingRect(mats.own(new MatOfPoint(points)));
    int left = Math.max(0, tight.x - margin);
    int top = Math.max(0, tight.y - margin);
    int right = Math.min(picture.cols(), tight.x + tight.width + margin);
    int bottom = Math.min(picture.rows(), tight.y + tight.height + margin);
    return new Rect(left, top, right - left, bottom - top);
  }

  private static Point[] moved(Point[] points, int x, int y) {
    return Arrays.stream(points).map(p -> new Point(p.x + x, p.y + y)).toArray(Point[]::new);
  }
}
