package sheaf.scanner.picture;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.encryption.InvalidPasswordException;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import sheaf.core.reading.ReasonCode;

/** A PDF of scanned pages: the embedded scans themselves, not a rendering of them. */
final class PdfFile implements PictureFile {

  private static final String DCT = COSName.DCT_DECODE.getName();

  /** Readers look for the header within this many bytes (ISO 32000-1, annex H, note 13). */
  private static final int HEADER_WITHIN = 1024;

  /** A picture that covers less of its page than this is a logo or one strip of a scan. */
  private static final double WHOLE_PAGE = 0.6;

  /** Resolution to draw a page at whose scan comes in strips. */
  private static final float STRIPS_DPI = 300;

  private final PDDocument document;

  private PdfFile(PDDocument document) {
    this.document = document;
  }

  static boolean looksLike(byte[] file) {
    int length = Math.min(file.length, HEADER_WITHIN);
    return new String(file, 0, length, StandardCharsets.ISO_8859_1).contains("%PDF-");
  }

  static PdfFile open(byte[] content) throws UnreadableException {
    try {
      PDDocument document = Loader.loadPDF(content);
      // Each picture is looked at once: kept ones would only fill memory.
      document.setResourceCache(null);
      return new PdfFile(document);
    } catch (InvalidPasswordException e) {
      throw new UnreadableException(
          ReasonCode.ENCRYPTED_PDF, "The PDF asks for a password: save it without one.");
    } catch (IOException | RuntimeException e) {
      throw damaged();
    }
  }

  @Override
  public int pages() {
    return document.getNumberOfPages();
  }

  @Override
  public Picture page(int index) throws UnreadableException {
    PDPage page = document.getPage(index);
    try {
      List<PlacedImage> images = PlacedImage.on(page);
      if (images.isEmpty()) {
        throw new UnreadableException(
            ReasonCode.PDF_WITHOUT_PICTURE,
            "This PDF page holds no scanned picture: scan or photograph the paper itself.");
      }
      PlacedImage largest = PlacedImage.largest(images);
      if (largest.areaInPoints() < WHOLE_PAGE * area(page)) {
        return strips(index);
      }
      return scan(largest);
    } catch (IOException | RuntimeException e) {
      // The library throws various unchecked exceptions on damaged images.
      throw damaged();
    }
  }

  private static double area(PDPage page) {
    return (double) page.getCropBox().getWidth() * page.getCropBox().getHeight();
  }

  private static Picture scan(PlacedImage placed) throws IOException, UnreadableException {
    PDImageXObject image = placed.image();
    Optional<Resolution> stated = Optional.of(placed.resolution());
    boolean colour = image.getColorSpace().getNumberOfComponents() == 3;
    new PictureHeader(image.getWidth(), image.getHeight(), colour, stated).refuseUnlessReasonable();
    if (isPlainJpeg(image)) {
      try (InputStream jpeg = image.createInputStream(List.of(DCT))) {
        return new Picture(Decoding.asItLies(jpeg.readAllBytes(), colour), stated);
      }
    }
    return new Picture(Decoding.of(image.getImage()), stated);
  }

  private static boolean isPlainJpeg(PDImageXObject image) throws IOException {
    int components = image.getColorSpace().getNumberOfComponents();
    List<COSName> filters = image.getStream().getFilters();
    return (components == 1 || components == 3)
        && !filters.isEmpty()
        && filters.get(filters.size() - 1).equals(COSName.DCT_DECODE)
        && image.getDecode() == null;
  }

  private Picture strips(int index) throws IOException {
    PDFRenderer renderer = new PDFRenderer(document);
    Resolution stated = Resolution.ofDpi(STRIPS_DPI, STRIPS_DPI);
    return new Picture(
        Decoding.of(renderer.renderImageWithDPI(index, STRIPS_DPI, ImageType.RGB)),
        Optional.of(stated));
  }

  private static UnreadableException damaged() {
    return new UnreadableException(
        ReasonCode.DAMAGED_FILE, "The PDF is damaged or breaks off: copy or scan it again.");
  }

  @Override
  public void close() {
    try {
      document.close();
    } catch (IOException e) {
      // Read from memory: there is nothing to lose and nothing a person could do.
      throw new java.io.UncheckedIOException(e);
    }
  }
}
