package sheaf.scanner.digit;

import java.util.ArrayList;
import java.util.List;
import sheaf.core.reading.InBox;
import sheaf.scanner.opencv.Network;

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

  private final Network network;

  /** A reader by the network of an ONNX file. */
  public DigitReader(byte[] network) {
    this.network = Network.onnx(network);
  }

  /** The one that comes with Sheaf. */
  public static DigitReader bundled() {
    return Bundled.READER;
  }

  /** Loaded when first used, as most sheets bear no digit. */
  private static final class Bundled {
    static final DigitReader READER = new DigitReader(Network.file(DigitReader.class, NETWORK));
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
  private List<float[]> scores(List<DigitPicture> pictures) {
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
    int[] shape = {values.length / places, DigitPicture.LAYERS, side, side};
    return means(network.run(shape, values));
  }

  private static List<float[]> means(float[] scores) {
    List<float[]> means = new ArrayList<>();
    for (int i = 0; i < scores.length / CLASSES; i++) {
      if (i % MOVES.length == 0) {
        means.add(new float[CLASSES]);
      }
      for (int c = 0; c < CLASSES; c++) {
        means.get(i / MOVES.length)[c] += scores[i * CLASSES + c] / MOVES.length;
      }
    }
    return means;
  }
}
