package sheaf.scanner.hole;

import java.util.Optional;
import java.util.function.IntUnaryOperator;
import org.opencv.core.Core;
import org.opencv.core.CvType;
import org.opencv.core.Mat;
import org.opencv.core.Rect;
import org.opencv.core.Scalar;
import org.opencv.core.Size;
import org.opencv.imgproc.Imgproc;
import sheaf.core.layout.Layout;
import sheaf.core.page.MmRect;
import sheaf.scanner.opencv.Mats;
import sheaf.scanner.sheet.FlatSheet;

/**
 * A flat sheet with light and paper tint taken out, worked out where it is looked at: half as fine
 * for the whole sheet, pixel by pixel only around places where a hole may be.
 *
 * <p>Darkness is how much darker than the plain paper around, as a share of the paper's tone: 0 is
 * paper, 1 black, below 0 brighter than paper.
 */
public final class Surface {

  /** Darker than the shadow inside a hole in front of something white. */
  private static final float INK = 0.42f;

  /** A hole may lie this far outside the target, in millimetres. */
  private static final double AROUND_TARGET = 4;

  /** The highest value of a byte. */
  private static final int WHITE = 255;

  /** Ink's blurred edge is hidden too: a disc that reaches so many pixels. */
  private static final int INK_AROUND = 4;

  private final Mat grey;
  private final Optional<BehindMap> behind;
  private final PaperTone tone;
  private final KnownInk ink;
  private final Rect sought;
  private final Rect target;

  /** Measured when it is first asked for, since dark openings need none. */
  private double noise = Double.NaN;

  private float printTone;
  private boolean printHidden;
  private boolean writingHidden;

  /**
   * Of a picture.
   *
   * @param grey its pixels, looked at as long as this is used
   * @param colour the same in blue, green and red, if it has them
   * @param ink what is printed on it
   * @param sought where holes are sought, in pixels
   * @param target where plain paper is measured, in pixels
   */
  Surface(Mat grey, Optional<Mat> colour, KnownInk ink, Rect sought, Rect target) {
    this.grey = grey;
    this.behind = colour.map(BehindMap::of);
    this.ink = ink;
    this.sought = sought;
    this.target = target;
    this.tone = PaperTone.of(grey).get(0);
  }

  /** Of a sheet that has a target; looks at the sheet's pixels as long as it is used. */
  public static Surface of(FlatSheet sheet, Layout layout) {
    MmRect target = layout.target().orElseThrow();
    return new Surface(
        sheet.grey(),
        sheet.colour(),
        KnownInk.of(layout, sheet.grey().size()),
        sheet.pixels(target.grow(AROUND_TARGET)),
        sheet.pixels(target));
  }

  /** Where the colour that lies behind is seen; empty for a grey picture. */
  public Optional<BehindMap> behind() {
    return behind;
  }

  /**
   * Looks which colour lies behind; unless another one shows, it may be the backing's.
   *
   * @param least how many holes must show it
   */
  void seeBehind(int least) {
    behind.ifPresent(map -> map.see(sought, least));
  }

  /** Where holes are sought, in pixels. */
  Rect sought() {
    return sought;
  }

  /** Hides thick print as well: what is seen through a hole is as dark as print. */
  void hidePrint() {
    printHidden = true;
  }

  /**
   * Hides what is darker than any shading: where nothing dark lies behind, that is a pen's ink.
   *
   * @param half the darkness, half as fine
   * @param free 255 where nothing is hidden, half as fine; set to 0 where there is writing
   */
  private void hideWriting(Mat half, Mat free) {
    writingHidden = true;
    try (Mats mats = new Mats()) {
      Mat written = mats.mat();
      Core.compare(half, new Scalar(INK), written, Core.CMP_GT);
      Imgproc.dilate(written, written, mats.disc(2 * (INK_AROUND / Seeds.REDUCTION) + 1));
      Core.bitwise_and(written, mats.own(free(KnownInk.SOLID)), written);
      free.setTo(new Scalar(0), written);
    }
  }

