package sheaf.scanner.digit;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.opencv.core.CvType;
import org.opencv.core.Mat;
import org.opencv.core.Size;
import org.opencv.imgproc.Imgproc;
import sheaf.core.page.MmRect;
import sheaf.scanner.opencv.Mats;
import sheaf.scanner.sheet.FlatSheet;

/**
 * The writing in a box, brought to one size and darkness and set in the middle of a small square:
 * first as what belongs to it, then with all that is dark there, the box's lines and what the
 * neighbours wrote, by which one sees what was cut away and what does not belong to it.
 *
 * @param dark layer by layer and row by row, 0 for paper to 1 for ink; {@link #LAYERS} times {@link
 *     #SIDE} rows of as many
 */
public record DigitPicture(float[] dark) {

  /** What belongs to the writing, and everything. */
  public static final int LAYERS = 2;

  /** Pixels across and down. */
  public static final int SIDE = 24;

  /** The longer side of what is written, in pixels. */
  private static final double EXTENT = 20;

  /** Nothing is enlarged as if it were shorter than this, in millimetres: a dot stays one. */
  private static final double SHORTEST = 3;

  /** Ink as dark as this share of the places written on counts as full. */
  private static final double FULL_SHARE = 0.7;

  /** Less ink in a box than this, as a mean darkness, is a blank: a faint thin 1 has 0.008. */
  private static final double BLANK = 0.0035;

  /** What is written in a box of a sheet; empty for a blank. */
  public static Optional<DigitPicture> of(FlatSheet sheet, MmRect box) {
    BoxWriting writing = BoxWriting.in(sheet, box);
    writing.keepOwn();
    return writing.ink() < BLANK ? Optional.empty() : Optional.of(centred(writing));
  }

  /** The same, moved by so many pixels. */
  public DigitPicture moved(int right, int down) {
    float[] moved = new float[dark.length];
    for (int layer = 0; layer < dark.length; layer += SIDE * SIDE) {
      for (int y = Math.max(0, -down); y < Math.min(SIDE, SIDE - down); y++) {
        for (int x = Math.max(0, -right); x < Math.min(SIDE, SIDE - right); x++) {
          moved[layer + (y + down) * SIDE + x + right] = dark[layer + y * SIDE + x];
        }
      }
    }
    return new DigitPicture(moved);
  }

  private static DigitPicture centred(BoxWriting writing) {
    float full = full(writing.dark());
    Extent extent = Extent.of(writing, full / 3);
    double side = Math.max(extent.longer(), SHORTEST * FlatSheet.PIXELS_PER_MM);
    double scale = EXTENT / side;
    float[] dark = new float[LAYERS * SIDE * SIDE];
    try (Mats mats = new Mats()) {
      Mat map = mats.own(new Mat(2, 3, CvType.CV_64F));
      double middle = (SIDE - 1) / 2.0;
      double right = middle - scale * extent.middleX();
      double down = middle - scale * extent.middleY();
      map.put(0, 0, scale, 0, right, 0, scale, down);
      float[] small = new float[SIDE * SIDE];
      int layer = 0;
      for (float[] values : List.of(writing.dark(), writing.all())) {
        Mat from = mats.own(new Mat(writing.height(), writing.width(), CvType.CV_32F));
        from.put(0, 0, values);
        Imgproc.GaussianBlur(from, from, new Size(0, 0), 0.4 / scale);
        Mat to = mats.mat();
        Imgproc.warpAffine(from, to, map, new Size(SIDE, SIDE), Imgproc.INTER_LINEAR);
        to.get(0, 0, small);
        System.arraycopy(small, 0, dark, layer, small.length);
        layer += small.length;
      }
    }
    for (int i = 0; i < dark.length; i++) {
      dark[i] = Math.min(1, dark[i] / full);
    }
    return new DigitPicture(dark);
  }

  /** How dark full ink is here. */
  private static float full(float[] dark) {
    float darkest = 0;
    for (float d : dark) {
      darkest = Math.max(darkest, d);
    }
    int count = 0;
    float[] written = new float[dark.length];
    for (float d : dark) {
      if (d > darkest / 4) {
        written[count++] = d;
      }
    }
    Arrays.sort(written, 0, count);
    return written[(int) (FULL_SHARE * (count - 1))];
  }

  /** Where the writing reaches to, in pixels of the window. */
  private record Extent(int left, int top, int right, int bottom) {

    static Extent of(BoxWriting writing, float least) {
      int left = writing.width();
      int top = writing.height();
      int right = 0;
      int bottom = 0;
      for (int y = 0; y < writing.height(); y++) {
        for (int x = 0; x < writing.width(); x++) {
          if (writing.dark()[y * writing.width() + x] > least) {
            left = Math.min(left, x);
            right = Math.max(right, x);
            top = Math.min(top, y);
            bottom = Math.max(bottom, y);
          }
        }
      }
      return new Extent(left, top, right, bottom);
    }

    double longer() {
      return Math.max(right - left, bottom - top) + 1;
    }

    double middleX() {
      return (left + right) / 2.0;
    }

    double middleY() {
      return (top + bottom) / 2.0;
    }
  }
}
