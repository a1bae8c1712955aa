package sheaf.samples.scan;

/** Averages over squares; two passes come close to a bell curve. */
final class BoxBlur {

  private BoxBlur() {}

  /** Blurs in place. */
  static void blur(float[] plane, int width, int height, int radius) {
    float[] line = new float[Math.max(width, height)];
    for (int y = 0; y < height; y++) {
      run(plane, y * width, 1, width, radius, line);
    }
    for (int x = 0; x < width; x++) {
      run(plane, x, width, height, radius, line);
    }
  }

  private static void run(float[] plane, int start, int step, int count, int radius, float[] line) {
    for (int i = 0; i < count; i++) {
      line[i] = plane[start + i * step];
    }
    double sum = 0;
    for (int i = -radius; i <= radius; i++) {
      sum += line[Math.max(0, Math.min(count - 1, i))];
    }
    int span = 2 * radius + 1;
    for (int i = 0; i < count; i++) {
      plane[start + i * step] = (float) (sum / span);
      sum += line[Math.min(count - 1, i + radius + 1)] - line[Math.max(0, i - radius)];
    }
  }
}
