package sheaf.samples.scan;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageTypeSpecifier;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.metadata.IIOMetadata;
import javax.imageio.metadata.IIOMetadataNode;
import javax.imageio.stream.ImageOutputStream;

/** Files as scanners write them. */
public final class ScanFile {

  private static final String JPEG_METADATA = "javax_imageio_jpeg_image_1.0";
  private static final String PNG_METADATA = "javax_imageio_png_1.0";
  private static final double INCHES_PER_METRE = 1000 / 25.4;

  private ScanFile() {}

  /**
   * A JPEG file.
   *
   * @param quality 1 to 100
   * @param dpi to state, or 0 to state none
   */
  public static byte[] jpeg(BufferedImage image, int quality, int dpi) {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
    ByteArrayOutputStream file = new ByteArrayOutputStream();
    try (ImageOutputStream out = ImageIO.createImageOutputStream(file)) {
      ImageWriteParam parameters = writer.getDefaultWriteParam();
      parameters.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
      parameters.setCompressionQuality(quality / 100f);
      IIOMetadata metadata =
          writer.getDefaultImageMetadata(new ImageTypeSpecifier(image), parameters);
      if (dpi > 0) {
        state(metadata, dpi);
      }
      writer.setOutput(out);
      writer.write(null, new IIOImage(image, null, metadata), parameters);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } finally {
      writer.dispose();
    }
    return file.toByteArray();
  }

  /** A photo as phones write it: JPEG with Exif in place of JFIF. */
  public static byte[] photo(BufferedImage image, int quality, int orientation) {
    return Exif.instead(jpeg(image, quality, 0), orientation);
  }

  /** A PNG file that states its resolution. */
  public static byte[] png(BufferedImage image, int dpi) {
    ImageWriter writer = ImageIO.getImageWritersByFormatName("png").next();
    ByteArrayOutputStream file = new ByteArrayOutputStream();
    try (ImageOutputStream out = ImageIO.createImageOutputStream(file)) {
      ImageWriteParam parameters = writer.getDefaultWriteParam();
      parameters.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
      parameters.setCompressionQuality(0);
      IIOMetadata metadata =
          writer.getDefaultImageMetadata(new ImageTypeSpecifier(image), parameters);
      IIOMetadataNode root = new IIOMetadataNode(PNG_METADATA);
      IIOMetadataNode physical = new IIOMetadataNode("pHYs");
      String density = String.valueOf(Math.round(dpi * INCHES_PER_METRE));
      physical.setAttribute("pixelsPerUnitXAxis", density);
      physical.setAttribute("pixelsPerUnitYAxis", density);
      physical.setAttribute("unitSpecifier", "meter");
      root.appendChild(physical);
      metadata.mergeTree(PNG_METADATA, root);
      writer.setOutput(out);
      writer.write(null, new IIOImage(image, null, metadata), parameters);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } finally {
      writer.dispose();
    }
    return file.toByteArray();
  }

  private static void state(IIOMetadata metadata, int dpi) throws IOException {
    IIOMetadataNode root = (IIOMetadataNode) metadata.getAsTree(JPEG_METADATA);
    IIOMetadataNode jfif = (IIOMetadataNode) root.getElementsByTagName("app0JFIF").item(0);
    jfif.setAttribute("resUnits", "1");
    jfif.setAttribute("Xdensity", String.valueOf(dpi));
    jfif.setAttribute("Ydensity", String.valueOf(dpi));
    metadata.setFromTree(JPEG_METADATA, root);
  }
}
