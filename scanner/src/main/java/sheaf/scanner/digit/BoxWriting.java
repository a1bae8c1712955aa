package sheaf.scanner.digit;

import java.util.Arrays;
import org.opencv.core.Core;
import org.opencv.core.CvType;
import org.opencv.core.Mat;
import org.opencv.core.Rect;
import org.opencv.core.Size;
import org.opencv.imgproc.Imgproc;
import sheaf.core.page.MmRect;
import sheaf.scanner.opencv.Mats;
import sheaf.scanner.sheet.FlatSheet;

/**
 * What is written in and around one printed box: how dark each place is, the box's own lines and
 * the writing of its neighbours taken out.
 */
final class BoxWriting {

  /** Writing may leave its box by this much, in millimetres. */
  private static final double OUT = 1.8;

  /** A printed line and what its place is unsure by lie within this of the box's edge, in mm. */
  private static final double LINE_ROOM = 0.6;

  /** A stroke that lies on a printed line leaves at least this share of the line free. */
  private static final double FREE = 0.2;

  /** Wider than the widest stroke of a pen, in millimetres: brings out the paper's own tone. */
  private static final double STROKE = 3;

  /** Less dark than this is the paper's unevenness or noise, as a share of its tone. */
  private static final double NOISE = 0.06;

  /** A place belongs to the writing when it is this dark, as a share of the writing's darkest. */
  private static final float PART = 0.35f;

  /** Share of a stroke's ink that must lie in the box for it to be written there. */
  private static final double INSIDE = 0.5;

  /**
   * Where writing that hangs together with a neighbour's comes this far into the box, in
   * millimetres, its part in the box was written there.
   */
  private static final double DEEP = 1.5;

  /** Smaller pieces than this are specks beside the largest piece, as a share of its ink. */
  private static final double SPECK = 0.04;

  private final int width;
  private final int height;

  /** The box within the window, in pixels. */
  private final Rect box;

  /** Darkness row by row, 0 for paper; made less by each step. */
  private final float[] dark;

  /** The same with the printed lines and what the neighbours wrote. */
  private final float[] all;

  private BoxWriting(int width, int height, Rect box, float[] dark) {
    this.width = width;
    this.height = height;
    this.box = box;
    this.dark = dark;
    this.all = dark.clone();
  }

  /** Looks at a box of a sheet. */
  static BoxWriting in(FlatSheet sheet, MmRect place) {
    Rect window = sheet.pixels(place.grow(OUT));
    Rect at = sheet.pixels(place);
    Rect box = new Rect(at.x - window.x, at.y - window.y, at.width, at.height);
    BoxWriting writing =
        new BoxWriting(window.width, window.height, box, darkness(sheet.grey(), window));
    writing.removeLines();
    return writing;
  }

  int width() {
    return width;
  }

  int height() {
    return height;
  }

  float[] dark() {
    return dark;
  }

  /** All that is dark in and around the box, print and neighbours too. */
  float[] all() {
    return all;
  }

  /** Mean darkness over the box: how much is written in it. */
  double ink() {
    double sum = 0;
    for (int y = box.y; y < box.y + box.height; y++) {
      for (int x = box.x; x < box.x + box.width; x++) {
        sum += dark[y * width + x];
      }
    }
    return sum / (box.width * box.height);
  }

  /** Darkness as a share of the paper's tone; the closing (Serra 1982) gives that tone. */
  private static float[] darkness(Mat grey, Rect window) {
    try (Mats mats = new Mats()) {
      Mat crop = mats.own(grey.submat(window));
      Mat smooth = mats.mat();
      Imgproc.GaussianBlur(crop, smooth, new Size(3, 3), 0.7);
      Mat paper = mats.mat();
      int size = (int) (STROKE * FlatSheet.PIXELS_PER_MM) | 1;
      Mat square =
          mats.own(Imgproc.getStructuringElement(Imgproc.MORPH_RECT, new Size(size, size)));
      Imgproc.morphologyEx(smooth, paper, Imgproc.MORPH_CLOSE, square);
      Mat share = mats.mat();
      Core.divide(smooth, paper, share, 1, CvType.CV_32F);
      float[] dark = new float[window.width * window.height];
      share.get(0, 0, dark);
      for (int i = 0; i < dark.length; i++) {
        dark[i] = (float) Math.max(0, 1 - dark[i] - NOISE);
      }
      return dark;
    }
  }

  /**
   * Takes the printed lines out, the box's own and those between rows: along a line every place is
   * at least as dark as the line's print, and darker where a stroke crosses it.
   */
  private void removeLines() {
    int room = (int) Math.round(LINE_ROOM * FlatSheet.PIXELS_PER_MM);
    for (int y = 0; y < height; y++) {
      boolean within = y >= box.y + room && y < box.y + box.height - room;
      boolean beyond = y < box.y - room || y >= box.y + box.height + room;
      if (beyond) {
        takeOut(y * width, 1, 0, width, 0, width);
      } else if (!within) {
        takeOut(y * width, 1, box.x + room, box.x + box.width - room, 0, width);
      }
    }
    for (int side = 0; side < 2; side++) {
      int column = box.x + side * box.width;
      for (int x = Math.max(0, column - room); x < Math.min(width, column + room); x++) {
        takeOut(x, width, box.y + room, box.y + box.height - room, box.y, box.y + box.height);
      }
    }
  }

  /**
   * Takes the print out of all places in a stretch: what all but a few places from {@code from} to
   * {@code to} are darker than. What ink there takes from the light that the print leaves is kept.
   */
  private void takeOut(int start, int step, int from, int to, int first, int end) {
    float[] along = new float[to - from];
    for (int i = from; i < to; i++) {
      along[i - from] = dark[start + i * step];
    }
    Arrays.sort(along);
    float print = along[(int) (FREE * along.length)];
    for (int i = first; i < end; i++) {
      int at = start + i * step;
      dark[at] = Math.max(0, (dark[at] - print) / (1 - print));
    }
  }

  /** Leaves only what is written in this box: no specks, nothing of the neighbours. */
  void keepOwn() {
    float darkest = 0;
    for (float d : dark) {
      darkest = Math.max(darkest, d);
    }
    Pieces pieces = Pieces.of(dark, width, height, PART * darkest);
    int deep = (int) Math.round(DEEP * FlatSheet.PIXELS_PER_MM);
    Rect core = new Rect(box.x + deep, box.y + deep, box.width - 2 * deep, box.height - 2 * deep);
    pieces.cutAll(
        box, piece -> pieces.shareWithin(piece, box) < INSIDE && pieces.reaches(piece, core));
    pieces.clearAllBut(piece -> pieces.shareWithin(piece, box) >= INSIDE);
    double largest = pieces.largestInk();
    pieces.clearAllBut(piece -> pieces.ink(piece) >= SPECK * largest);
  }
}
