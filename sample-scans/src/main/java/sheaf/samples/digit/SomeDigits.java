package sheaf.samples.digit;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.util.List;
import java.util.stream.IntStream;

/** The first 300 digits for validation, so that samples and tests need no network. */
final class SomeDigits {

  static final DigitSet SET = read();

  private SomeDigits() {}

  private static DigitSet read() {
    try (InputStream pictures = SomeDigits.class.getResourceAsStream("some-images-idx3-ubyte");
        InputStream labels = SomeDigits.class.getResourceAsStream("some-labels-idx1-ubyte")) {
      return DigitSet.of(
          ByteBuffer.wrap(pictures.readAllBytes()), ByteBuffer.wrap(labels.readAllBytes()));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The pictures of one digit. */
  static List<byte[]> of(int digit) {
    return IntStream.range(0, SET.size())
        .filter(i -> SET.labels()[i] == digit)
        .mapToObj(i -> SET.pictures()[i])
        .toList();
  }
}
