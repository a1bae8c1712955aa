package sheaf.scanner.picture;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.metadata.IIOMetadataFormatImpl;
import javax.imageio.metadata.IIOMetadataNode;
import org.w3c.dom.NodeList;
import sheaf.core.reading.ReasonCode;

/** A TIFF file of one or more pages, decoded one page at a time. */
final class TiffFile implements PictureFile {

  private final ImageReader reader;

  private TiffFile(ImageReader reader) {
    this.reader = reader;
  }

  static boolean looksLike(byte[] file) {
    return file.length > 8
        && ((file[0] == 'I' && file[1] == 'I' && file[2] == 42 && file[3] == 0)
            || (file[0] == 'M' && file[1] == 'M' && file[2] == 0 && file[3] == 42));
  }

  static TiffFile open(byte[] content) throws UnreadableException {
    ImageReader reader = ImageIO.getImageReadersByFormatName("tiff").next();
    try {
      reader.setInput(ImageIO.createImageInputStream(new ByteArrayInputStream(content)));
      return new TiffFile(reader);
    } catch (IOException e) {
      throw damaged();
    }
  }

  @Override
  public int pages() throws UnreadableException {
    try {
      int pages = reader.getNumImages(true);
      if (pages < 1) {
        throw damaged();
      }
      return pages;
    } catch (IOException | RuntimeException e) {
      throw damaged();
    }
  }

  @Override
  public Picture page(int index) throws UnreadableException {
    try {
      Optional<Resolution> stated = stated(index);
      new PictureHeader(reader.getWidth(index), reader.getHeight(index), true, stated)
          .refuseUnlessReasonable();
      BufferedImage image = reader.read(index);
      return new Picture(Decoding.of(image), stated);
    } catch (IOException | RuntimeException e) {
      // The reader of the platform throws various unchecked exceptions on damaged files.
      throw damaged();
    }
  }

  /** The platform's neutral metadata: a pixel's size in millimetres. */
  private Optional<Resolution> stated(int index) throws IOException {
    IIOMetadataNode root =
        (IIOMetadataNode)
            reader
                .getImageMetadata(index)
                .getAsTree(IIOMetadataFormatImpl.standardMetadataFormatName);
    Optional<Double> across = pixelSize(root, "HorizontalPixelSize");
    Optional<Double> down = pixelSize(root, "VerticalPixelSize");
    return across.flatMap(a -> down.map(d -> new Resolution(1 / a, 1 / d)));
  }

  private static Optional<Double> pixelSize(IIOMetadataNode root, String name) {
    NodeList found = root.getElementsByTagName(name);
    if (found.getLength() == 0) {
      return Optional.empty();
    }
    double size = Double.parseDouble(((IIOMetadataNode) found.item(0)).getAttribute("value"));
    return size > 0 && Double.isFinite(size) ? Optional.of(size) : Optional.empty();
  }

  private static UnreadableException damaged() {
    return new UnreadableException(
        ReasonCode.DAMAGED_FILE, "The TIFF file is damaged or breaks off: copy or scan it again.");
  }

  @Override
  public void close() {
    reader.dispose();
  }
}
