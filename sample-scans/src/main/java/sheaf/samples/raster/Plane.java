package sheaf.samples.raster;

/** A rectangle of numbers, row by row. */
public final class Plane {

  private final int width;
  private final int height;
  private final float[] values;

  /** A plane of zeros. */
  public Plane(int width, int height) {
    this(width, height, new float[width * height]);
  }

  /** A plane over numbers that are not copied. */
  public Plane(int width, int height, float[] values) {
    this.width = width;
    this.height = height;
    this.values = values;
  }

  /** Columns. */
  public int width() {
    return width;
  }

  /** Rows. */
  public int height() {
    return height;
  }

  /** The numbers themselves, row by row. */
  public float[] values() {
    return values;
  }

  /** The number at a place; beyond the edge, that of the nearest place inside. */
  public float at(int x, int y) {
    int column = Math.max(0, Math.min(width - 1, x));
    int row = Math.max(0, Math.min(height - 1, y));
    return values[row * width + column];
  }

  /** A copy. */
  public Plane copy() {
    return new Plane(width, height, values.clone());
  }

  /**
   * A blurred copy, very nearly as with a bell curve (three box averages).
   *
   * @param deviation standard deviation of the bell curve, in pixels
   */
  public Plane blurred(double deviation) {
    Plane blurred = copy();
    float[] line = new float[Math.max(width, height)];
    // A box of radius r has the variance ((2r+1)^2-1)/12; three must add up to the wanted one.
    double radius = (Math.sqrt(4 * deviation * deviation + 1) - 1) / 2;
    int less = (int) radius;
    for (int pass = 0; pass < 3; pass++) {
      int r = pass < Math.round(3 * (radius - less)) ? less + 1 : less;
      for (int y = 0; y < height && r > 0; y++) {
        average(blurred.values, y * width, 1, width, r, line);
      }
      for (int x = 0; x < width && r > 0; x++) {
        average(blurred.values, x, width, height, r, line);
      }
    }
    return blurred;
  }

  private static void average(
      float[] values, int start, int step, int count, int radius, float[] line) {
    for (int i = 0; i < count; i++) {
      line[i] = values[start + i * step];
    }
    double sum = 0;
    for (int i = -radius; i <= radius; i++) {
      sum += line[Math.max(0, Math.min(count - 1, i))];
    }
    float share = 1f / (2 * radius + 1);
    for (int i = 0; i < count; i++) {
      values[start + i * step] = (float) sum * share;
      sum += line[Math.min(count - 1, i + radius + 1)] - line[Math.max(0, i - radius)];
    }
  }
}
