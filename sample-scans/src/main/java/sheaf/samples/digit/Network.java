package sheaf.samples.digit;

import java.util.Iterator;
import java.util.List;
import java.util.SplittableRandom;
import sheaf.scanner.digit.DigitPicture;

/** A small convolutional network that learns to tell the ten digits and what is none. */
final class Network {

  /** What it tells apart: the digits 0 to 9, and 10 for what is none. */
  static final int CLASSES = 11;

  /** Pictures learnt from at once. */
  static final int BATCH = 32;

  private static final int SIDE = DigitPicture.SIDE;

  final Convolution first;
  final Convolution second;
  final Convolution third;
  final Dense hidden;
  final Dense last;
  private final List<Layer> layers;

  Network(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    first = new Convolution(1, 16, SIDE, BATCH, random);
    second = new Convolution(16, 32, SIDE / 2, BATCH, random);
    third = new Convolution(32, 64, SIDE / 4, BATCH, random);
    hidden = new Dense(64 * SIDE / 4 * SIDE / 4, 128, BATCH, random);
    last = new Dense(128, CLASSES, BATCH, random);
    layers =
        List.of(
            first,
            new Pool(16, SIDE, BATCH),
            second,
            new Pool(32, SIDE / 2, BATCH),
            third,
            hidden,
            new Dropout(0.3, random),
            last);
  }

  /** Takes over what another one of this shape learnt. */
  void goOnFrom(List<float[]> learnt) {
    Iterator<float[]> values = learnt.iterator();
    for (Layer layer : layers) {
      for (Weights weights : layer.weights()) {
        System.arraycopy(values.next(), 0, weights.value, 0, weights.value.length);
      }
    }
  }

  /**
   * Learns from a batch.
   *
   * @param pictures place by place, those of the batch beside each other
   * @param labels of each, below {@link #CLASSES}
   * @param rate how large a step is
   * @return the mean loss before the step: the negative logarithm of the right class's odds
   */
  double learn(float[] pictures, int[] labels, double rate) {
    float[] values = pictures;
    for (Layer layer : layers) {
      values = layer.forward(values, true);
    }
    float[] slope = new float[values.length];
    double loss = 0;
    for (int b = 0; b < BATCH; b++) {
      double[] odds = odds(values, b);
      loss -= Math.log(Math.max(1e-12, odds[labels[b]])) / BATCH;
      for (int c = 0; c < CLASSES; c++) {
        slope[c * BATCH + b] = (float) ((odds[c] - (c == labels[b] ? 1 : 0)) / BATCH);
      }
    }
    for (int i = layers.size() - 1; i >= 0; i--) {
      slope = layers.get(i).backward(slope);
    }
    layers.forEach(layer -> layer.weights().forEach(weights -> weights.step(rate)));
    return loss;
  }

  private static double[] odds(float[] values, int b) {
    double largest = Double.NEGATIVE_INFINITY;
    for (int c = 0; c < CLASSES; c++) {
      largest = Math.max(largest, values[c * BATCH + b]);
    }
    double[] odds = new double[CLASSES];
    double sum = 0;
    for (int c = 0; c < CLASSES; c++) {
      odds[c] = Math.exp(values[c * BATCH + b] - largest);
      sum += odds[c];
    }
    for (int c = 0; c < CLASSES; c++) {
      odds[c] /= sum;
    }
    return odds;
  }
}
