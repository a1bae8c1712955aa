package sheaf.samples.digit;

import java.util.List;
import java.util.random.RandomGenerator;

/** Sums of everything with weights. */
final class Dense implements Layer {

  final Weights matrix;
  final Weights bias;
  final int in;
  final int out;
  private final int batch;
  private float[] from;

  Dense(int in, int out, int batch, RandomGenerator random) {
    this.in = in;
    this.out = out;
    this.batch = batch;
    this.matrix = Weights.random(out * in, in, random);
    this.bias = Weights.zero(out);
  }

  @Override
  public float[] forward(float[] values, boolean learning) {
    from = values;
    float[] sums = new float[out * batch];
    Blas.multiply(matrix.value, values, sums, out, in, batch);
    for (int i = 0; i < sums.length; i++) {
      sums[i] += bias.value[i / batch];
    }
    return sums;
  }

  @Override
  public float[] backward(float[] slope) {
    for (int i = 0; i < out; i++) {
      float sum = 0;
      for (int b = 0; b < batch; b++) {
        sum += slope[i * batch + b];
      }
      bias.slope[i] = sum;
    }
    Blas.timesTurned(slope, from, matrix.slope, out, batch, in);
    float[] back = new float[in * batch];
    Blas.turnedTimes(matrix.value, slope, back, in, out, batch);
    return back;
  }

  @Override
  public List<Weights> weights() {
    return List.of(matrix, bias);
  }
}
