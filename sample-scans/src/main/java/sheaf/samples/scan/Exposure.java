package sheaf.samples.scan;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.util.Arrays;

/**
 * Takes a picture row by row: light is gathered, blurred by the optics, and turned into numbers.
 *
 * @param width in pixels
 * @param height in pixels
 * @param colour or grey
 * @param blur standard deviation of the optics' blur, in pixels
 * @param streak by which the camera moved
 * @param sharpening by the camera afterwards, 0 for none; 1 doubles an edge's steepness
 * @param tones of the sensor
 */
record Exposure(
    int width,
    int height,
    boolean colour,
    double blur,
    Streak streak,
    double sharpening,
    Tones tones) {

  /** Where light comes from. */
  @FunctionalInterface
  interface View {
    /** The light at a place of the picture, in pixels; red, green and blue up to 255. */
    void light(double x, double y, float[] rgb);
  }

  /** Beyond this many deviations a bell curve adds nothing that 8 bits show. */
  private static final double TAIL = 2.6;

  /** A camera sharpens by what its picture differs from one blurred by so much more, in pixels. */
  private static final double HALO = 1.3;

  /**
   * Takes the picture.
   *
   * @param points within each pixel at which light is gathered, as x and y from 0 to 1
   */
  BufferedImage take(View view, double[][] points) {
    int channels = colour ? 3 : 1;
    float[] kernel = kernel();
    int reach = kernel.length / 2;
    BufferedImage image =
        new BufferedImage(
            width, height, colour ? BufferedImage.TYPE_3BYTE_BGR : BufferedImage.TYPE_BYTE_GRAY);
    byte[] out = ((DataBufferByte) image.getRaster().getDataBuffer()).getData();
    float[][] rows = new float[kernel.length][];
    float[] line = new float[width * channels];
    Moving moving = new Moving(view, points, channels);
    for (int y = -reach; y < height + reach; y++) {
      float[] row = moving.row(Math.max(0, Math.min(height - 1, y)));
      rows[Math.floorMod(y, kernel.length)] = blurred(row, kernel, channels);
      int ready = y - reach;
      if (ready >= 0) {
        Arrays.fill(line, 0);
        for (int k = 0; k < kernel.length; k++) {
          add(kernel[k], rows[Math.floorMod(ready - reach + k, kernel.length)], 0, line);
        }
        tones.put(line, out, ready * line.length);
      }
    }
    return image;
  }

  private float[] kernel() {
    double wide = Math.hypot(blur, HALO);
    int reach = (int) Math.ceil(TAIL * (sharpening == 0 ? blur : wide));
    float[] kernel = bell(blur, reach);
    if (sharpening > 0) {
      float[] halo = bell(wide, reach);
      for (int i = 0; i < kernel.length; i++) {
        kernel[i] += (float) sharpening * (kernel[i] - halo[i]);
      }
    }
    return kernel;
  }

  private static float[] bell(double deviation, int reach) {
    float[] kernel = new float[2 * reach + 1];
    float sum = 0;
    for (int i = -reach; i <= reach; i++) {
      kernel[i + reach] = reach == 0 ? 1 : (float) Math.exp(-i * i / (2 * deviation * deviation));
      sum += kernel[i + reach];
    }
    for (int i = 0; i < kernel.length; i++) {
      kernel[i] /= sum;
    }
    return kernel;
  }

  /** Rows of pixels as a moving camera gathers them; asked for from the top down. */
  private final class Moving {

    private final View view;
    private final double[][] points;
    private final int channels;
    private final int reach = streak.reach();
    private final float[][] still = new float[2 * reach + 1][];
    private final int[] numbers = new int[2 * reach + 1];

    Moving(View view, double[][] points, int channels) {
      this.view = view;
      this.points = points;
      this.channels = channels;
      Arrays.fill(numbers, -1);
    }

    float[] row(int y) {
      if (reach == 0) {
        return still(y);
      }
      float[] moved = new float[width * channels];
      float[] padded = new float[moved.length + 2 * reach * channels];
      for (int dy = -reach; dy <= reach; dy++) {
        pad(still(Math.max(0, Math.min(height - 1, y + dy))), padded, reach, channels);
        for (int dx = -reach; dx <= reach; dx++) {
          if (streak.share(dx, dy) > 0) {
            add(streak.share(dx, dy), padded, (dx + reach) * channels, moved);
          }
        }
      }
      return moved;
    }

    private float[] still(int y) {
      int at = y % numbers.length;
      if (numbers[at] != y) {
        still[at] = gathered(view, points, y, channels);
        numbers[at] = y;
      }
      return still[at];
    }
  }

  /** The light of one row of pixels: blue, green, red, or one grey. */
  private float[] gathered(View view, double[][] points, int y, int channels) {
    float[] row = new float[width * channels];
    float[] rgb = new float[3];
    float share = 1f / points.length;
    for (int x = 0; x < width; x++) {
      float red = 0;
      float green = 0;
      float blue = 0;
      for (double[] point : points) {
        view.light(x + point[0], y + point[1], rgb);
        red += rgb[0];
        green += rgb[1];
        blue += rgb[2];
      }
      if (channels == 1) {
        // ITU-R BT.601 luma, as scanners' grey is made.
        row[x] = (0.299f * red + 0.587f * green + 0.114f * blue) * share;
      } else {
        row[3 * x] = blue * share;
        row[3 * x + 1] = green * share;
        row[3 * x + 2] = red * share;
      }
    }
    return row;
  }

  private static float[] blurred(float[] row, float[] kernel, int channels) {
    int reach = kernel.length / 2;
    float[] padded = new float[row.length + 2 * reach * channels];
    pad(row, padded, reach, channels);
    float[] blurred = new float[row.length];
    for (int k = 0; k < kernel.length; k++) {
      add(kernel[k], padded, k * channels, blurred);
    }
    return blurred;
  }

  /** The row again, with its ends carried on: then no place needs a look at where it is. */
  private static void pad(float[] row, float[] padded, int reach, int channels) {
    System.arraycopy(row, 0, padded, reach * channels, row.length);
    for (int i = 0; i < reach * channels; i++) {
      padded[i] = row[i % channels];
      padded[reach * channels + row.length + i] = row[row.length - channels + i % channels];
    }
  }

  private static void add(float share, float[] from, int start, float[] to) {
    for (int i = 0; i < to.length; i++) {
      to[i] += share * from[start + i];
    }
  }
}