  /**
   * Takes the print's own tone out of the darkness, so that a hole through print stands out.
   *
   * @param half the darkness, half as fine, from which it is taken too
   */
  private void subtractPrint(Mat half) {
    try (Mats mats = new Mats()) {
      Mat solid = mats.mat();
      Core.bitwise_not(mats.own(free(KnownInk.SOLID)), solid);
      if (Core.countNonZero(solid) > 0) {
        Scalar mean = Core.mean(half, solid);
        printTone = (float) mean.val[0];
        Core.subtract(half, mean, half, solid);
      }
    }
  }

  /**
   * 255 where a place's tone tells of paper, else 0, half as fine; the caller releases it. Where
   * nothing dark lies behind, writing is hidden from here on, and thick print is not.
   *
   * @param kind what is seen through the holes
   * @param half the darkness, half as fine; where thick print is not hidden, its tone is taken out
   */
  public Mat halfPaper(Seeds.Kind kind, Mat half) {
    if (kind != Seeds.Kind.FAINT) {
      return free(KnownInk.HIDDEN | KnownInk.SOLID);
    }
    Mat free = free(KnownInk.HIDDEN);
    hideWriting(half, free);
    subtractPrint(half);
    return free;
  }

  private Size halfSize() {
    return new Size((grey.cols() + 1) / 2, (grey.rows() + 1) / 2);
  }

  /**
   * How surely each place of the whole sheet is dark, 0 to 255, half as fine; the caller releases
   * it.
   *
   * @param from the darkness up to which it is not at all
   * @param full the darkness from which it surely is
   */
  Mat halfDark(double from, double full) {
    try (Mats mats = new Mats()) {
      Mat half = mats.own(Halves.of(grey));
      Mat light = new Mat();
      Core.divide(half, mats.own(tone.over(halfSize())), light, WHITE);
      look(
          light,
          share -> {
            double dark = (1 - share / (double) WHITE - from) / (full - from);
            return (int) Math.rint(WHITE * Math.max(0, Math.min(1, dark)));
          });
      return light;
    }
  }

  /** Puts for each value of a byte another one. */
  private static void look(Mat bytes, IntUnaryOperator value) {
    try (Mats mats = new Mats()) {
      byte[] values = new byte[WHITE + 1];
      for (int i = 0; i < values.length; i++) {
        values[i] = (byte) value.applyAsInt(i);
      }
      Mat table = mats.own(new Mat(1, values.length, CvType.CV_8U));
      table.put(0, 0, values);
      Core.LUT(bytes, table, bytes);
    }
  }

  /** The darkness of the whole sheet, half as fine; the caller releases it. */
  public Mat halfDarkness() {
    int columns = (grey.cols() + 1) / 2;
    int rows = (grey.rows() + 1) / 2;
    Mat half = new Mat(rows, columns, CvType.CV_32F);
    Pairs pairs = new Pairs(grey);
    float[] values = new float[columns];
    PaperTone.Rows toneRows = tone.rows(0.5, 2, columns);
    for (int y = 0; y < rows; y++) {
      pairs.read(y);
      float[] tones = toneRows.at(2 * y + 0.5);
      pairs.sums(0, values);
      for (int x = 0; x < columns; x++) {
        values[x] = 1 - values[x] / (4 * tones[x]);
      }
      half.put(y, 0, values);
    }
    return half;
  }

  /** 255 where print has none of some marks, else 0, half as fine; the caller releases it. */
  Mat free(int marks) {
    Mat free = new Mat(halfSize(), CvType.CV_8U);
    free.put(0, 0, ink.half());
    look(free, set -> (set & marks) == 0 ? WHITE : 0);
    return free;
  }

  /** The darkness in a square, row by row; 0 beyond the sheet. */
  public float[] darkness(Square square) {
    float[] darkness = plainDarkness(square);
    if (printTone != 0) {
      boolean[] solid = solid(square);
      for (int i = 0; i < solid.length; i++) {
        darkness[i] -= solid[i] ? printTone : 0;
      }
    }
    return darkness;
  }

