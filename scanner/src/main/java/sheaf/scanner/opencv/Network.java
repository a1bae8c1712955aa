package sheaf.scanner.opencv;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.opencv.core.CvType;
import org.opencv.core.Mat;
import org.opencv.core.MatOfByte;
import org.opencv.dnn.Dnn;
import org.opencv.dnn.Net;

/**
 * A taught network. Safe to use from several threads, of which one at a time is served: its memory
 * is used again by run after run.
 */
public final class Network {

  private final Net net;

  private Network(Net net) {
    this.net = net;
  }

  /** That of an ONNX file. */
  public static Network onnx(byte[] file) {
    try (Mats mats = new Mats()) {
      return new Network(Dnn.readNetFromONNX(mats.own(new MatOfByte(file))));
    }
  }

  /** That of a file of layers and one of weights, as Darknet writes them. */
  public static Network darknet(byte[] layers, byte[] weights) {
    try (Mats mats = new Mats()) {
      return new Network(
          Dnn.readNetFromDarknet(
              mats.own(new MatOfByte(layers)), mats.own(new MatOfByte(weights))));
    }
  }

  /** A file that lies beside a class. */
  public static byte[] file(Class<?> beside, String name) {
    try (InputStream in = beside.getResourceAsStream(name)) {
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * Runs it.
   *
   * @param shape of what goes in: how many, channels, rows and columns
   * @param values that go in, in that order
   * @return what comes out, flat
   */
  public synchronized float[] run(int[] shape, float[] values) {
    try (Mats mats = new Mats()) {
      Mat in = mats.own(new Mat(shape, CvType.CV_32F));
      in.put(new int[shape.length], values);
      net.setInput(in);
      Mat out = mats.own(net.forward());
      float[] said = new float[(int) out.total()];
      out.get(new int[out.dims()], said);
      return said;
    }
  }
}
