package sheaf.scanner.hole;

import java.util.List;
import java.util.Optional;
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

  /** Over so many pixels a weak colour is smoothed, so that a camera's noise does not show it. */
  private static final double SMOOTH = 1.5;

  /** Darker than the shadow inside a hole in front of something white. */
  private static final float INK = 0.42f;

  /** A hole may lie this far outside the target, in millimetres. */
  private static final double AROUND_TARGET = 4;

  /** Ink's blurred edge is hidden too: a disc that reaches so many pixels. */
  private static final int INK_AROUND = 4;

  private final Mat grey;
  private final Optional<Mat> colour;
  private final PaperTone tone;
  private final List<PaperTone> tints;
  private final KnownInk ink;
  private final Rect sought;
  private final Rect target;

  /** Measured when it is first asked for, since dark openings need none. */
  private double noise = Double.NaN;

  private BehindColour behind = BehindColour.BACKING;
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
    this.colour = colour;
    this.ink = ink;
    this.sought = sought;
    this.target = target;
    this.tone = PaperTone.of(grey).get(0);
    this.tints = colour.map(PaperTone::of).orElse(List.of());
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

  /** Whether a coloured backing can be told. */
  boolean isColour() {
    return colour.isPresent();
  }

  /**
   * Looks which colour lies behind; unless another one shows, it may be the backing's.
   *
   * @param least how many holes must show it
   */
  void seeBehind(int least) {
    behind =
        colour
            .flatMap(pixels -> BehindSearch.in(pixels, tints, sought, least))
            .orElse(BehindColour.BACKING);
  }

  /** Whether the colour that lies behind is so weak that dark openings tell more. */
  boolean isBehindWeak() {
    return behind.isWeak();
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

  /** The darkness of the whole sheet, half as fine; the caller releases it. */
  public Mat halfDarkness() {
    int columns = (grey.cols() + 1) / 2;
    int rows = (grey.rows() + 1) / 2;
    Mat half = new Mat(rows, columns, CvType.CV_32F);
    Pairs pairs = new Pairs(grey);
    float[] values = new float[columns];
    float[] tones = new float[columns];
    PaperTone.Rows toneRows = tone.rows(0.5, 2, columns);
    for (int y = 0; y < rows; y++) {
      pairs.read(y);
      toneRows.at(2 * y + 0.5, tones);
      pairs.sums(0, values);
      for (int x = 0; x < columns; x++) {
        values[x] = 1 - values[x] / (4 * tones[x]);
      }
      half.put(y, 0, values);
    }
    return half;
  }

  /**
   * How surely each place of the whole sheet shows the colour that lies behind, 0 to 1, half as
   * fine; the caller releases it.
   */
  public Mat halfBacking() {
    int columns = (grey.cols() + 1) / 2;
    int rows = (grey.rows() + 1) / 2;
    Mat half = new Mat(rows, columns, CvType.CV_32F);
    Pairs pairs = new Pairs(colour.orElseThrow());
    float[] values = new float[columns];
    float[][] whites = new float[3][columns];
    float[][] sums = new float[3][columns];
    List<PaperTone.Rows> tintRows = tints.stream().map(tint -> tint.rows(0.5, 2, columns)).toList();
    for (int y = 0; y < rows; y++) {
      pairs.read(y);
      whites(tintRows, 2 * y + 0.5, whites);
      for (int channel = 0; channel < sums.length; channel++) {
        pairs.sums(channel, sums[channel]);
        for (int x = 0; x < columns; x++) {
          sums[channel][x] *= whites[channel][x] / 4;
        }
      }
      for (int x = 0; x < columns; x++) {
        float mean = behind.amount(sums[0][x], sums[1][x], sums[2][x]);
        if (behind.isWeak()) {
          values[x] = mean;
        } else {
          values[x] =
              mean < behind.none()
                  ? 0
                  : pairs.backing(x, whites[0][x], whites[1][x], whites[2][x], behind);
        }
      }
      half.put(y, 0, values);
    }
    if (behind.isWeak()) {
      smoothShares(half, SMOOTH / 2);
    }
    return half;
  }

  /** Turns amounts of a weak colour into shares. */
  private void smoothShares(Mat amounts, double deviation) {
    Imgproc.GaussianBlur(amounts, amounts, new Size(0, 0), deviation);
    float[] row = new float[amounts.cols()];
    for (int y = 0; y < amounts.rows(); y++) {
      amounts.get(y, 0, row);
      for (int x = 0; x < row.length; x++) {
        row[x] = behind.share(row[x]);
      }
      amounts.put(y, 0, row);
    }
  }

  /** One divided by the paper's tones, of blue, green and red along a row. */
  private static void whites(List<PaperTone.Rows> tints, double y, float[][] whites) {
    for (int channel = 0; channel < whites.length; channel++) {
      float[] white = whites[channel];
      tints.get(channel).at(y, white);
      for (int i = 0; i < white.length; i++) {
        white[i] = 1 / white[i];
      }
    }
  }

  /** 255 where print has none of some marks, else 0, half as fine; the caller releases it. */
  Mat free(int marks) {
    byte[] half = ink.half();
    byte[] free = new byte[half.length];
    for (int i = 0; i < free.length; i++) {
      free[i] = (byte) ((half[i] & marks) == 0 ? 255 : 0);
    }
    Mat mask = new Mat((grey.rows() + 1) / 2, (grey.cols() + 1) / 2, CvType.CV_8U);
    mask.put(0, 0, free);
    return mask;
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
    float[] tones = new float[side];
    PaperTone.Rows toneRows = tone.rows(square.left(), 1, side);
    int end = square.endColumn(grey.cols());
    int last = square.endRow(grey.rows());
    for (int y = square.firstRow(); y < last; y++) {
      toneRows.at((double) square.top() + y, tones);
      for (int x = square.firstColumn(); x < end; x++) {
        int i = y * side + x;
        darkness[i] = 1 - (bytes[i] & 0xFF) / tones[x];
      }
    }
    return darkness;
  }

  /** How surely each place of a square shows the colour that lies behind, 0 to 1, row by row. */
  public float[] backing(Square square) {
    int side = square.side();
    byte[] bytes = square.bytes(colour.orElseThrow());
    float[] backing = new float[square.pixels()];
    float[][] whites = new float[3][side];
    List<PaperTone.Rows> tintRows =
        tints.stream().map(tint -> tint.rows(square.left(), 1, side)).toList();
    int end = square.endColumn(grey.cols());
    int last = square.endRow(grey.rows());
    for (int y = square.firstRow(); y < last; y++) {
      whites(tintRows, (double) square.top() + y, whites);
      for (int x = square.firstColumn(); x < end; x++) {
        int i = y * side + x;
        float amount =
            behind.amount(
                (bytes[3 * i] & 0xFF) * whites[0][x],
                (bytes[3 * i + 1] & 0xFF) * whites[1][x],
                (bytes[3 * i + 2] & 0xFF) * whites[2][x]);
        backing[i] = behind.isWeak() ? amount : behind.share(amount);
      }
    }
    if (behind.isWeak()) {
      try (Mats mats = new Mats()) {
        Mat map = mats.own(new Mat(side, side, CvType.CV_32F));
        map.put(0, 0, backing);
        smoothShares(map, SMOOTH);
        map.get(0, 0, backing);
      }
    }
    return backing;
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
    Grid print = printHidingSlits(around);
    return colour.isEmpty()
        ? print
        : print.or(PenInk.around(colour.get(), kind, behind, middle, reach));
  }

  /** 1 where print hides what slits there may be in a square, else 0. */
  public Grid printHidingSlits(Square square) {
    return Grid.of(square, hidden(square));
  }

  /** Where in a square even a dark opening cannot be told. */
  boolean[] covered(Square square) {
    return set(square, KnownInk.COVERED);
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
    int side = square.side();
    float[] darkness = plainDarkness(square);
    byte[] ink = new byte[darkness.length];
    for (int i = 0; i < ink.length; i++) {
      ink[i] = (byte) (darkness[i] > INK ? 1 : 0);
    }
    try (Mats mats = new Mats()) {
      Mat mask = mats.own(new Mat(side, side, CvType.CV_8U));
      mask.put(0, 0, ink);
      Imgproc.dilate(mask, mask, mats.disc(2 * INK_AROUND + 1));
      mask.get(0, 0, ink);
    }
    boolean[] written = new boolean[ink.length];
    for (int i = 0; i < ink.length; i++) {
      written[i] = ink[i] != 0;
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

  /** Two rows of a picture at a time, whose pixels are taken by fours. */
  private static final class Pairs {

    private final Mat picture;
    private final int channels;
    private final int last;
    private final byte[] upper;
    private final byte[] lower;

    Pairs(Mat picture) {
      this.picture = picture;
      this.channels = picture.channels();
      this.last = picture.cols() - 1;
      this.upper = new byte[picture.cols() * channels];
      this.lower = new byte[picture.cols() * channels];
    }

    void read(int pair) {
      picture.get(2 * pair, 0, upper);
      picture.get(Math.min(2 * pair + 1, picture.rows() - 1), 0, lower);
    }

    /** The sum of each four pixels; a last odd one counts twice. */
    void sums(int channel, float[] sums) {
      int whole = (last + 1) / 2;
      for (int x = 0, i = channel; x < whole; x++, i += 2 * channels) {
        int beside = i + channels;
        sums[x] =
            (upper[i] & 0xFF) + (upper[beside] & 0xFF) + (lower[i] & 0xFF) + (lower[beside] & 0xFF);
      }
      if (whole < sums.length) {
        int i = last * channels + channel;
        sums[whole] = 2 * ((upper[i] & 0xFF) + (lower[i] & 0xFF));
      }
    }

    float backing(int four, float blue, float green, float red, BehindColour behind) {
      int left = 2 * four * channels;
      int right = Math.min(2 * four + 1, last) * channels;
      return (of(upper, left, blue, green, red, behind)
              + of(upper, right, blue, green, red, behind)
              + of(lower, left, blue, green, red, behind)
              + of(lower, right, blue, green, red, behind))
          / 4;
    }

    private static float of(
        byte[] row, int at, float blue, float green, float red, BehindColour behind) {
      return behind.share(
          behind.amount(
              (row[at] & 0xFF) * blue, (row[at + 1] & 0xFF) * green, (row[at + 2] & 0xFF) * red));
    }
  }
}
