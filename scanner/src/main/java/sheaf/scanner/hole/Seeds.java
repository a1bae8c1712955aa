package sheaf.scanner.hole;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.opencv.core.Core;
import org.opencv.core.CvType;
import org.opencv.core.Mat;
import org.opencv.core.Point;
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
 * @param map how surely a place is open or disturbed, reduced by {@link #REDUCTION}: 0 to 255 in
 *     bytes, or 0 to 1 in 32 bits
 * @param free full where that can be told, 0 where print hides it, reduced and stored alike
 * @param places strongest first, in pixels of the whole sheet
 */
public record Seeds(Kind kind, Mat map, Mat free, List<Seed> places) implements AutoCloseable {

  /** What is seen through the holes of a sheet. */
  public enum Kind {
    /** The coloured backing. */
    COLOURED,
    /** Something much darker than paper. */
    DARK,
    /** Something about as bright as paper: only shading and a disturbed rim. */
    FAINT
  }

  /** A place where a hole may be, in pixels; strength 0 to 1. */
  public record Seed(double x, double y, double strength) {}

  /** Openings narrower than this are tears, slits or pen strokes, in millimetres. */
  private static final double NARROW = 0.8;

  /** Radius over which openings are gathered: that of a thin shaft, in millimetres. */
  private static final double GATHER = 2;

  /** The same where only the torn rim is seen, which must lie within. */
  private static final double GATHER_RIM = 3;

  /** Share of the gathering disc that must be open: a hole closed by its flaps to a third. */
  private static final double LEAST_OPEN = 0.16;

  /** The same of what a hole leaves open beside others that overlap it. */
  private static final double LEAST_LEFT = 0.07;

  /** What is open within this share of a hole's radius is that hole. */
  private static final double TAKEN = 0.95;

  /** Share of the gathering disc that must be disturbed where openings are faint. */
  private static final double LEAST_DISTURBED = 0.2;

  /** Share of the gathering disc that must be free of print. */
  private static final double LEAST_FREE = 0.3;

  /**
   * Outermost edge of the page in millimetres, as far in as the marks: there what lies behind may
   * be seen beside it, and pins hold it.
   */
  private static final double EDGE = 9;

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
  public static final int REDUCTION = 2;

  /** Looks for the most telling kind of opening first, and settles what print means for it. */
  public static Seeds find(Surface surface, ArrowsShot shot) {
    try (Mats mats = new Mats()) {
      boolean weak = surface.behind().filter(BehindMap::isWeak).isPresent();
      if (surface.behind().isPresent() && !weak) {
        Seeds coloured = coloured(surface, mats);
        if (!coloured.places().isEmpty()) {
          return coloured;
        }
        coloured.close();
      }
      // A scribble may have a wide spot or two; holes are as many as the arrows.
      int least = Math.max(1, shot.all().orElse(1) / 2);
      Seeds dark =
          wide(
              Kind.DARK,
              mats.own(surface.halfDark(Closeup.DARK_FROM, Closeup.DARK_FULL)),
              mats.own(surface.free(KnownInk.COVERED | KnownInk.SOLID)),
              least,
              mats);
      if (!dark.places().isEmpty()) {
        surface.hidePrint();
        return dark;
      }
      dark.close();
      return weak ? coloured(surface, mats) : faint(surface, mats);
    }
  }

  /**
   * No print has the colour that lies behind, so print hides nothing. A weak one may be a pen's
   * too, so it is sought on the target alone and not where boxes are ticked.
   */
  private static Seeds coloured(Surface surface, Mats mats) {
    BehindMap behind = surface.behind().orElseThrow();
    Mat backing = mats.own(behind.half());
    Mat page = page(backing.size(), mats);
    if (behind.isWeak()) {
      page.setTo(new Scalar(0));
      Imgproc.rectangle(page, reduced(surface.sought()), new Scalar(255), Imgproc.FILLED);
    }
    return wide(Kind.COLOURED, bytes(backing, 0, 1, mats), page, 1, mats);
  }

  private static Seeds faint(Surface surface, Mats mats) {
    Mat darkness = mats.own(surface.halfDarkness());
    Mat free = mats.own(surface.halfPaper(Kind.FAINT, darkness));
    // Shading is everywhere near print and paper edges, so it is sought on the target alone.
    Rect target = reduced(surface.sought());
    Mat sought = mats.own(Mat.zeros(free.size(), CvType.CV_8U));
    mats.own(free.submat(target)).copyTo(mats.own(sought.submat(target)));
    return disturbed(darkness, sought, target, surface.noise(), mats);
  }

  private static Rect reduced(Rect rect) {
    return new Rect(
        rect.x / REDUCTION, rect.y / REDUCTION, rect.width / REDUCTION, rect.height / REDUCTION);
  }

  /** Places where the openings go on beyond the circles of holes already found. */
  Seeds beside(List<Circle> found) {
    Mat rest = map.clone();
    for (Circle circle : found) {
      Point centre = new Point(circle.x() / REDUCTION, circle.y() / REDUCTION);
      int radius = (int) Math.round(TAKEN * circle.radius() / REDUCTION);
      Imgproc.circle(rest, centre, radius, new Scalar(0), Imgproc.FILLED);
    }
    try (Mats mats = new Mats()) {
      return new Seeds(kind, rest, free.clone(), peaks(rest, free, GATHER, LEAST_LEFT, mats));
    }
  }

  /** 255 on the page but for its outermost edge. */
  private static Mat page(Size size, Mats mats) {
    Mat page = mats.own(Mat.zeros(size, CvType.CV_8U));
    int edge = pixels(EDGE);
    Rect inside = new Rect(edge, edge, (int) size.width - 2 * edge, (int) size.height - 2 * edge);
    Imgproc.rectangle(page, inside, new Scalar(255), -1);
    return page;
  }

  /** Openings too wide for a tear, a slit or a pen stroke. */
  private static Seeds wide(Kind kind, Mat open, Mat free, int least, Mats mats) {
    // Print is taken out only afterwards: it would cut a hole that lies on it into narrow parts.
    Mat map = new Mat();
    Imgproc.morphologyEx(open, map, Imgproc.MORPH_OPEN, disc(NARROW, mats));
    boolean none = wideSpots(map, free, mats) < least;
    NoShot.clear(map, FlatSheet.PIXELS_PER_MM / REDUCTION);
    Core.bitwise_and(map, free, map);
    // What print left of a punched hole stands by itself only now.
    NoShot.clear(map, FlatSheet.PIXELS_PER_MM / REDUCTION);
    List<Seed> places = none ? List.of() : peaks(map, free, GATHER, LEAST_OPEN, mats);
    return new Seeds(kind, map, free.clone(), places);
  }

  /**
   * How many separate places are surely wide.
   *
   * @param open without what is narrow
   */
  private static int wideSpots(Mat open, Mat free, Mats mats) {
    Mat disc = disc(SURELY_WIDE, mats);
    Mat seen = mats.mat();
    Core.bitwise_and(open, free, seen);
    int spots = 0;
    for (Rect patch : Patches.of(seen, disc.cols() - 1)) {
      Mat wide = mats.mat();
      mats.own(open.submat(patch)).copyTo(wide);
      Imgproc.morphologyEx(wide, wide, Imgproc.MORPH_OPEN, disc);
      Core.bitwise_and(wide, mats.own(free.submat(patch)), wide);
      Core.compare(wide, new Scalar(128), wide, Core.CMP_GE);
      spots += Imgproc.connectedComponents(wide, mats.mat()) - 1;
    }
    return spots;
  }

  /** Where paper is torn: edges of all strengths, however bright what lies behind. */
  private static Seeds disturbed(Mat darkness, Mat free, Rect target, double noise, Mats mats) {
    // Hidden places count as plain paper, or print would spread its own edges around.
    Mat hidden = mats.mat();
    Core.bitwise_not(free, hidden);
    darkness.setTo(new Scalar(0), hidden);
    Mat plain = mats.own(darkness.submat(target));
    Mat fine = mats.mat();
    Imgproc.GaussianBlur(plain, fine, new Size(0, 0), FINE);
    Mat coarse = mats.mat();
    Imgproc.GaussianBlur(plain, coarse, new Size(0, 0), COARSE);
    Core.absdiff(fine, coarse, fine);
    double floor = Math.max(LEAST_SHADE, noise);
    Mat disturbed = bytes(fine, floor, floor + SHADED, mats);
    // The tone over about a millimetre, in which grain and mottle even out.
    Imgproc.GaussianBlur(plain, coarse, new Size(0, 0), SMOOTH);
    Core.absdiff(coarse, new Scalar(0), coarse);
    Core.max(disturbed, bytes(coarse, TONE_FROM, TONE_FULL, mats), disturbed);
    Mat map = Mat.zeros(free.size(), CvType.CV_8U);
    disturbed.copyTo(mats.own(map.submat(target)));
    Core.bitwise_and(map, free, map);
    return new Seeds(
        Kind.FAINT, map, free.clone(), peaks(map, free, GATHER_RIM, LEAST_DISTURBED, mats));
  }

  /** 0 up to {@code from}, 255 beyond {@code full}, straight between. */
  private static Mat bytes(Mat map, double from, double full, Mats mats) {
    Mat bytes = mats.mat();
    double gain = 255 / (full - from);
    map.convertTo(bytes, CvType.CV_8U, gain, -from * gain);
    return bytes;
  }

  /** Where most of a disc is open, as a share of what of it is free of print. */
  private static List<Seed> peaks(Mat open, Mat free, double radius, double least, Mats mats) {
    Mat disc = disc(radius, mats);
    List<Seed> peaks = new ArrayList<>();
    for (Rect patch : Patches.of(open, pixels(2 * radius))) {
      Mat gathered = gather(mats.own(open.submat(patch)), radius, mats);
      Mat room = gather(mats.own(free.submat(patch)), radius, mats);
      Core.max(room, new Scalar(LEAST_FREE * 255), room);
      Core.divide(gathered, room, gathered);
      peaks.addAll(Peaks.of(gathered, patch, least, disc));
    }
    peaks.sort(Comparator.comparingDouble(Seed::strength).reversed());
    return List.copyOf(peaks);
  }

  /** A box average counts everything within its reach alike, the rim as much as the middle. */
  private static Mat gather(Mat map, double radius, Mats mats) {
    int size = pixels(2 * radius) | 1;
    Mat gathered = mats.mat();
    Imgproc.boxFilter(map, gathered, CvType.CV_32F, new Size(size, size));
    return gathered;
  }

  private static Mat disc(double diameter, Mats mats) {
    return mats.disc(pixels(diameter) | 1);
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
