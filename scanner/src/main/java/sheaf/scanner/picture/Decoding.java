package sheaf.scanner.picture;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import org.opencv.core.CvType;
import org.opencv.core.Mat;
import org.opencv.core.MatOfByte;
import org.opencv.imgcodecs.Imgcodecs;
import sheaf.core.reading.ReasonCode;
import sheaf.scanner.opencv.Mats;

/** Pixels out of compressed bytes. */
final class Decoding {

  private static final int GREY = Imgcodecs.IMREAD_GRAYSCALE;
  private static final int COLOUR = Imgcodecs.IMREAD_COLOR;

  private Decoding() {}

  /** Decodes JPEG or PNG and turns it upright as a camera's orientation tag says. */
  static Mat upright(byte[] file, boolean colour) throws UnreadableException {
    return decode(file, colour ? COLOUR : GREY);
  }

  /** Decodes a JPEG as it lies, as inside a PDF, where an orientation tag means nothing. */
  static Mat asItLies(byte[] file, boolean colour) throws UnreadableException {
    return decode(file, (colour ? COLOUR : GREY) | Imgcodecs.IMREAD_IGNORE_ORIENTATION);
  }

  private static Mat decode(byte[] file, int flags) throws UnreadableException {
    try (Mats mats = new Mats()) {
      MatOfByte buffer = mats.own(new MatOfByte(file));
      Mat pixels = Imgcodecs.imdecode(buffer, flags);
      if (pixels.empty()) {
        pixels.release();
        throw new UnreadableException(
            ReasonCode.DAMAGED_FILE, "The picture is damaged: copy or scan it again.");
      }
      return pixels;
    }
  }

  /** Copies a Java image into a matrix: grey stays grey, all else becomes blue, green, red. */
  static Mat of(BufferedImage image) {
    boolean grey =
        image.getRaster().getNumBands() == 1 && image.getColorModel().getNumColorComponents() == 1;
    BufferedImage plain =
        new BufferedImage(
            image.getWidth(),
            image.getHeight(),
            grey ? BufferedImage.TYPE_BYTE_GRAY : BufferedImage.TYPE_3BYTE_BGR);
    if (grey) {
      copyGrey(image, plain);
    } else {
      plain.getGraphics().drawImage(image, 0, 0, null);
    }
    Mat pixels =
        new Mat(image.getHeight(), image.getWidth(), grey ? CvType.CV_8UC1 : CvType.CV_8UC3);
    pixels.put(0, 0, ((DataBufferByte) plain.getRaster().getDataBuffer()).getData());
    return pixels;
  }

  /**
   * Copies grey values as stored: drawing would convert them from linear light, which darkens a
   * scan's midtones.
   */
  private static void copyGrey(BufferedImage from, BufferedImage to) {
    int depth = from.getSampleModel().getSampleSize(0);
    if (depth == 8 && !(from.getColorModel() instanceof java.awt.image.IndexColorModel)) {
      to.getRaster().setRect(from.getRaster());
    } else {
      int[] row = new int[from.getWidth()];
      for (int y = 0; y < from.getHeight(); y++) {
        from.getRGB(0, y, row.length, 1, row, 0, row.length);
        for (int x = 0; x < row.length; x++) {
          row[x] &= 0xFF;
        }
        to.getRaster().setSamples(0, y, row.length, 1, 0, row);
      }
    }
  }
}
