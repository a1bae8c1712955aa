package sheaf.scanner.hole;

import org.opencv.core.CvType;
import org.opencv.core.Mat;
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

  /** From this on a place counts as open; below {@link #SURELY_PAPER} it is paper. */
  private static final float OPEN = 0.5f;

  private static final float SURELY_PAPER = 0.3f;

  /** An opening has ended when so many pixels in a row are closed: fibres cross openings. */
  private static final int ENDED = 3;

  private final Square square;
  private final int[][] rings;
  private final boolean openings;
  private final int[] tone;
  private final long[] shading;
  private final long[] opening;
  private final boolean[] open;
  private final boolean[] hidesOpening;

  private Closeup(Square square, Surface surface, Seeds.Kind kind) {
    this.square = square;
    this.rings = RimProfile.rings(square.side());
    this.openings = kind != Seeds.Kind.FAINT;
    int pixels = square.pixels();
    this.tone = new int[pixels];
    this.shading = new long[pixels];
    this.opening = new long[pixels];
    this.open = new boolean[pixels];
    boolean[] hidden = surface.hidden(square);
    boolean[] covered = surface.covered(square);
    if (openings) {
      boolean[] solid = surface.solid(square);
      for (int i = 0; i < pixels; i++) {
        hidden[i] |= solid[i];
        covered[i] |= solid[i];
      }
    }
    this.hidesOpening = kind == Seeds.Kind.DARK ? covered : new boolean[pixels];
    float[] darkness = surface.darkness(square);
    float[] shares =
        switch (kind) {
          case COLOURED -> surface.behind().orElseThrow().in(square);
          case DARK -> dark(darkness, covered);
          case FAINT -> new float[pixels];
        };
    count(smooth(darkness), shares, hidden);
  }

  private void count(float[] darkness, float[] shares, boolean[] hidden) {
    for (int i = 0; i < darkness.length; i++) {
      open[i] = shares[i] > OPEN;
      if (!hidden[i] && shares[i] < SURELY_PAPER) {
        tone[i] = Signs.tone(darkness[i]);
        shading[i] = Signs.shading(darkness[i]);
        opening[i] = Signs.opening(darkness[i], shares[i]);
      } else {
        tone[i] = Signs.NO_PAPER;
        opening[i] = Signs.opening(shares[i]);
      }
    }
  }

  /** Cuts the square that reaches so many pixels from a place. */
  static Closeup of(Surface surface, Seeds.Kind kind, double x, double y, double reach) {
    return new Closeup(Square.around(x, y, reach), surface, kind);
  }

  /** Steps from a centre's index to the places at each distance from it. */
  int[][] rings() {
    return rings;
  }

  /** Where a pixel of the sheet lies in the square's values. */
  int index(int x, int y) {
    return (y - square.top()) * square.side() + x - square.left();
  }

  /** Whether openings can be told from paper at all. */
  boolean showsOpenings() {
    return openings;
  }

  /** For each pixel, the paper's smoothed tone as in {@link Signs#tone}. */
  int[] tone() {
    return tone;
  }

  /** For each pixel, what {@link Signs#shading} says of it. */
  long[] shading() {
    return shading;
  }

  /** For each pixel, what {@link Signs#opening} says of it. */
  long[] opening() {
    return opening;
  }

  /** Distance at which the opening ends, seen from a centre; -1 where that cannot be told. */
  int end(int centre, int direction) {
    int closed = 0;
    for (int distance = RimProfile.FIRST; distance < rings.length; distance++) {
      closed = open[centre + rings[distance][direction]] ? 0 : closed + 1;
      if (closed == ENDED) {
        int end = distance - ENDED + 1;
        return hidesOpening[centre + rings[end][direction]] ? -1 : end;
      }
    }
    return -1;
  }

  private float[] smooth(float[] values) {
    try (Mats mats = new Mats()) {
      Mat map = mats.own(new Mat(square.side(), square.side(), CvType.CV_32F));
      map.put(0, 0, values);
      Imgproc.GaussianBlur(map, map, new Size(0, 0), SMOOTH);
      float[] smooth = new float[values.length];
      map.get(0, 0, smooth);
      return smooth;
    }
  }

  private static float[] dark(float[] darkness, boolean[] covered) {
    float[] shares = new float[darkness.length];
    for (int i = 0; i < shares.length; i++) {
      double share = (darkness[i] - DARK_FROM) / (DARK_FULL - DARK_FROM);
      shares[i] = covered[i] ? 0 : (float) Math.max(0, Math.min(1, share));
    }
    return shares;
  }
}
