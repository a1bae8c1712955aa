package sheaf.samples.scan;

import java.util.random.RandomGenerator;

/** From light to a sensor's numbers: tone curve, noise, grey. */
final class Tones {

  private final float[] curve = new float[256];
  private final double noise;
  private final RandomGenerator random;

  Tones(double gamma, double noise, RandomGenerator random) {
    for (int i = 0; i < curve.length; i++) {
      curve[i] = (float) (255 * Math.pow(i / 255.0, gamma));
    }
    this.noise = noise;
    this.random = random;
  }

  /** Writes a pixel: blue, green, red or one grey. */
  void put(float[] rgb, byte[] out, int at, int channels) {
    if (channels == 1) {
      // ITU-R BT.601 luma, as scanners' grey is made.
      float grey = 0.299f * rgb[0] + 0.587f * rgb[1] + 0.114f * rgb[2];
      out[at] = number(grey);
    } else {
      out[at] = number(rgb[2]);
      out[at + 1] = number(rgb[1]);
      out[at + 2] = number(rgb[0]);
    }
  }

  private byte number(float light) {
    int index = (int) Math.max(0, Math.min(255, light));
    double value = curve[index] + noisy();
    return (byte) Math.max(0, Math.min(255, Math.round(value)));
  }

  /** Two uniform numbers make noise that is bell-shaped enough, at a fraction of the cost. */
  private double noisy() {
    return (random.nextDouble() + random.nextDouble() - 1) * 2.45 * noise;
  }
}
