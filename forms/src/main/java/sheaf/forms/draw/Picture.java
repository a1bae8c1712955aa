package sheaf.forms.draw;

import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.color.ColorSpace;
import java.awt.image.BufferedImage;
import java.awt.image.Raster;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import javax.imageio.ImageIO;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.graphics.image.LosslessFactory;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;

/**
 * A picture as people see it: upright, in red, green and blue, with white behind what lets through.
 *
 * <p>Such a picture may stand in any archival document: PDF/A-3b wants colours that its output
 * intent explains (ISO 19005-3, 6.2.4), and a printer needs no blending for it.
 */
public final class Picture {

  /** On the longer side: printed 50 mm long, 800 pixels are 400 dots an inch. */
  private static final int MOST_PX = 800;

  private static final int WHITE = 255;

  private final BufferedImage pixels;

  private Picture(BufferedImage pixels) {
    this.pixels = pixels;
  }

  /**
   * Decodes a picture, turned upright as its orientation tag says; one with more pixels than print
   * shows is made smaller.
   *
   * @param file a whole PNG or JPEG file
   * @throws IOException when it cannot be decoded
   */
  public static Picture of(byte[] file) throws IOException {
    BufferedImage decoded = ImageIO.read(new ByteArrayInputStream(file));
    if (decoded == null) {
      throw new IOException("neither PNG nor JPEG");
    }
    BufferedImage shown = upright(onWhite(decoded), Orientation.of(file));
    while (Math.max(shown.getWidth(), shown.getHeight()) > MOST_PX) {
      shown = halved(shown);
    }
    return new Picture(shown);
  }

  /** Its width for a height of one. */
  public double aspect() {
    return (double) pixels.getWidth() / pixels.getHeight();
  }

  PDImageXObject in(PDDocument document) throws IOException {
    return LosslessFactory.createFromImage(document, pixels);
  }

  private static BufferedImage onWhite(BufferedImage decoded) {
    boolean grey = decoded.getColorModel().getColorSpace().getType() == ColorSpace.TYPE_GRAY;
    BufferedImage shown = blank(decoded.getWidth(), decoded.getHeight());
    for (int y = 0; y < shown.getHeight(); y++) {
      for (int x = 0; x < shown.getWidth(); x++) {
        int argb = grey ? grey(decoded, x, y) : decoded.getRGB(x, y);
        shown.setRGB(x, y, onWhite(argb));
      }
    }
    return shown;
  }

  /** The grey as it is stored: Java takes it for linear light and would print it too bright. */
  private static int grey(BufferedImage picture, int x, int y) {
    Raster raster = picture.getRaster();
    int most = (1 << picture.getColorModel().getComponentSize(0)) - 1;
    int tone = raster.getSample(x, y, 0) * WHITE / most;
    int cover = raster.getNumBands() > 1 ? raster.getSample(x, y, 1) * WHITE / most : WHITE;
    return cover << 24 | tone << 16 | tone << 8 | tone;
  }

  private static int onWhite(int argb) {
    int cover = argb >>> 24;
    int rgb = 0;
    for (int shift = 16; shift >= 0; shift -= 8) {
      int tone = argb >> shift & WHITE;
      rgb |= (tone * cover + WHITE * (WHITE - cover) + WHITE / 2) / WHITE << shift;
    }
    return rgb;
  }

  private static BufferedImage upright(BufferedImage lying, Orientation orientation) {
    int width = lying.getWidth();
    int height = lying.getHeight();
    boolean turned = orientation.turned();
    BufferedImage shown = blank(turned ? height : width, turned ? width : height);
    for (int y = 0; y < shown.getHeight(); y++) {
      for (int x = 0; x < shown.getWidth(); x++) {
        int column = turned ? y : x;
        int row = turned ? x : y;
        shown.setRGB(
            x,
            y,
            lying.getRGB(
                orientation.fromRight() ? width - 1 - column : column,
                orientation.fromBottom() ? height - 1 - row : row));
      }
    }
    return shown;
  }

  private static BufferedImage halved(BufferedImage large) {
    BufferedImage small =
        blank(Math.max(1, large.getWidth() / 2), Math.max(1, large.getHeight() / 2));
    Graphics2D graphics = small.createGraphics();
    graphics.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
    graphics.drawImage(large, 0, 0, small.getWidth(), small.getHeight(), null);
    graphics.dispose();
    return small;
  }

  private static BufferedImage blank(int width, int height) {
    return new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
  }
}
