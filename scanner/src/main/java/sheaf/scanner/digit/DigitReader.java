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
 * threads, of which one at a time is served: a page's digits take a few milliseconds.
 */
public final class DigitReader {

  private static final String NETWORK = "digits.onnx";

  /** What the network tells apart: ten digits, and what is none. */
  private static final int CLASSES = 11;

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

  /** The network's scores of each class for each picture, as they come out. */
  private synchronized List<float[]> scores(List<DigitPicture> pictures) {
    if (pictures.isEmpty()) {
      return List.of();
    }
    int side = DigitPicture.SIDE;
    float[] values = new float[pictures.size() * side * side];
    for (int i = 0; i < pictures.size(); i++) {
      System.arraycopy(pictures.get(i).dark(), 0, values, i * side * side, side * side);
    }
    try (Mats mats = new Mats()) {
      int[] shape = {pictures.size(), 1, side, side};
      Mat blob = mats.own(new Mat(shape, CvType.CV_32F));
      blob.put(new int[4], values);
      net.setInput(blob);
      Mat out = mats.own(net.forward());
      List<float[]> scores = new ArrayList<>();
      for (int i = 0; i < pictures.size(); i++) {
        float[] row = new float[CLASSES];
        out.get(i, 0, row);
        scores.add(row);
      }
      return scores;
    }
  }
}
