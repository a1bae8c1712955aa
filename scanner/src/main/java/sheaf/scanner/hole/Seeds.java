package sheaf.scanner.hole;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.opencv.core.Core;
import org.opencv.core.CvType;
import org.opencv.core.Mat;
import org.opencv.core.Rect;
import org.opencv.core.Scalar;
import org.opencv.core.Size;
import org.opencv.imgproc.Imgproc;
import sheaf.scanner.opencv.Mats;
import sheaf.scanner.sheet.FlatSheet;

/**
 * Places on a sheet where a hole may be.
 *
 * @param kind what the openings show
 * @param places strongest first
 */
record Seeds(Kind kind, List<Seed> places) {

  /** What is seen through the holes of a sheet. */
  enum Kind {
    /** The coloured backing. */
    COLOURED,
    /** Something much darker than paper. */
    DARK,
    /** Something about as bright as paper: only shading and a disturbed rim. */
    FAINT
  }

  /** A place where a hole may be, in pixels; strength 0 to 1. */
  record Seed(double x, double y, double strength) {}

  /** Openings narrower than this are tears, slits or pen strokes, in millimetres. */
  private static final double NARROW = 1.1;

  /** Radius over which openings are gathered: that of a thin shaft, in millimetres. */
  private static final double GATHER = 2;

  /** Share of the gathering disc that must be open: a hole closed by its flaps to a third. */
  private static final double LEAST_OPEN = 0.16;

  /** Share of the gathering disc that must be disturbed where openings are faint. */
  private static final double LEAST_DISTURBED = 0.38;

  /** Share of the gathering disc that must be free of print. */
  private static final double LEAST_FREE = 0.3;

  /** Darkness from which an opening may be seen, and from which it is sure. */
  private static final double DARK_FROM = 0.3;

  private static final double DARK_FULL = 0.5;

  /** Shading weaker than this share of the paper's tone is the paper's own unevenness. */
  private static final double LEAST_SHADE = 0.012;

  /** Side of a box whose double average is as wide as a disc of radius 1. */
  private static final double BOX = 1.22;

  /** Shading counts fully when it differs from paper by this. */
  private static final double SHADED = 0.08;

  /** Seeds are sought on a picture reduced by this: a hole is still more than 20 pixels wide. */
  private static final int REDUCTION = 2;

  /** Looks for the most telling kind of opening first. */
  static Seeds find(Surface surface, Rect target, double noise) {
    try (Mats mats = new Mats()) {
      Mat free = free(reduced(surface.known(), mats), mats);
      if (surface.backing().isPresent()) {
        List<Seed> coloured = wide(reduced(surface.backing().get(), mats), free, mats);
        if (!coloured.isEmpty()) {
          return new Seeds(Kind.COLOURED, coloured);
        }
      }
      Mat darkness = reduced(surface.darkness(), mats);
      List<Seed> dark = wide(ramp(darkness, DARK_FROM, DARK_FULL, mats), free, mats);
      if (!dark.isEmpty()) {
        return new Seeds(Kind.DARK, dark);
      }
      // Shading is everywhere near print and paper edges, so it is sought on the target alone.
      Core.multiply(free, target(free, target, mats), free);
      return new Seeds(Kind.FAINT, disturbed(darkness, free, noise, mats));
    }
  }

  /** 1 on the target, 0 elsewhere. */
  private static Mat target(Mat free, Rect target, Mats mats) {
    Mat inside = mats.own(Mat.zeros(free.size(), CvType.CV_32F));
    Rect small =
        new Rect(
            target.x / REDUCTION,
            target.y / REDUCTION,
            target.width / REDUCTION,
            target.height / REDUCTION);
    Imgproc.rectangle(inside, small, new Scalar(1), -1);
    return inside;
  }

  private static Mat reduced(Mat map, Mats mats) {
    Mat small = mats.mat();
    double scale = 1.0 / REDUCTION;
    Imgproc.resize(map, small, new Size(), scale, scale, Imgproc.INTER_AREA);
    return small;
  }

