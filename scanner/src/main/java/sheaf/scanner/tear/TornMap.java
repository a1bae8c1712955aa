package sheaf.scanner.tear;

import org.opencv.core.Core;
import org.opencv.core.CvType;
import org.opencv.core.Mat;
import org.opencv.core.Scalar;
import org.opencv.core.Size;
import org.opencv.imgproc.Imgproc;
import sheaf.scanner.hole.NoShot;
import sheaf.scanner.hole.Seeds;
import sheaf.scanner.hole.Surface;
import sheaf.scanner.opencv.Mats;
import sheaf.scanner.sheet.FlatSheet;

/** What each place of a sheet shows, as one of a few sorts: open, disturbed, plain or hidden. */
final class TornMap {

  /** Cells a millimetre. */
  static final double PER_MM = FlatSheet.PIXELS_PER_MM / Seeds.REDUCTION;

  /** Print hides what is here. */
  static final int HIDDEN = -1;

  /** How many sorts there are besides hidden ones. */
  static final int SORTS = 12;

  /** The first sort that is open: those before it are paper. */
  private static final int OPEN = 9;

  /** The first sort that is much disturbed where openings do not show. */
  private static final int FAINT_TORN = 6;

  /** Where openings show, a place is open from these shares on: a little, half, wholly. */
  private static final float[] SHARES = {0.15f, 0.45f, 0.8f};

  /** A disturbance counts from these strengths on. */
  private static final float[] STRENGTHS = {0.15f, 0.5f};

  /** Where nothing is open to see, strong disturbances are told apart further. */
  private static final float[] FAINT_STRENGTHS = {0.08f, 0.3f, 0.7f};

  /** Paper is darker or brighter than usual from this share of its tone on. */
  private static final float TONE = 0.02f;

  /** In front of something dark, an opening may be seen from this darkness on, or is sure. */
  private static final double DARK_FROM = 0.3;

  private static final double DARK_FULL = 0.5;

  /** Edges are what a narrow blur keeps and a wide one does not, in cells. */
  private static final double FINE = 0.7;

  private static final double COARSE = 4;

  /** The tone is taken over about a millimetre. */
  private static final double SMOOTH = 2.0;

  /** Shading weaker than this share of the paper's tone is the paper's own unevenness. */
  private static final double LEAST_SHADE = 0.008;

  /** Shading counts fully when it differs from paper by this more. */
  private static final double SHADED = 0.05;

  private final int width;
  private final int height;
  private final byte[] sorts;

  private TornMap(int width, int height, byte[] sorts) {
    this.width = width;
    this.height = height;
    this.sorts = sorts;
  }

  /** The map of a sheet through whose holes something of a kind is seen. */
  static TornMap of(Surface surface, Seeds.Kind kind) {
    try (Mats mats = new Mats()) {
      Mat plain = mats.own(surface.halfDarkness());
      Mat open = open(surface, kind, plain, mats);
      byte[] noShot = bytes(noShot(open, mats));
      Mat free = mats.own(surface.halfPaper(kind, plain));
      plain.setTo(new Scalar(0), inverted(free, mats));
      float[] edges = floats(edges(plain, surface.noise(), mats));
      float[] tones = floats(blurred(plain, SMOOTH, mats));
      float[] shares = floats(open);
      byte[] seen = bytes(free);
      byte[] sorts = new byte[seen.length];
      boolean printHides = kind != Seeds.Kind.COLOURED;
      for (int i = 0; i < sorts.length; i++) {
        boolean printed = seen[i] == 0 && (printHides || shares[i] < SHARES[0]);
        boolean lost = printed || noShot[i] != 0;
        sorts[i] = (byte) (lost ? HIDDEN : sort(shares[i], edges[i], tones[i], kind));
      }
      return new TornMap(plain.cols(), plain.rows(), sorts);
    }
  }

