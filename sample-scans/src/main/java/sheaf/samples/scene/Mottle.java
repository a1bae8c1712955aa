package sheaf.samples.scene;

import java.util.random.RandomGenerator;

/** Paper's uneven tone: soft clouds of a few millimetres and a fine grain. */
final class Mottle {

  /** Sizes of the clouds in millimetres. */
  private static final double[] SIZES = {12, 3, 0.5};

  /** How strong the clouds of each size are, as shares of the paper's tone. */
  private static final double[] STRENGTHS = {0.006, 0.006, 0.006};

  private static final int LATTICE = 64;

  private final float[][] lattices = new float[SIZES.length][LATTICE * LATTICE];
  private final double[] steps = new double[SIZES.length];

  Mottle(RandomGenerator random, double pixelsPerMm) {
    for (int s = 0; s < SIZES.length; s++) {
      steps[s] = 1 / (SIZES[s] * pixelsPerMm);
      for (int i = 0; i < lattices[s].length; i++) {
        lattices[s][i] = (float) (random.nextGaussian() * STRENGTHS[s]);
      }
    }
  }

  /** What the paper's tone is multiplied by at a pixel. */
  float at(int x, int y) {
    float tone = 1;
    for (int s = 0; s < SIZES.length; s++) {
      tone += value(lattices[s], x * steps[s], y * steps[s]);
    }
    return tone;
  }

  private static float value(float[] lattice, double x, double y) {
    int column = (int) x;
    int row = (int) y;
    float fx = (float) (x - column);
    float fy = (float) (y - row);
    float upper = mix(lattice, row, column, fx);
    float lower = mix(lattice, row + 1, column, fx);
    return upper + fy * (lower - upper);
  }

  private static float mix(float[] lattice, int row, int column, float share) {
    int base = row % LATTICE * LATTICE;
    float left = lattice[base + column % LATTICE];
    float right = lattice[base + (column + 1) % LATTICE];
    return left + share * (right - left);
  }
}
