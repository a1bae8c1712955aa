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

  /** Less open than this, a place is paper. */
  private static final float SURELY_PAPER = 0.3f;

  /** An opening has ended when so many pixels in a row are closed: fibres cross openings. */
  private static final int ENDED = 3;

  private final Square square;
  private final int[] rings;
  private final boolean openings;
  private final int[] pixels;
  private final boolean[] hidesOpening;

  private Closeup(Square square, Surface surface, Seeds.Kind kind) {
    this.square = square;
    this.rings = RimProfile.rings(square.side());
    this.openings = kind != Seeds.Kind.FAINT;
    boolean[] hidden = openings ? surface.thickPrintToo(square) : surface.hidden(square);
    boolean[] covered =
        kind == Seeds.Kind.DARK ? surface.covered(square) : new boolean[square.pixels()];
    this.hidesOpening = covered;
    float[] darkness = surface.darkness(square);
    float[] shares =
        switch (kind) {
          case COLOURED -> surface.behind().orElseThrow().in(square);
          case DARK -> dark(darkness, covered);
          case FAINT -> new float[square.pixels()];
        };
    this.pixels = pixels(smooth(darkness), shares, hidden);
  }

  private static int[] pixels(float[] darkness, float[] shares, boolean[] hidden) {
    int[] pixels = new int[darkness.length];
    for (int i = 0; i < pixels.length; i++) {
      boolean paper = !hidden[i] && shares[i] < SURELY_PAPER;
      pixels[i] = paper ? Signs.paper(darkness[i], shares[i]) : Signs.noPaper(shares[i]);
    }
    return pixels;
  }

  /** Cuts the square that reaches so many pixels from a place. */
  static Closeup of(Surface surface, Seeds.Kind kind, double x, double y, double reach) {
    return new Closeup(Square.around(x, y, reach), surface, kind);
  }

  /** Steps from a centre's index to the places at each distance from it, ring by ring. */
  int[] rings() {
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

  /** What each pixel says, as in {@link Signs}. */
  int[] pixels() {
    return pixels;
  }

  /** Distance at which the opening ends, seen from a centre; -1 where that cannot be told. */
  int end(int centre, int direction) {
    int closed = 0;
    for (int place = RimProfile.FIRST * Signs.RING + direction;
        place < rings.length;
        place += Signs.RING) {
      closed = Signs.isOpen(pixels[centre + rings[place]]) ? 0 : closed + 1;
      if (closed == ENDED) {
        int end = place - (ENDED - 1) * Signs.RING;
        return hidesOpening[centre + rings[end]] ? -1 : end / Signs.RING;
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