  /** Openings too wide for a tear, a slit or a pen stroke. */
  private static List<Seed> wide(Mat open, Mat free, Mats mats) {
    Mat seen = mats.mat();
    Core.multiply(open, free, seen);
    Mat bytes = mats.mat();
    seen.convertTo(bytes, CvType.CV_8U, 255);
    Mat wide = mats.mat();
    Imgproc.morphologyEx(bytes, wide, Imgproc.MORPH_OPEN, disc(NARROW, mats));
    wide.convertTo(wide, CvType.CV_32F, 1.0 / 255);
    return peaks(wide, free, LEAST_OPEN, mats);
  }

  /** Where paper differs from plain paper, however little. */
  private static List<Seed> disturbed(Mat darkness, Mat free, double noise, Mats mats) {
    Mat size = mats.mat();
    Imgproc.GaussianBlur(darkness, size, new Size(0, 0), 1);
    Core.absdiff(size, new Scalar(0), size);
    double floor = Math.max(LEAST_SHADE, 1.2 * noise);
    Mat disturbed = ramp(size, floor, floor + SHADED, mats);
    Core.multiply(disturbed, free, disturbed);
    return peaks(disturbed, free, LEAST_DISTURBED, mats);
  }

  /** 1 where no print is known, else 0. */
  private static Mat free(Mat known, Mats mats) {
    Mat free = mats.mat();
    known.convertTo(free, CvType.CV_32F, -1.0 / 255, 1);
    return free;
  }

  /** 0 up to {@code from}, 1 beyond {@code full}, straight between. */
  private static Mat ramp(Mat map, double from, double full, Mats mats) {
    Mat ramp = mats.mat();
    double gain = 1 / (full - from);
    map.convertTo(ramp, CvType.CV_32F, gain, -from * gain);
    Core.max(ramp, new Scalar(0), ramp);
    Core.min(ramp, new Scalar(1), ramp);
    return ramp;
  }

  /** Where most of a disc is open, as a share of what of it is free of print. */
  private static List<Seed> peaks(Mat open, Mat free, double least, Mats mats) {
    Mat gathered = gather(open, mats);
    Mat room = gather(free, mats);
    Core.max(room, new Scalar(LEAST_FREE), room);
    Core.divide(gathered, room, gathered);
    Mat highest = mats.mat();
    Imgproc.dilate(gathered, highest, disc(GATHER, mats));
    Mat top = mats.mat();
    Core.compare(gathered, highest, top, Core.CMP_GE);
    Mat strong = mats.mat();
    Core.compare(gathered, new Scalar(least), strong, Core.CMP_GE);
    Core.bitwise_and(top, strong, top);
    return seeds(top, gathered, mats);
  }

  /** Two box averages come close to the average over a disc at a fraction of the cost. */
  private static Mat gather(Mat map, Mats mats) {
    int size = pixels(GATHER * BOX) | 1;
    Mat once = mats.mat();
    Imgproc.blur(map, once, new Size(size, size));
    Mat twice = mats.mat();
    Imgproc.blur(once, twice, new Size(size, size));
    return twice;
  }

  private static Mat disc(double diameter, Mats mats) {
    int size = pixels(diameter) | 1;
    return mats.own(Imgproc.getStructuringElement(Imgproc.MORPH_ELLIPSE, new Size(size, size)));
  }

  private static List<Seed> seeds(Mat top, Mat gathered, Mats mats) {
    Mat labels = mats.mat();
    Mat stats = mats.mat();
    Mat centres = mats.mat();
    int count = Imgproc.connectedComponentsWithStats(top, labels, stats, centres);
    List<Seed> seeds = new ArrayList<>();
    for (int i = 1; i < count; i++) {
      double x = centres.get(i, 0)[0];
      double y = centres.get(i, 1)[0];
      double strength = gathered.get((int) y, (int) x)[0];
      // Back to the middle of the block of pixels that was averaged.
      seeds.add(new Seed((x + 0.5) * REDUCTION - 0.5, (y + 0.5) * REDUCTION - 0.5, strength));
    }
    seeds.sort(Comparator.comparingDouble(Seed::strength).reversed());
    return List.copyOf(seeds);
  }

  private static int pixels(double mm) {
    return (int) Math.round(mm * FlatSheet.PIXELS_PER_MM / REDUCTION);
  }
}
