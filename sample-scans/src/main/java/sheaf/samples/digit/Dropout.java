package sheaf.samples.digit;

import java.util.random.RandomGenerator;

/** Rectifies, and while learning leaves out some values (Srivastava and others 2014). */
final class Dropout implements Layer {

  private final double share;
  private final RandomGenerator random;
  private float[] factor;

  /** Leaves out this share of the values, 0 to 1. */
  Dropout(double share, RandomGenerator random) {
    this.share = share;
    this.random = random;
  }

  @Override
  public float[] forward(float[] in, boolean learning) {
    factor = new float[in.length];
    float[] kept = new float[in.length];
    float enlarge = (float) (1 / (1 - share));
    for (int i = 0; i < in.length; i++) {
      boolean stays = in[i] > 0 && (!learning || random.nextDouble() >= share);
      factor[i] = stays ? learning ? enlarge : 1 : 0;
      kept[i] = in[i] * factor[i];
    }
    return kept;
  }

  @Override
  public float[] backward(float[] slope) {
    float[] back = new float[slope.length];
    for (int i = 0; i < back.length; i++) {
      back[i] = slope[i] * factor[i];
    }
    return back;
  }
}
