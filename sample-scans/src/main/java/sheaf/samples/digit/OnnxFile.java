package sheaf.samples.digit;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.List;
import sheaf.scanner.digit.DigitPicture;

/**
 * A network as an ONNX file (version 7 of the format, operator set 13), which OpenCV reads. The
 * numbers of the fields are those of {@code onnx.proto} (github.com/onnx/onnx, Apache-2.0).
 */
final class OnnxFile {

  private static final int FLOAT = 1;
  private static final int INT = 2;
  private static final int INTS = 7;

  private final Message graph = new Message();

  private OnnxFile() {}

  static byte[] of(Network network) {
    OnnxFile file = new OnnxFile();
    String at = file.rectified("picture", "1", network.first);
    at = file.pooled(at, "1");
    at = file.rectified(at, "2", network.second);
    at = file.pooled(at, "2");
    at = file.rectified(at, "3", network.third);
    file.node("Flatten", List.of(at), "flat");
    file.dense("flat", "hidden", network.hidden);
    file.node("Relu", List.of("hidden"), "kept");
    file.dense("kept", "classes", network.last);
    file.graph.text(2, "digits");
    file.graph.message(11, tensorInfo("picture", 1, 1, DigitPicture.SIDE, DigitPicture.SIDE));
    file.graph.message(12, tensorInfo("classes", 1, Network.CLASSES));
    Message operators = new Message();
    operators.text(1, "");
    operators.number(2, 13);
    Message model = new Message();
    model.number(1, 7);
    model.text(2, "sheaf");
    model.message(7, file.graph);
    model.message(8, operators);
    return model.bytes();
  }

  private String rectified(String from, String name, Convolution layer) {
    tensor("kernels" + name, layer.kernels.value, layer.out, layer.in, 3, 3);
    tensor("bias" + name, layer.bias.value, layer.out);
    node(
        "Conv",
        List.of(from, "kernels" + name, "bias" + name),
        "conv" + name,
        numbers("kernel_shape", 3, 3),
        numbers("pads", 1, 1, 1, 1));
    node("Relu", List.of("conv" + name), "relu" + name);
    return "relu" + name;
  }

  private String pooled(String from, String name) {
    node(
        "MaxPool",
        List.of(from),
        "pool" + name,
        numbers("kernel_shape", 2, 2),
        numbers("strides", 2, 2));
    return "pool" + name;
  }

  private void dense(String from, String name, Dense layer) {
    tensor(name + "_matrix", layer.matrix.value, layer.out, layer.in);
    tensor(name + "_bias", layer.bias.value, layer.out);
    Message turned = new Message();
    turned.text(1, "transB");
    turned.number(3, 1);
    turned.number(20, INT);
    node("Gemm", List.of(from, name + "_matrix", name + "_bias"), name, turned);
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