  private float[] plainDarkness(Square square) {
    int side = square.side();
    byte[] bytes = square.bytes(grey);
    float[] darkness = new float[square.pixels()];
    PaperTone.Rows toneRows = tone.rows(square.left(), 1, side);
    int end = square.endColumn(grey.cols());
    int last = square.endRow(grey.rows());
    for (int y = square.firstRow(); y < last; y++) {
      float[] tones = toneRows.at((double) square.top() + y);
      for (int x = square.firstColumn(); x < end; x++) {
        int i = y * side + x;
        darkness[i] = 1 - (bytes[i] & 0xFF) / tones[x];
      }
    }
    return darkness;
  }

  /** Where in a square the paper's tone says nothing. */
  boolean[] hidden(Square square) {
    boolean[] hidden = set(square, KnownInk.HIDDEN | (printHidden ? KnownInk.SOLID : 0));
    if (writingHidden) {
      boolean[] solid = solid(square);
      boolean[] written = written(square);
      for (int i = 0; i < hidden.length; i++) {
        hidden[i] |= written[i] && !solid[i];
      }
    }
    return hidden;
  }

  /**
   * Where no slit can be told, 1, else 0: print hides it, and a pen's line looks like one.
   *
   * @param kind what is seen through the holes
   * @param middle of what is looked at
   * @param reach how far from its centre to look, in pixels
   */
  public Grid hidingSlits(Seeds.Kind kind, Circle middle, double reach) {
    Square around = Square.around(middle.x(), middle.y(), reach);
    if (behind.isEmpty()) {
      return printHidingSlits(around);
    }
    PenInk pen = behind.get().penInk(kind, around);
    return Grid.lazily(
        around,
        tile -> {
          boolean[] hiding = hidden(tile);
          pen.addTo(hiding, tile);
          return Grid.numbers(hiding);
        });
  }

  /** 1 where print hides what slits there may be in a square, else 0. */
  public Grid printHidingSlits(Square square) {
    return Grid.lazily(square, tile -> Grid.numbers(hidden(tile)));
  }

  /** Where in a square the paper's tone says nothing, or is mixed with that of thick print. */
  boolean[] thickPrintToo(Square square) {
    return set(square, KnownInk.HIDDEN | KnownInk.SOLID);
  }

  /** Where in a square even a dark opening cannot be told, thick print included. */
  boolean[] covered(Square square) {
    return set(square, KnownInk.COVERED | KnownInk.SOLID);
  }

  /** Where a square is inside thick print. */
  boolean[] solid(Square square) {
    return set(square, KnownInk.SOLID);
  }

  private boolean[] set(Square square, int marks) {
    byte[] cut = ink.marks(square);
    boolean[] set = new boolean[cut.length];
    for (int i = 0; i < set.length; i++) {
      set[i] = (cut[i] & marks) != 0;
    }
    return set;
  }

  private boolean[] written(Square square) {
    Square wide = square.grow(INK_AROUND);
    float[] darkness = plainDarkness(wide);
    byte[] ink = new byte[darkness.length];
    for (int i = 0; i < ink.length; i++) {
      ink[i] = (byte) (darkness[i] > INK ? 1 : 0);
    }
    try (Mats mats = new Mats()) {
      Mat mask = mats.own(new Mat(wide.side(), wide.side(), CvType.CV_8U));
      mask.put(0, 0, ink);
      Imgproc.dilate(mask, mask, mats.disc(2 * INK_AROUND + 1));
      mask.get(0, 0, ink);
    }
    boolean[] written = new boolean[square.pixels()];
    for (int i = 0; i < written.length; i++) {
      int row = i / square.side() + INK_AROUND;
      written[i] = ink[row * wide.side() + i % square.side() + INK_AROUND] != 0;
    }
    return written;
  }

  /** Unevenness of the plain paper over a few pixels, as a share of its tone. */
  public double noise() {
    if (Double.isNaN(noise)) {
      noise = Grain.of(grey, tone, target);
    }
    return noise;
  }
}
