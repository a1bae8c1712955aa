package sheaf.samples.learn;

import ai.djl.nn.AbstractBlock;
import ai.djl.nn.norm.BatchNorm;

/** The numbers that layers have learnt, as those who only run them need them. */
public final class Learnt {

  /** Added to the variances that norms divide by: what they are to be built with. */
  public static final float TINY = 1e-5f;

  private Learnt() {}

  /** The numbers of a name, such as "weight". */
  public static float[] values(AbstractBlock layer, String name) {
    return layer.getParameters().get(name).getArray().toFloatArray();
  }

  /**
   * Works a norm into the kernels before it.
   *
   * @param kernels of the convolution, one filter behind the other; changed
   * @return what is left of the norm: the biases of the convolution
   */
  public static float[] folded(BatchNorm norm, float[] kernels) {
    float[] biases = values(norm, "beta");
    float[] gains = values(norm, "gamma");
    float[] means = values(norm, "runningMean");
    float[] variances = values(norm, "runningVar");
    int each = kernels.length / biases.length;
    for (int filter = 0; filter < biases.length; filter++) {
      float gain = (float) (gains[filter] / Math.sqrt(variances[filter] + TINY));
      biases[filter] -= means[filter] * gain;
      for (int i = filter * each; i < (filter + 1) * each; i++) {
        kernels[i] *= gain;
      }
    }
    return biases;
  }
}
