package sheaf.samples.ends;

import ai.djl.ndarray.NDArray;
import ai.djl.ndarray.NDList;
import ai.djl.ndarray.NDManager;
import ai.djl.ndarray.types.DataType;
import ai.djl.ndarray.types.Shape;
import ai.djl.nn.AbstractBlock;
import ai.djl.nn.Activation;
import ai.djl.nn.convolutional.Conv2d;
import ai.djl.nn.norm.BatchNorm;
import ai.djl.training.ParameterStore;
import ai.djl.util.PairList;
import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.List;
import sheaf.samples.learn.Learnt;
import sheaf.scanner.tear.EndNet;
import sheaf.scanner.tear.TearPicture;

/** The layers of {@code tear-ends.cfg}, so that they can learn. */
final class EndNetBlock extends AbstractBlock {

  /** Filters of the layers, their sizes and strides, as in {@code tear-ends.cfg}. */
  private static final int[][] LAYERS = {
    {16, 3, 2},
    {24, 3, 2},
    {32, 3, 2},
    {48, 3, 1},
    {64, 3, 2},
    {64, 3, 1},
    {64, 3, 2},
    {64, 3, 1},
    {64, 3, 1},
    {48, 1, 1},
    {64, 3, 1},
    {EndNet.PLANES, 1, 1}
  };

  private static final float LEAK = 0.1f;

  private final List<Conv2d> layers = new ArrayList<>();
  private final List<BatchNorm> norms = new ArrayList<>();

  EndNetBlock() {
    for (int i = 0; i < LAYERS.length; i++) {
      int[] layer = LAYERS[i];
      boolean last = i == LAYERS.length - 1;
      layers.add(
          addChildBlock(
              "layer" + i,
              Conv2d.builder()
                  .setFilters(layer[0])
                  .setKernelShape(new Shape(layer[1], layer[1]))
                  .optPadding(new Shape(layer[1] / 2, layer[1] / 2))
                  .optStride(new Shape(layer[2], layer[2]))
                  .optBias(last)
                  .build()));
      if (!last) {
        norms.add(addChildBlock("norm" + i, BatchNorm.builder().optEpsilon(Learnt.TINY).build()));
      }
    }
  }

  @Override
  protected NDList forwardInternal(
      ParameterStore store, NDList inputs, boolean training, PairList<String, Object> params) {
    NDArray x = inputs.head();
    NDArray half = null;
    NDArray quarter = null;
    for (int i = 0; i < 8; i++) {
      x = layer(store, i, x, training);
      half = i == 3 ? x : half;
      quarter = i == 5 ? x : quarter;
    }
    x = layer(store, 8, twice(x).add(quarter), training);
    x = layer(store, 9, x, training);
    x = layer(store, 10, twice(x).add(half), training);
    return layers.get(11).forward(store, new NDList(x), training);
  }

  private NDArray layer(ParameterStore store, int i, NDArray x, boolean training) {
    NDList out = layers.get(i).forward(store, new NDList(x), training);
    NDArray normed = norms.get(i).forward(store, out, training).head();
    return Activation.leakyRelu(normed, LEAK);
  }

  private static NDArray twice(NDArray x) {
    return x.repeat(2, 2).repeat(3, 2);
  }

  @Override
  public Shape[] getOutputShapes(Shape[] inputs) {
    Shape in = inputs[0];
    long cell = (long) EndNet.CELL_MM * TearPicture.PER_MM;
    return new Shape[] {new Shape(in.get(0), EndNet.PLANES, in.get(2) / cell, in.get(3) / cell)};
  }

  @Override
  protected void initializeChildBlocks(NDManager manager, DataType type, Shape... inputs) {
    Shape in = inputs[0];
    int[] from = {TearPicture.PLANES, 16, 24, 32, 48, 64, 64, 64, 64, 64, 48, 64};
    for (int i = 0; i < LAYERS.length; i++) {
      Shape shape = new Shape(in.get(0), from[i], in.get(2), in.get(3));
      layers.get(i).initialize(manager, type, shape);
      if (i < norms.size()) {
        norms.get(i).initialize(manager, type, new Shape(in.get(0), LAYERS[i][0], 8, 8));
      }
    }
  }

  /**
   * Biases and weights of all layers, norms worked in, as the reader's {@code EndNet} takes them.
   */
  byte[] weights() {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    write(out, ByteBuffer.allocate(20).order(ByteOrder.LITTLE_ENDIAN).putInt(0).putInt(2).array());
    for (int i = 0; i < layers.size(); i++) {
      float[] weights = Learnt.values(layers.get(i), "weight");
      float[] biases =
          i < norms.size()
              ? Learnt.folded(norms.get(i), weights)
              : Learnt.values(layers.get(i), "bias");
      write(out, bytes(biases));
      write(out, bytes(weights));
    }
    return out.toByteArray();
  }

  private static void write(ByteArrayOutputStream out, byte[] bytes) {
    out.write(bytes, 0, bytes.length);
  }

  private static byte[] bytes(float[] values) {
    ByteBuffer buffer = ByteBuffer.allocate(4 * values.length).order(ByteOrder.LITTLE_ENDIAN);
    for (float value : values) {
      buffer.putFloat(value);
    }
    return buffer.array();
  }
}
