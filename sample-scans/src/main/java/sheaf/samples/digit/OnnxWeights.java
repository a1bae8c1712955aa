package sheaf.samples.digit;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.List;

/** The weights in an ONNX file, in the order in which {@link OnnxFile} writes them. */
final class OnnxWeights {

  private static final int VARINT = 0;

  /** Fields of a model, its graph and its tensors, by their numbers. */
  private static final int GRAPH = 7;

  private static final int TENSOR = 5;
  private static final int RAW = 9;

  private OnnxWeights() {}

  /** Reads them; throws when it is no such file. */
  static List<float[]> of(byte[] file) {
    List<float[]> weights = new ArrayList<>();
    for (ByteBuffer graph : parts(ByteBuffer.wrap(file), GRAPH)) {
      for (ByteBuffer tensor : parts(graph, TENSOR)) {
        for (ByteBuffer raw : parts(tensor, RAW)) {
          float[] values = new float[raw.remaining() / 4];
          raw.order(ByteOrder.LITTLE_ENDIAN).asFloatBuffer().get(values);
          weights.add(values);
        }
      }
    }
    return weights;
  }

  /** The parts of a message that have a number. */
  private static List<ByteBuffer> parts(ByteBuffer message, int wanted) {
    List<ByteBuffer> parts = new ArrayList<>();
    while (message.hasRemaining()) {
      long key = varint(message);
      long value = varint(message);
      if ((key & 7) != VARINT) {
        ByteBuffer part = message.slice(message.position(), (int) value);
        message.position(message.position() + (int) value);
        if (key >>> 3 == wanted) {
          parts.add(part);
        }
      }
    }
    return parts;
  }

  private static long varint(ByteBuffer message) {
    long value = 0;
    for (int shift = 0; ; shift += 7) {
      byte next = message.get();
      value |= (long) (next & 0x7F) << shift;
      if (next >= 0) {
        return value;
      }
    }
  }
}
