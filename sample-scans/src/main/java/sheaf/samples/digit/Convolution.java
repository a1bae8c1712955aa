package sheaf.samples.digit;

import java.util.List;
import java.util.random.RandomGenerator;

/** A convolution with kernels of 3 x 3 and a border of zeros, rectified. */
final class Convolution implements Layer {

  static final int KERNEL = 9;

  final Weights kernels;
  final Weights bias;
  final int in;
  final int out;
  private final int side;
  private final int batch;

  /** What lies under each kernel place, a row for each channel and kernel place. */
  private final float[] under;

  private float[] result;

  Convolution(int in, int out, int side, int batch, RandomGenerator random) {
    this.in = in;
    this.out = out;
    this.side = side;
    this.batch = batch;
    this.kernels = Weights.random(out * in * KERNEL, in * KERNEL, random);
    this.bias = Weights.zero(out);
    this.under = new float[in * KERNEL * places()];
  }

  private int places() {
    return side * side * batch;
  }

  @Override
  public float[] forward(float[] from, boolean learning) {
    eachRun((row, column, run) -> System.arraycopy(from, column, under, row, run));
    result = new float[out * places()];
    Blas.multiply(kernels.value, under, result, out, in * KERNEL, places());
    for (int channel = 0; channel < out; channel++) {
      float add = bias.value[channel];
      for (int i = channel * places(); i < (channel + 1) * places(); i++) {
        result[i] = Math.max(0, result[i] + add);
      }
    }
    return result;
  }

  @Override
  public float[] backward(float[] slope) {
    for (int channel = 0; channel < out; channel++) {
      double sum = 0;
      for (int i = channel * places(); i < (channel + 1) * places(); i++) {
        slope[i] = result[i] > 0 ? slope[i] : 0;
        sum += slope[i];
      }
      bias.slope[channel] = (float) sum;
    }
    Blas.timesTurned(slope, under, kernels.slope, out, places(), in * KERNEL);
    if (in == 1) {
      // Nothing learns before the picture itself.
      return new float[0];
    }
    Blas.turnedTimes(kernels.value, slope, under, in * KERNEL, out, places());
    float[] back = new float[in * places()];
    eachRun(
        (row, column, run) -> {
          for (int i = 0; i < run; i++) {
            back[column + i] += under[row + i];
          }
        });
    return back;
  }

  @Override
  public List<Weights> weights() {
    return List.of(kernels, bias);
  }

  /** A run of places beside each other, all moved alike. */
  @FunctionalInterface
  private interface Run {
    void at(int inUnder, int inValues, int length);
  }

  private void eachRun(Run run) {
    int line = side * batch;
    for (int channel = 0; channel < in; channel++) {
      for (int kernel = 0; kernel < KERNEL; kernel++) {
        int down = kernel / 3 - 1;
        int right = kernel % 3 - 1;
        int row = (channel * KERNEL + kernel) * places();
        for (int y = Math.max(0, -down); y < Math.min(side, side - down); y++) {
          int inUnder = row + y * line + Math.max(0, -right) * batch;
          int inValues = channel * places() + (y + down) * line + Math.max(0, right) * batch;
          run.at(inUnder, inValues, line - Math.abs(right) * batch);
        }
      }
    }
  }
}
