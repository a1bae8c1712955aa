package sheaf.scanner.sheet;

import java.lang.ref.Reference;
import java.util.ArrayList;
import java.util.List;
import org.opencv.core.Mat;
import org.opencv.core.MatOfPoint2f;
import org.opencv.core.Point;
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

  /** All marks of our family of tags that are seen in a grey picture. */
  static List<SeenMark> find(Mat grey) {
    List<SeenMark> best = List.of();
    for (int side : LONG_SIDES) {
      List<SeenMark> seen = at(grey, side);
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
  static boolean seesAny(Mat grey) {
    return !at(grey, LONG_SIDES[0]).isEmpty();
  }

  private static List<SeenMark> at(Mat grey, int longSide) {
    // Whole factors are averaged ten times as fast as others.
    double scale =
        1.0 / Math.max(1, Math.round(Math.max(grey.cols(), grey.rows()) / (double) longSide));
    try (Mats mats = new Mats()) {
      Mat small = grey;
      if (scale < 1) {
        small = mats.mat();
        Imgproc.resize(grey, small, new Size(), scale, scale, Imgproc.INTER_AREA);
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
          seen.add(new SeenMark(tag, refine(grey, corners.get(i), scale)));
        }
      }
      return seen;
    }
  }

  private static ArucoDetector detector() {
    DetectorParameters parameters = new DetectorParameters();
    parameters.set_adaptiveThreshWinSizeMin(23);
    parameters.set_adaptiveThreshWinSizeMax(23);
    parameters.set_minMarkerPerimeterRate(0.03);
    return new ArucoDetector(
        Objdetect.getPredefinedDictionary(Objdetect.DICT_APRILTAG_36h11), parameters);
  }

  private static List<Point> refine(Mat grey, Mat corners, double scale) {
    try (Mats mats = new Mats()) {
      Point[] full = new Point[4];
      for (int i = 0; i < full.length; i++) {
        double[] xy = corners.get(0, i);
        // Pixel centres, not pixel corners, are whole numbers in both pictures.
        full[i] = new Point((xy[0] + 0.5) / scale - 0.5, (xy[1] + 0.5) / scale - 0.5);
      }
      double side = Math.hypot(full[1].x - full[0].x, full[1].y - full[0].y);
      int window = (int) Math.max(2, Math.round(side * SEARCH));
      MatOfPoint2f refined = mats.own(new MatOfPoint2f(full));
      Imgproc.cornerSubPix(grey, refined, new Size(window, window), new Size(-1, -1), REFINED);
      return List.of(refined.toArray());
    }
  }
}
