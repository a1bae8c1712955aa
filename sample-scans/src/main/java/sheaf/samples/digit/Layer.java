package sheaf.samples.digit;

import java.util.List;

/**
 * A layer of a network that learns. Values lie channel by channel, row by row, place by place, and
 * for each place those of all pictures of a batch beside each other.
 */
interface Layer {

  /** What comes out; kept until {@link #backward}. */
  float[] forward(float[] in, boolean learning);

  /** From the loss's slope by what came out to that by what went in; notes the weights' slopes. */
  float[] backward(float[] slope);

  /** What it learns. */
  default List<Weights> weights() {
    return List.of();
  }
}
