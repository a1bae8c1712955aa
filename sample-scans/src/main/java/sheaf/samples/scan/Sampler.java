package sheaf.samples.scan;

import java.awt.Color;
import sheaf.samples.scene.Page;

/** Looks up the light at places of a page, averaged over what one pixel of the picture covers. */
final class Sampler {

  private final float[][] planes;
  private final int width;
  private final int height;
  private final double perMm;
  private final float[] beyond;

  /**
   * Prepares a page.
   *
   * @param reduction page pixels covered by one pixel of the picture
   * @param beyond what is seen beside the page
   * @param blur of the optics, in pixels of the picture
   */
  Sampler(Page page, double reduction, Color beyond, double blur) {
    width = page.width();
    height = page.height();
    perMm = page.pixelsPerMm();
    this.beyond = new float[] {beyond.getRed(), beyond.getGreen(), beyond.getBlue()};
    planes = new float[3][width * height];
    int[] pixels = page.pixels();
    for (int i = 0; i < pixels.length; i++) {
      planes[0][i] = pixels[i] >> 16 & 0xFF;
      planes[1][i] = pixels[i] >> 8 & 0xFF;
      planes[2][i] = pixels[i] & 0xFF;
    }
    // A pixel's own square has a standard deviation of 0.29; a box of radius r has (2r+1)/sqrt(12).
    double deviation = reduction * Math.hypot(blur, reduction > 1 ? 0.29 : 0);
    int radius = (int) Math.round((deviation * Math.sqrt(6) - 1) / 2);
    for (float[] plane : planes) {
      for (int pass = 0; pass < 2 && radius > 0; pass++) {
        BoxBlur.blur(plane, width, height, radius);
      }
    }
  }

  /** The light at a place in millimetres of the page as designed. */
  void sample(double xMm, double yMm, float[] rgb) {
    double x = xMm * perMm - 0.5;
    double y = yMm * perMm - 0.5;
    int column = (int) Math.floor(x);
    int row = (int) Math.floor(y);
    if (column < 0 || row < 0 || column + 1 >= width || row + 1 >= height) {
      System.arraycopy(beyond, 0, rgb, 0, 3);
      return;
    }
    float fx = (float) (x - column);
    float fy = (float) (y - row);
    int i = row * width + column;
    for (int c = 0; c < 3; c++) {
      float[] plane = planes[c];
      float upper = plane[i] + fx * (plane[i + 1] - plane[i]);
      float lower = plane[i + width] + fx * (plane[i + width + 1] - plane[i + width]);
      rgb[c] = upper + fy * (lower - upper);
    }
  }
}
