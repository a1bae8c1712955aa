package sheaf.scanner.hole;

import org.opencv.core.Mat;
import org.opencv.core.Rect;
import org.opencv.core.Size;
import org.opencv.imgproc.Imgproc;
import sheaf.scanner.opencv.Mats;

/**
 * A square of a sheet around a place where a hole may be, ready to be looked at from many centres.
 * Places are the whole sheet's, in its pixels.
 */
final class Closeup {

  /** Grain is smoothed by this much, in pixels; a fold is wider. */
  private static final double SMOOTH = 0.8;

  /** Darkness from which an opening may be seen, and from which it is sure. */
  static final double DARK_FROM = 0.3;

  static final double DARK_FULL = 0.5;

  private final int left;
  private final int top;
  private final int side;
  private final int[][] rays;
  private final boolean openings;
  private final boolean printHidesOpenings;
  private final float[] tone;
  private final float[] open;
  private final boolean[] hidden;
  private final boolean[] covered;

  private Closeup(int left, int top, int side, Surface surface, Seeds.Kind kind) {
    this.left = left;
    this.top = top;
    this.side = side;
    this.rays = RimProfile.rays(side);
    this.openings = kind != Seeds.Kind.FAINT;
    this.printHidesOpenings = kind != Seeds.Kind.COLOURED;
    this.tone = smooth(surface.darkness());
    this.hidden = set(surface.hidden());
    this.covered = set(surface.covered());
    if (openings) {
      boolean[] solid = set(surface.solid());
      for (int i = 0; i < solid.length; i++) {
        hidden[i] |= solid[i];
        covered[i] |= solid[i];
      }
    }
    this.open =
        switch (kind) {
          case COLOURED -> values(surface.backing().orElseThrow());
          case DARK -> dark(values(surface.darkness()));
          case FAINT -> new float[side * side];
        };
  }

  /** Cuts the square that reaches so many pixels from a place. */
  static Closeup of(Surface surface, Seeds.Kind kind, double x, double y, double reach) {
    int half = (int) Math.ceil(reach) + 1;
    return new Closeup(
        (int) Math.round(x) - half, (int) Math.round(y) - half, 2 * half + 1, surface, kind);
  }

  /** Steps from a centre's index to the places on each ray around it. */
  int[][] rays() {
    return rays;
  }

  /** Where a pixel of the sheet lies in the square's values. */
  int index(int x, int y) {
    return (y - top) * side + x - left;
  }

  /** Whether openings can be told from paper at all. */
  boolean showsOpenings() {
    return openings;
  }

  /** How much darker than paper, smoothed; 0 is paper. */
  float tone(int index) {
    return tone[index];
  }

  /** How surely open, 0 to 1. */
  float open(int index) {
    return open[index];
  }

  /** Whether print or writing hides the paper. */
  boolean isHidden(int index) {
    return hidden[index];
  }

  /** Whether print hides even an opening. */
  boolean hidesOpening(int index) {
    return printHidesOpenings && covered[index];
  }

  private float[] smooth(Mat map) {
    try (Mats mats = new Mats()) {
      Mat smooth = mats.mat();
      Imgproc.GaussianBlur(cut(map, mats), smooth, new Size(0, 0), SMOOTH);
      return floats(smooth);
    }
  }

  private float[] values(Mat map) {
    try (Mats mats = new Mats()) {
      return floats(cut(map, mats));
    }
  }

  private float[] floats(Mat part) {
    float[] values = new float[side * side];
    part.get(0, 0, values);
    return values;
  }

  private boolean[] set(Mat mask) {
    try (Mats mats = new Mats()) {
      byte[] bytes = new byte[side * side];
      cut(mask, mats).get(0, 0, bytes);
      boolean[] set = new boolean[bytes.length];
      for (int i = 0; i < bytes.length; i++) {
        set[i] = bytes[i] != 0;
      }
      return set;
    }
  }

  /** The square of a map; beyond the sheet it is zero. */
  private Mat cut(Mat map, Mats mats) {
    Mat whole = mats.own(Mat.zeros(side, side, map.type()));
    Rect inside =
        intersection(new Rect(left, top, side, side), new Rect(0, 0, map.cols(), map.rows()));
    if (!inside.empty()) {
      Rect here = new Rect(inside.x - left, inside.y - top, inside.width, inside.height);
      mats.own(map.submat(inside)).copyTo(mats.own(whole.submat(here)));
    }
    return whole;
  }

  private static Rect intersection(Rect a, Rect b) {
    int x = Math.max(a.x, b.x);
    int y = Math.max(a.y, b.y);
    return new Rect(
        x,
        y,
        Math.max(0, Math.min(a.x + a.width, b.x + b.width) - x),
        Math.max(0, Math.min(a.y + a.height, b.y + b.height) - y));
  }

  private float[] dark(float[] values) {
    for (int i = 0; i < values.length; i++) {
      double share = (values[i] - DARK_FROM) / (DARK_FULL - DARK_FROM);
      values[i] = covered[i] ? 0 : (float) Math.max(0, Math.min(1, share));
    }
    return values;
  }
}
