package sheaf.scanner.digit;

import java.util.function.IntPredicate;
import org.opencv.core.CvType;
import org.opencv.core.Mat;
import org.opencv.core.Rect;
import org.opencv.imgproc.Imgproc;
import sheaf.scanner.opencv.Mats;

/** Connected pieces of writing. */
final class Pieces {

  private final float[] dark;
  private final int width;
  private final int[] labels;
  private final double[] ink;

  private Pieces(float[] dark, int width, int[] labels, int count) {
    this.dark = dark;
    this.width = width;
    this.labels = labels;
    this.ink = new double[count];
    for (int i = 0; i < dark.length; i++) {
      ink[labels[i]] += labels[i] == 0 ? 0 : dark[i];
    }
  }

  /** Pieces of all that is darker than {@code least}; fainter edges belong to the piece beside. */
  static Pieces of(float[] dark, int width, int height, float least) {
    try (Mats mats = new Mats()) {
      Mat values = mats.own(new Mat(height, width, CvType.CV_32F));
      values.put(0, 0, dark);
      Mat parts = mats.mat();
      Imgproc.threshold(values, parts, least, 255, Imgproc.THRESH_BINARY);
      parts.convertTo(parts, CvType.CV_8U);
      Imgproc.dilate(parts, parts, mats.disc(3));
      Mat labelled = mats.mat();
      int count = Imgproc.connectedComponents(parts, labelled, 8, CvType.CV_32S);
      int[] labels = new int[width * height];
      labelled.get(0, 0, labels);
      return new Pieces(dark, width, labels, count);
    }
  }

  /** How much ink a piece has; 0 for one that was cleared. */
  double ink(int piece) {
    return ink[piece];
  }

  double largestInk() {
    double largest = 0;
    for (double one : ink) {
      largest = Math.max(largest, one);
    }
    return largest;
  }

  /** Share of a piece's ink that lies within a rectangle. */
  double shareWithin(int piece, Rect room) {
    double inside = 0;
    for (int y = room.y; y < room.y + room.height; y++) {
      for (int x = room.x; x < room.x + room.width; x++) {
        int i = y * width + x;
        inside += labels[i] == piece ? dark[i] : 0;
      }
    }
    return ink[piece] == 0 ? 0 : inside / ink[piece];
  }

  /** Whether a piece has any ink within a rectangle. */
  boolean reaches(int piece, Rect room) {
    return shareWithin(piece, room) > 0;
  }

  /** Cuts pieces of the kind wanted off at the edges of a rectangle. */
  void cutAll(Rect room, IntPredicate wanted) {
    boolean[] cut = new boolean[ink.length];
    for (int piece = 1; piece < cut.length; piece++) {
      cut[piece] = ink[piece] > 0 && wanted.test(piece);
    }
    for (int i = 0; i < dark.length; i++) {
      int x = i % width;
      int y = i / width;
      boolean inside =
          x >= room.x && y >= room.y && x < room.x + room.width && y < room.y + room.height;
      if (cut[labels[i]] && !inside) {
        ink[labels[i]] -= dark[i];
        dark[i] = 0;
      }
    }
  }

  /** Makes everything paper that is in no piece of the kind wanted. */
  void clearAllBut(IntPredicate wanted) {
    boolean[] keep = new boolean[ink.length];
    for (int piece = 1; piece < keep.length; piece++) {
      keep[piece] = ink[piece] > 0 && wanted.test(piece);
    }
    for (int i = 0; i < dark.length; i++) {
      dark[i] = keep[labels[i]] ? dark[i] : 0;
    }
    for (int piece = 0; piece < keep.length; piece++) {
      ink[piece] = keep[piece] ? ink[piece] : 0;
    }
  }
}
