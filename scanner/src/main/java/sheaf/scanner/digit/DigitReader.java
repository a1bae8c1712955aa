package sheaf.scanner.digit;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.opencv.core.CvType;
import org.opencv.core.Mat;
import org.opencv.core.MatOfByte;
import org.opencv.dnn.Dnn;
import org.opencv.dnn.Net;
import sheaf.core.reading.InBox;
import sheaf.scanner.opencv.Mats;

/**
 * Tells which digits pictures show, by a small network that learnt them. Safe to use from several
 * threads, of which one at a time is served: 40 digits take some 50 milliseconds.
 */
public final class DigitReader {

  private static final String NETWORK = "digits.onnx";

  /** What the network tells apart: ten digits, and what is none. */
  private static final int CLASSES = 11;

  /** Pixels to the right and down. */
  private static final int[][] MOVES = {{0, 0}, {1, 0}, {-1, 0}, {0, 1}, {0, -1}};

  private final Net net;

  /** A reader by the network of an ONNX file. */
  public DigitReader(byte[] network) {
    try (Mats mats = new Mats()) {
      net = Dnn.readNetFromONNX(mats.own(new MatOfByte(network)));
    }
  }

  /** The one that comes with Sheaf. */
  public static DigitReader bundled() {
    return Bundled.READER;
  }

  /** Loaded when first used, as most sheets bear no digit. */
  private static final class Bundled {
    static final DigitReader READER = new DigitReader(network());
  }

  private static byte[] network() {
    try (InputStream network = DigitReader.class.getResourceAsStream(NETWORK)) {
      return network.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** What each picture shows. */
  public List<InBox> read(List<DigitPicture> pictures) {
    return odds(pictures).stream().map(DigitOdds::verdict).toList();
  }

  /** How likely each digit is for each picture. */
  public List<DigitOdds> odds(List<DigitPicture> pictures) {
    return scores(pictures).stream().map(DigitOdds::of).toList();
  }

  /**
   * The network's scores of each class for each picture: the means over the picture as it is and
   * moved a pixel each way, which are right more often.
   */
  private synchronized List<float[]> scores(List<DigitPicture> pictures) {
    if (pictures.isEmpty()) {
      return List.of();
    }
    int side = DigitPicture.SIDE;
    int places = DigitPicture.LAYERS * side * side;
    float[] values = new float[pictures.size() * MOVES.length * places];
    for (int i = 0; i < values.length / places; i++) {
      int[] move = MOVES[i % MOVES.length];
      float[] dark = pictures.get(i / MOVES.length).moved(move[0], move[1]).dark();
      System.arraycopy(dark, 0, values, i * places, places);
    }
    try (Mats mats = new Mats()) {
      int[] shape = {values.length / places, DigitPicture.LAYERS, side, side};
      Mat blob = mats.own(new Mat(shape, CvType.CV_32F));
      blob.put(new int[4], values);
      net.setInput(blob);
      return means(mats.own(net.forward()));
    }
  }

  private static List<float[]> means(Mat scores) {
    List<float[]> means = new ArrayList<>();
    float[] row = new float[CLASSES];
    for (int i = 0; i < scores.rows(); i++) {
      scores.get(i, 0, row);
      if (i % MOVES.length == 0) {
        means.add(new float[CLASSES]);
      }
      for (int c = 0; c < CLASSES; c++) {
        means.get(i / MOVES.length)[c] += row[c] / MOVES.length;
      }
    }
    return means;
  }
}
