package sheaf.samples.scan;

import sheaf.samples.scene.Backdrop;
import sheaf.samples.scene.Page;

/** The light at places of a page that lies on something. */
final class Sampler {

  /** How far a page's edge keeps light off what it lies on, in millimetres. */
  private static final double EDGE_SHADOW = 0.5;

  /** How much farther for each millimetre that the page stands off. */
  private static final double RISE_SHADOW = 0.8;

  private static final double EDGE_DEPTH = 0.3;

  private final int[] pixels;
  private final int width;
  private final int height;
  private final double perMm;
  private final Backdrop backdrop;

  Sampler(Page page, Backdrop backdrop) {
    this.pixels = page.pixels();
    this.width = page.width();
    this.height = page.height();
    this.perMm = page.pixelsPerMm();
    this.backdrop = backdrop;
  }

  /** The light at a place in millimetres of the page as designed, on the page or beside it. */
  void light(double xMm, double yMm, float[] rgb) {
    double x = xMm * perMm - 0.5;
    double y = yMm * perMm - 0.5;
    int column = (int) Math.floor(x);
    int row = (int) Math.floor(y);
    if (column < 0 || row < 0 || column + 1 >= width || row + 1 >= height) {
      beside(xMm, yMm, rgb);
      return;
    }
    float fx = (float) (x - column);
    float fy = (float) (y - row);
    int i = row * width + column;
    int a = pixels[i];
    int b = pixels[i + 1];
    int c = pixels[i + width];
    int d = pixels[i + width + 1];
    for (int channel = 0; channel < 3; channel++) {
      int shift = 16 - 8 * channel;
      float left = a >> shift & 0xFF;
      float upper = left + fx * ((b >> shift & 0xFF) - left);
      float under = c >> shift & 0xFF;
      float lower = under + fx * ((d >> shift & 0xFF) - under);
      rgb[channel] = upper + fy * (lower - upper);
    }
  }

  private void beside(double xMm, double yMm, float[] rgb) {
    beside(xMm, yMm, xMm, yMm, 0, rgb);
  }

  /**
   * The light beside a page that stands off what it lies on.
   *
   * @param xMm where the backdrop is seen, in millimetres of the page
   * @param yMm the same, down
   * @param sheetX where the page would be seen if it went on, in its millimetres
   * @param sheetY the same, down
   * @param rise by which the page stands off, in millimetres
   */
  void beside(double xMm, double yMm, double sheetX, double sheetY, double rise, float[] rgb) {
    backdrop.light(xMm, yMm, rgb);
    double dx = Math.max(Math.max(-sheetX, sheetX - width / perMm), 0);
    double dy = Math.max(Math.max(-sheetY, sheetY - height / perMm), 0);
    double away = Math.hypot(dx, dy) / (EDGE_SHADOW + RISE_SHADOW * rise);
    if (away < 6) {
      // Two edges lie in their own shadow, the other two hardly.
      double side = sheetX > 0 && sheetY > 0 ? 1 : 0.4;
      float shade = (float) (1 - EDGE_DEPTH * side * Math.exp(-away));
      for (int c = 0; c < 3; c++) {
        rgb[c] *= shade;
      }
    }
  }
}
