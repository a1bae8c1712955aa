package sheaf.samples.digit;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * A network as an ONNX file (version 7 of the format, operator set 13), which OpenCV reads. The
 * numbers of the fields are those of {@code onnx.proto} (github.com/onnx/onnx, Apache-2.0).
 */
final class OnnxFile {

  private static final int FLOAT = 1;
  private static final int INT = 2;
  private static final int INTS = 7;

  private final Message graph = new Message();
  private final int planes;
  private final int side;

  /** The name of what came out of the layer before. */
  private String at = "picture";

  /** How many values, channels of a picture first, came out of it. */
  private int channels;

  private int layers;

  /**
   * A file of no layers yet.
   *
   * @param planes of each picture
   * @param side pixels across and down
   */
  OnnxFile(int planes, int side) {
    this.planes = planes;
    this.channels = planes;
    this.side = side;
  }

  /**
   * Adds a convolution over 3 x 3 places with a border of zeros, rectified.
   *
   * @param kernels filter by filter, channel by channel, row by row
   * @param biases one a filter
   */
  void convolution(float[] kernels, float[] biases) {
    String name = next();
    tensor("kernels" + name, kernels, biases.length, channels, 3, 3);
    tensor("bias" + name, biases, biases.length);
    node(
        "Conv",
        List.of(at, "kernels" + name, "bias" + name),
        "conv" + name,
        numbers("kernel_shape", 3, 3),
        numbers("pads", 1, 1, 1, 1));
    channels = biases.length;
    rectified();
  }

  /** Keeps the largest of each four places. */
  void halved() {
    node(
        "MaxPool",
        List.of(at),
        "pool" + next(),
        numbers("kernel_shape", 2, 2),
        numbers("strides", 2, 2));
  }

  /** Sets what is negative to zero. */
  void rectified() {
    node("Relu", List.of(at), "relu" + next());
  }

  /**
   * Adds a layer in which everything that comes out depends on everything before.
   *
   * @param matrix row by row, one for each value that comes out
   * @param biases one a row
   */
  void dense(float[] matrix, float[] biases) {
    String name = next();
    node("Flatten", List.of(at), "flat" + name);
    tensor("matrix" + name, matrix, biases.length, matrix.length / biases.length);
    tensor("bias" + name, biases, biases.length);
    Message turned = new Message();
    turned.text(1, "transB");
    turned.number(3, 1);
    turned.number(20, INT);
    node("Gemm", List.of(at, "matrix" + name, "bias" + name), "dense" + name, turned);
    channels = biases.length;
  }

  private String next() {
    layers++;
    return String.valueOf(layers);
  }

  /** The file, whose result is what comes out of the last layer, a dense one. */
  byte[] bytes() {
    graph.text(2, "digits");
    graph.message(11, tensorInfo("picture", 1, planes, side, side));
    graph.message(12, tensorInfo(at, 1, channels));
    Message operators = new Message();
    operators.text(1, "");
    operators.number(2, 13);
    Message model = new Message();
    model.number(1, 7);
    model.text(2, "sheaf");
    model.message(7, graph);
    model.message(8, operators);
    return model.bytes();
  }

  private void node(String operator, List<String> from, String to, Message... attributes) {
    Message node = new Message();
    from.forEach(name -> node.text(1, name));
    node.text(2, to);
    node.text(3, to);
    node.text(4, operator);
    for (Message attribute : attributes) {
      node.message(5, attribute);
    }
    graph.message(1, node);
    at = to;
  }

  private static Message numbers(String name, int... values) {
    Message attribute = new Message();
    attribute.text(1, name);
    for (int value : values) {
      attribute.number(8, value);
    }
    attribute.number(20, INTS);
    return attribute;
  }

  private void tensor(String name, float[] values, int... shape) {
    Message tensor = new Message();
    for (int length : shape) {
      tensor.number(1, length);
    }
    tensor.number(2, FLOAT);
    tensor.text(8, name);
    ByteBuffer raw = ByteBuffer.allocate(4 * values.length).order(ByteOrder.LITTLE_ENDIAN);
    raw.asFloatBuffer().put(values);
    tensor.bytes(9, raw.array());
    graph.message(5, tensor);
  }

  private static Message tensorInfo(String name, int... shape) {
    Message dimensions = new Message();
    for (int length : shape) {
      Message dimension = new Message();
      dimension.number(1, length);
      dimensions.message(1, dimension);
    }
    Message tensor = new Message();
    tensor.number(1, FLOAT);
    tensor.message(2, dimensions);
    Message type = new Message();
    type.message(1, tensor);
    Message info = new Message();
    info.text(1, name);
    info.message(2, type);
    return info;
  }

  /** A message of Protocol Buffers: fields, each with its number, in the order they are added. */
  private static final class Message {
    private static final int VARINT = 0;
    private static final int LENGTH = 2;

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();

    void number(int field, long value) {
      varint((long) field << 3 | VARINT);
      varint(value);
    }

    void text(int field, String value) {
      bytes(field, value.getBytes(StandardCharsets.UTF_8));
    }

    void message(int field, Message value) {
      bytes(field, value.bytes());
    }

    void bytes(int field, byte[] value) {
      varint((long) field << 3 | LENGTH);
      varint(value.length);
      out.writeBytes(value);
    }

    byte[] bytes() {
      return out.toByteArray();
    }

    private void varint(long value) {
      long rest = value;
      while (rest > 0x7F) {
        out.write((int) (rest & 0x7F | 0x80));
        rest >>>= 7;
      }
      out.write((int) rest);
    }
  }
}
