package sheaf.scanner.tear;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.opencv.core.CvType;
import org.opencv.core.Mat;
import org.opencv.core.MatOfByte;
import org.opencv.dnn.Dnn;
import org.opencv.dnn.Net;
import sheaf.scanner.opencv.Mats;

/**
 * A small convolutional net that says of each part of a tear sheet whether a tail passed or a point
 * went in there, and where exactly.
 *
 * <p>Its layers stand in {@code tear-ends.cfg}; {@code sheaf.samples.tear.EndNetStudy} taught it on
 * made tears. There is one, whose memory is used again by sheet after sheet.
 */
public final class EndNet {

  /** What it says is said of squares so wide, in millimetres. */
  public static final int CELL_MM = 2;

  /** Planes of what it says; see {@link EndMap}. */
  public static final int PLANES = 14;

  /** Ends are seldom: taken from the log odds that the net says of an end. */
  public static final float SELDOM = 4;

  /** The log of an end's spread in millimetres lies between this and its opposite. */
  public static final float MOST_LOG = 2.5f;

  private final Net net;

  private EndNet(byte[] layers, byte[] weights) {
    try (Mats mats = new Mats()) {
      net =
          Dnn.readNetFromDarknet(mats.own(new MatOfByte(layers)), mats.own(new MatOfByte(weights)));
    }
  }

  /** Made when first asked for. */
  private static final class Taught {
    private static final EndNet NET =
        new EndNet(bytes("tear-ends.cfg"), bytes("tear-ends.weights"));
  }

  /** What it says of a sheet. */
  static EndMap look(TearPicture picture) {
    return Taught.NET.forward(picture);
  }

  private synchronized EndMap forward(TearPicture picture) {
    int[] shape = {1, TearPicture.PLANES, picture.rows(), picture.columns()};
    try (Mats mats = new Mats()) {
      Mat blob = mats.own(new Mat(shape, CvType.CV_32F));
      byte[] tones = picture.tones();
      float[] values = new float[tones.length];
      for (int i = 0; i < values.length; i++) {
        values[i] = (tones[i] & 0xFF) / (float) TearPicture.PAPER - 1;
      }
      blob.put(new int[] {0, 0, 0, 0}, values);
      net.setInput(blob);
      Mat said = mats.own(net.forward());
      float[] planes = new float[(int) said.total()];
      said.get(new int[] {0, 0, 0, 0}, planes);
      int cell = CELL_MM * TearPicture.PER_MM;
      return new EndMap(
          picture.left(), picture.top(), picture.columns() / cell, picture.rows() / cell, planes);
    }
  }

  private static byte[] bytes(String resource) {
    try (InputStream in = EndNet.class.getResourceAsStream(resource)) {
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
