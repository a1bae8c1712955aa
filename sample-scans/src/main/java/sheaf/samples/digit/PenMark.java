package sheaf.samples.digit;

import java.awt.image.BufferedImage;

/**
 * Something written, as the share of each place that is inked.
 *
 * @param width in pixels
 * @param height in pixels
 * @param cover row by row, 0 to 1
 */
public record PenMark(int width, int height, float[] cover) {

  /** The inked share at a place given in pixels; whole numbers are pixels' middles. */
  float at(double x, double y) {
    int left = (int) Math.floor(x);
    int top = (int) Math.floor(y);
    if (left < 0 || top < 0 || left >= width - 1 || top >= height - 1) {
      return 0;
    }
    float fx = (float) (x - left);
    float fy = (float) (y - top);
    int i = top * width + left;
    return (cover[i] * (1 - fx) + cover[i + 1] * fx) * (1 - fy)
        + (cover[i + width] * (1 - fx) + cover[i + width + 1] * fx) * fy;
  }

  /** What is drawn in white on black. */
  static PenMark of(BufferedImage drawn) {
    int[] pixels =
        drawn.getRaster().getSamples(0, 0, drawn.getWidth(), drawn.getHeight(), 0, (int[]) null);
    float[] cover = new float[pixels.length];
    for (int i = 0; i < cover.length; i++) {
      cover[i] = pixels[i] / 255f;
    }
    return new PenMark(drawn.getWidth(), drawn.getHeight(), cover);
  }

  /** This and another mark over it, both of one size. */
  PenMark over(PenMark other) {
    float[] both = cover.clone();
    for (int i = 0; i < both.length; i++) {
      both[i] = Math.max(both[i], other.cover[i]);
    }
    return new PenMark(width, height, both);
  }

  /** Only what lies from one place to another, each as a share of width and height. */
  PenMark part(double left, double top, double right, double bottom) {
    float[] part = cover.clone();
    for (int i = 0; i < part.length; i++) {
      double x = (i % width + 0.5) / width;
      double y = (i / width + 0.5) / height;
      if (x < left || x > right || y < top || y > bottom) {
        part[i] = 0;
      }
    }
    return new PenMark(width, height, part);
  }

  /** The smallest rectangle around what is inked: left, top, right and bottom in pixels. */
  int[] extent() {
    int[] extent = {width, height, 0, 0};
    for (int i = 0; i < cover.length; i++) {
      if (cover[i] > 0.5) {
        extent[0] = Math.min(extent[0], i % width);
        extent[1] = Math.min(extent[1], i / width);
        extent[2] = Math.max(extent[2], i % width);
        extent[3] = Math.max(extent[3], i / width);
      }
    }
    return extent;
  }
}
