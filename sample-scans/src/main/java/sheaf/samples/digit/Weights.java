package sheaf.samples.digit;

import java.util.random.RandomGenerator;

/** Numbers of a network that are learnt, by Adam (Kingma and Ba 2015, with their constants). */
final class Weights {

  private static final float MEAN_KEPT = 0.9f;
  private static final float SQUARE_KEPT = 0.999f;
  private static final float LEAST = 1e-8f;

  final float[] value;

  /** How the loss grows with each; set by the layer they belong to. */
  final float[] slope;

  private final float[] mean;
  private final float[] square;
  private int steps;

  private Weights(float[] value) {
    this.value = value;
    this.slope = new float[value.length];
    this.mean = new float[value.length];
    this.square = new float[value.length];
  }

  static Weights zero(int count) {
    return new Weights(new float[count]);
  }

  /**
   * Random, as He and others (2015) advise before a rectifier.
   *
   * @param inputs that are added up
   */
  static Weights random(int count, int inputs, RandomGenerator random) {
    Weights weights = zero(count);
    for (int i = 0; i < count; i++) {
      weights.value[i] = (float) (random.nextGaussian() * Math.sqrt(2.0 / inputs));
    }
    return weights;
  }

  /** Goes a step down the slope. */
  void step(double rate) {
    steps++;
    double shift = 1 - Math.pow(MEAN_KEPT, steps);
    double spread = 1 - Math.pow(SQUARE_KEPT, steps);
    float size = (float) (rate * Math.sqrt(spread) / shift);
    for (int i = 0; i < value.length; i++) {
      mean[i] = MEAN_KEPT * mean[i] + (1 - MEAN_KEPT) * slope[i];
      square[i] = SQUARE_KEPT * square[i] + (1 - SQUARE_KEPT) * slope[i] * slope[i];
      value[i] -= size * mean[i] / ((float) Math.sqrt(square[i]) + LEAST);
    }
  }
}
