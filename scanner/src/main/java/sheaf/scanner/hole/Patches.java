package sheaf.scanner.hole;

import java.util.ArrayList;
import java.util.List;
import org.opencv.core.Mat;
import org.opencv.core.MatOfPoint;
import org.opencv.core.Rect;
import org.opencv.imgproc.Imgproc;
import sheaf.scanner.opencv.Mats;

/** The parts of a map in which something is: of most sheets they are a hundredth. */
final class Patches {

  private Patches() {}

  /**
   * Rectangles that hold everything above zero, none of which overlap.
   *
   * @param map 8-bit
   * @param margin in pixels that each reaches farther, as far as the map goes
   */
  static List<Rect> of(Mat map, int margin) {
    List<Rect> patches = new ArrayList<>();
    try (Mats mats = new Mats()) {
      List<MatOfPoint> outlines = new ArrayList<>();
      Imgproc.findContours(
          map, outlines, mats.mat(), Imgproc.RETR_EXTERNAL, Imgproc.CHAIN_APPROX_SIMPLE);
      for (MatOfPoint outline : outlines) {
        add(grown(Imgproc.boundingRect(mats.own(outline)), margin, map), patches);
      }
    }
    return patches;
  }

  private static Rect grown(Rect rect, int margin, Mat map) {
    int left = Math.max(0, rect.x - margin);
    int top = Math.max(0, rect.y - margin);
    int right = Math.min(map.cols(), rect.x + rect.width + margin);
    int bottom = Math.min(map.rows(), rect.y + rect.height + margin);
    return new Rect(left, top, right - left, bottom - top);
  }

  /** What overlaps becomes one, which may overlap others in turn. */
  private static void add(Rect patch, List<Rect> patches) {
    Rect grown = patch;
    int i = 0;
    while (i < patches.size()) {
      if (overlap(grown, patches.get(i))) {
        grown = around(grown, patches.remove(i));
        i = 0;
      } else {
        i++;
      }
    }
    patches.add(grown);
  }

  private static boolean overlap(Rect one, Rect other) {
    return one.x < other.x + other.width
        && other.x < one.x + one.width
        && one.y < other.y + other.height
        && other.y < one.y + one.height;
  }

  private static Rect around(Rect one, Rect other) {
    int left = Math.min(one.x, other.x);
    int top = Math.min(one.y, other.y);
    int right = Math.max(one.x + one.width, other.x + other.width);
    int bottom = Math.max(one.y + one.height, other.y + other.height);
    return new Rect(left, top, right - left, bottom - top);
  }
}
