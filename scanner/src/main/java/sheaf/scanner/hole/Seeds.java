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
 * @param map how surely a place is open or disturbed, 0 to 1, reduced by {@link #REDUCTION}; 32-bit
 * @param free 1 where that can be told, 0 where print hides it, reduced alike; 32-bit
 * @param places strongest first, in pixels of the whole sheet
 */
record Seeds(Kind kind, Mat map, Mat free, List<Seed> places) implements AutoCloseable {

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
  private static final double NARROW = 0.8;

  /** Radius over which openings are gathered: that of a thin shaft, in millimetres. */
  private static final double GATHER = 2;

  /** The same where only the torn rim is seen, which must lie within. */
  private static final double GATHER_RIM = 3;

  /** Share of the gathering disc that must be open: a hole closed by its flaps to a third. */
  private static final double LEAST_OPEN = 0.16;

  /** Share of the gathering disc that must be disturbed where openings are faint. */
  private static final double LEAST_DISTURBED = 0.2;

  /** Share of the gathering disc that must be free of print. */
  private static final double LEAST_FREE = 0.3;

  /** Outermost edge of the page, beside which backing may be seen, in millimetres. */
  private static final double EDGE = 5;

  /** Shading weaker than this share of the paper's tone is the paper's own unevenness. */
  private static final double LEAST_SHADE = 0.008;

  /** Edges are what a narrow blur keeps and a wide one does not; in reduced pixels. */
  private static final double FINE = 0.7;

  private static final double COARSE = 4;

  private static final double SMOOTH = 2.5;

  /** What lies behind differs in tone from paper by this: perhaps, and surely. */
  private static final double TONE_FROM = 0.025;

  private static final double TONE_FULL = 0.055;

  /**
   * Some opening must be wider than this for the sheet to be one whose openings are dark: pens and
   * scribbles never are. In millimetres.
   */
  private static final double SURELY_WIDE = 1.9;

  /** Shading counts fully when it differs from paper by this. */
  private static final double SHADED = 0.05;

  /** Seeds are sought on a picture reduced by this: a hole is still more than 20 pixels wide. */
  static final int REDUCTION = 2;

  /** Looks for the most telling kind of opening first, and settles what print means for it. */
  static Seeds find(Surface surface, ArrowsShot shot) {
    try (Mats mats = new Mats()) {
      if (surface.backing().isPresent()) {
        // No print has the backing's colour, so print hides nothing; beside the page it is seen
        // too.
        Mat backing = reduced(surface.backing().get(), mats);
        Seeds coloured = wide(Kind.COLOURED, backing, page(backing.size(), mats), 1, mats);
        if (!coloured.places().isEmpty()) {
          return coloured;
        }
        coloured.close();
      }
      Mat hidden = mats.mat();
      Core.bitwise_or(surface.covered(), surface.solid(), hidden);
      Mat darkness = reduced(surface.darkness(), mats);
      Mat free = free(reduced(hidden, mats), mats);
      // A scribble may have a wide spot or two; holes are as many as the arrows.
      int least = Math.max(1, shot.all().orElse(1) / 2);
      Seeds dark =
          wide(
              Kind.DARK,
              ramp(darkness, Closeup.DARK_FROM, Closeup.DARK_FULL, mats),
              free,
              least,
              mats);
      if (!dark.places().isEmpty()) {
        surface.hidePrint();
        return dark;
      }
      dark.close();
      return faint(surface, mats);
    }
  }

  private static Seeds faint(Surface surface, Mats mats) {
    surface.hideWriting();
    surface.subtractPrint();
    Mat free = free(reduced(surface.hidden(), mats), mats);
    // Shading is everywhere near print and paper edges, so it is sought on the target alone.
    Core.multiply(free, target(free, surface.target(), mats), free);
    return disturbed(reduced(surface.darkness(), mats), free, surface.noise(), mats);
  }

  /** 1 on the page but for its outermost edge. */
  private static Mat page(Size size, Mats mats) {
    Mat page = mats.own(Mat.zeros(size, CvType.CV_32F));
    int edge = pixels(EDGE);
    Rect inside = new Rect(edge, edge, (int) size.width - 2 * edge, (int) size.height - 2 * edge);
    Imgproc.rectangle(page, inside, new Scalar(1), -1);
    return page;
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
  private static Seeds wide(Kind kind, Mat open, Mat free, int least, Mats mats) {
    Mat bytes = mats.mat();
    open.convertTo(bytes, CvType.CV_8U, 255);
    Mat freeBytes = mats.mat();
    free.convertTo(freeBytes, CvType.CV_8U);
    // Print is taken out only afterwards: it would cut a hole that lies on it into narrow parts.
    Mat wide = mats.mat();
    Imgproc.morphologyEx(bytes, wide, Imgproc.MORPH_OPEN, disc(SURELY_WIDE, mats));
    Core.multiply(wide, freeBytes, wide);
    boolean none = spots(wide, mats) < least;
    Imgproc.morphologyEx(bytes, wide, Imgproc.MORPH_OPEN, disc(NARROW, mats));
    NoShot.clear(wide, FlatSheet.PIXELS_PER_MM / REDUCTION);
    Core.multiply(wide, freeBytes, wide);
    Mat map = new Mat();
    wide.convertTo(map, CvType.CV_32F, 1.0 / 255);
    List<Seed> places = none ? List.of() : peaks(map, free, GATHER, LEAST_OPEN, mats);
    return new Seeds(kind, map, free.clone(), places);
  }

  /** How many separate places are set. */
  private static int spots(Mat bytes, Mats mats) {
    Mat set = mats.mat();
    Core.compare(bytes, new Scalar(128), set, Core.CMP_GE);
    return Imgproc.connectedComponents(set, mats.mat()) - 1;
  }

  /** Where paper is torn: edges of all strengths, however bright what lies behind. */
  private static Seeds disturbed(Mat darkness, Mat free, double noise, Mats mats) {
    // Hidden places count as plain paper, or print would spread its own edges around.
    Mat plain = mats.mat();
    Core.multiply(darkness, free, plain);
    Mat fine = mats.mat();
    Imgproc.GaussianBlur(plain, fine, new Size(0, 0), FINE);
    Mat coarse = mats.mat();
    Imgproc.GaussianBlur(plain, coarse, new Size(0, 0), COARSE);
    Mat edges = mats.mat();
    Core.absdiff(fine, coarse, edges);
    double floor = Math.max(LEAST_SHADE, noise);
    Mat disturbed = ramp(edges, floor, floor + SHADED, mats);
    Mat shaded = mats.mat();
    Core.absdiff(coarseShade(plain, mats), new Scalar(0), shaded);
    Core.max(disturbed, ramp(shaded, TONE_FROM, TONE_FULL, mats), disturbed);
    Mat map = new Mat();
    Core.multiply(disturbed, free, map);
    return new Seeds(
        Kind.FAINT, map, free.clone(), peaks(map, free, GATHER_RIM, LEAST_DISTURBED, mats));
  }

  /** The tone over about a millimetre, in which grain and mottle even out. */
  private static Mat coarseShade(Mat darkness, Mats mats) {
    Mat shade = mats.mat();
    Imgproc.GaussianBlur(darkness, shade, new Size(0, 0), SMOOTH);
    return shade;
  }

  /** 1 where nothing is hidden, else 0. */
  private static Mat free(Mat hidden, Mats mats) {
    Mat bytes = mats.mat();
    Core.compare(hidden, new Scalar(0), bytes, Core.CMP_EQ);
    Mat free = mats.mat();
    bytes.convertTo(free, CvType.CV_32F, 1.0 / 255);
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
  private static List<Seed> peaks(Mat open, Mat free, double radius, double least, Mats mats) {
    Mat gathered = gather(open, radius, mats);
    Mat room = gather(free, radius, mats);
    Core.max(room, new Scalar(LEAST_FREE), room);
    Core.divide(gathered, room, gathered);
    Mat highest = mats.mat();
    Imgproc.dilate(gathered, highest, disc(radius, mats));
    Mat top = mats.mat();
    Core.compare(gathered, highest, top, Core.CMP_GE);
    Mat strong = mats.mat();
    Core.compare(gathered, new Scalar(least), strong, Core.CMP_GE);
    Core.bitwise_and(top, strong, top);
    return seeds(top, gathered, mats);
  }

  /** A box average counts everything within its reach alike, the rim as much as the middle. */
  private static Mat gather(Mat map, double radius, Mats mats) {
    int size = pixels(2 * radius) | 1;
    Mat gathered = mats.mat();
    Imgproc.blur(map, gathered, new Size(size, size));
    return gathered;
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

  @Override
  public void close() {
    map.release();
    free.release();
  }
}
