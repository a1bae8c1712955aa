package sheaf.samples.scan;

import java.util.SplittableRandom;

/** From light to a sensor's numbers: tone curve and noise. */
final class Tones {

  /** Entries of the tone curve for each grey level. */
  private static final int FINE = 8;

  private static final int NOISE = 1 << 16;

  private final float[] curve = new float[256 * FINE];
  private final float[] amounts = new float[256];
  private final float[] noise = new float[NOISE];
  private final SplittableRandom random;

  /**
   * A sensor.
   *
   * @param gamma of the tone curve, 1 for none
   * @param dark noise in the dark, as a standard deviation in grey levels
   * @param bright noise in full light
   */
  Tones(double gamma, double dark, double bright, SplittableRandom random) {
    for (int i = 0; i < curve.length; i++) {
      curve[i] = (float) (255 * Math.pow(i / (255.0 * FINE), gamma));
    }
    for (int i = 0; i < amounts.length; i++) {
      // The variance of a sensor's noise grows with the light.
      double share = i / 255.0;
      amounts[i] = (float) Math.sqrt(dark * dark * (1 - share) + bright * bright * share);
    }
    for (int i = 0; i < NOISE; i++) {
      noise[i] = (float) random.nextGaussian();
    }
    this.random = random;
  }

  /** Writes a row of numbers. */
  void put(float[] line, byte[] out, int at) {
    // A fresh start in the table for each row, and a stride that only repeats after the whole table
    // has been used, keep the noise from showing a pattern.
    int next = random.nextInt();
    for (int i = 0; i < line.length; i++) {
      next = next * 1664525 + 1013904223;
      int index = (int) Math.max(0, Math.min(curve.length - 1, line[i] * FINE + 0.5f));
      float value = curve[index] + amounts[index / FINE] * noise[next >>> 16];
      out[at + i] = (byte) Math.max(0, Math.min(255, (int) (value + 0.5f)));
    }
  }
}