  /** Not 0 where no arrow made the opening. */
  private static Mat noShot(Mat open, Mats mats) {
    Mat all = mats.mat();
    open.convertTo(all, CvType.CV_8U, 255);
    Mat shot = mats.own(all.clone());
    NoShot.clear(shot, PER_MM);
    Core.subtract(all, shot, all);
    return all;
  }

  private static int sort(float open, float edge, float tone, Seeds.Kind kind) {
    if (kind == Seeds.Kind.FAINT) {
      int strength = level(edge, FAINT_STRENGTHS);
      return 3 * strength + (tone > TONE ? 1 : tone < -TONE ? 2 : 0);
    }
    int share = level(open, SHARES);
    return share > 0 ? OPEN + share - 1 : level(edge, STRENGTHS) * 3;
  }

  private static int level(float value, float[] steps) {
    int level = 0;
    while (level < steps.length && value >= steps[level]) {
      level++;
    }
    return level;
  }

  /** How far each place is open. */
  private static Mat open(Surface surface, Seeds.Kind kind, Mat darkness, Mats mats) {
    return switch (kind) {
      case COLOURED -> mats.own(surface.behind().orElseThrow().half());
      case DARK -> ramp(darkness, DARK_FROM, DARK_FULL, mats);
      case FAINT -> mats.own(Mat.zeros(darkness.size(), CvType.CV_32F));
    };
  }

  private static Mat edges(Mat plain, double noise, Mats mats) {
    Mat edges = mats.mat();
    Core.absdiff(blurred(plain, FINE, mats), blurred(plain, COARSE, mats), edges);
    double floor = Math.max(LEAST_SHADE, noise);
    return ramp(edges, floor, floor + SHADED, mats);
  }

  private static Mat blurred(Mat map, double deviation, Mats mats) {
    Mat blurred = mats.mat();
    Imgproc.GaussianBlur(map, blurred, new Size(0, 0), deviation);
    return blurred;
  }

  private static Mat inverted(Mat mask, Mats mats) {
    Mat inverted = mats.mat();
    Core.bitwise_not(mask, inverted);
    return inverted;
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

  private static float[] floats(Mat map) {
    float[] values = new float[(int) map.total()];
    map.get(0, 0, values);
    return values;
  }

  private static byte[] bytes(Mat map) {
    byte[] values = new byte[(int) map.total()];
    map.get(0, 0, values);
    return values;
  }

  /** Whether a sort of cell is surely not plain paper. */
  static boolean isTorn(int sort, Seeds.Kind kind) {
    return sort >= (kind == Seeds.Kind.FAINT ? FAINT_TORN : OPEN + 1);
  }

  /**
   * The same map with a strip hidden.
   *
   * @param fromX one end of its middle, in millimetres
   * @param fromY the same, down
   * @param toX the other end
   * @param toY the same, down
   * @param half of its width
   */
  TornMap without(double fromX, double fromY, double toX, double toY, double half) {
    byte[] fewer = sorts.clone();
    Capsule strip = new Capsule(fromX, fromY, toX, toY, half);
    for (int row = cell(Math.min(fromY, toY) - half);
        row <= cell(Math.max(fromY, toY) + half);
        row++) {
      for (int column = cell(Math.min(fromX, toX) - half);
          column <= cell(Math.max(fromX, toX) + half);
          column++) {
        boolean inside = row >= 0 && row < height && column >= 0 && column < width;
        if (inside && strip.distance(middle(column), middle(row)) < half) {
          fewer[row * width + column] = HIDDEN;
        }
      }
    }
    return new TornMap(width, height, fewer);
  }

  /** Cells across. */
  int width() {
    return width;
  }

  /** Cells down. */
  int height() {
    return height;
  }

  /** The sort of a cell. */
  int sort(int column, int row) {
    return sorts[row * width + column];
  }

  /** The cell in which a number of millimetres from the page's left or top edge lies. */
  static int cell(double mm) {
    return (int) Math.floor(mm * PER_MM);
  }

  /** Where a cell's middle lies, in millimetres from the page's left or top edge. */
  static double middle(int cell) {
    return (cell + 0.5) / PER_MM;
  }
}
