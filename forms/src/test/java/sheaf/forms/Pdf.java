package sheaf.forms;

import com.google.zxing.Binarizer;
import com.google.zxing.BinaryBitmap;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.common.GlobalHistogramBinarizer;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.cos.COSNumber;
import org.apache.pdfbox.pdfparser.PDFStreamParser;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import sheaf.core.page.MmRect;

/** A finished PDF as its reader sees it. */
final class Pdf {

  static final double MM_PER_POINT = 25.4 / 72;

  private final byte[] bytes;

  private Pdf(byte[] bytes) {
    this.bytes = bytes;
  }

  /** Something that writes a PDF. */
  @FunctionalInterface
  interface Writer {
    void write(OutputStream out) throws IOException;
  }

  static Pdf of(Writer writer) {
    try (ByteArrayOutputStream out = new ByteArrayOutputStream()) {
      writer.write(out);
      return new Pdf(out.toByteArray());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  byte[] bytes() {
    return bytes.clone();
  }

  PDDocument open() throws IOException {
    return Loader.loadPDF(bytes);
  }

  /** The text with every run of white space as one space. */
  String text() throws IOException {
    try (PDDocument document = open()) {
      return new PDFTextStripper().getText(document).replaceAll("\\s+", " ");
    }
  }

  BufferedImage grey(int page, int dpi) throws IOException {
    return render(page, dpi, ImageType.GRAY);
  }

  BufferedImage colour(int page, int dpi) throws IOException {
    return render(page, dpi, ImageType.RGB);
  }

  private BufferedImage render(int page, int dpi, ImageType type) throws IOException {
    try (PDDocument document = open()) {
      return new PDFRenderer(document).renderImageWithDPI(page, dpi, type);
    }
  }

  /**
   * What the QR code inside a rectangle says; empty when none can be read. Where modules are few
   * pixels wide and no whole number of them, the reader's grid at times needs finer pixels.
   */
  static Optional<String> code(BufferedImage page, int dpi, MmRect place) {
    int x = (int) Math.max(0, place.x() / 25.4 * dpi);
    int y = (int) Math.max(0, place.y() / 25.4 * dpi);
    int width = Math.min((int) (place.width() / 25.4 * dpi), page.getWidth() - x);
    int height = Math.min((int) (place.height() / 25.4 * dpi), page.getHeight() - y);
    BufferedImage crop = page.getSubimage(x, y, width, height);
    return code(crop).or(() -> code(enlarged(crop, 2))).or(() -> code(enlarged(crop, 3)));
  }

  private static Optional<String> code(BufferedImage crop) {
    int width = crop.getWidth();
    int height = crop.getHeight();
    int[] pixels = crop.getRGB(0, 0, width, height, null, 0, width);
    RGBLuminanceSource source = new RGBLuminanceSource(width, height, pixels);
    return code(new HybridBinarizer(source)).or(() -> code(new GlobalHistogramBinarizer(source)));
  }

  private static BufferedImage enlarged(BufferedImage crop, int times) {
    int width = times * crop.getWidth();
    int height = times * crop.getHeight();
    BufferedImage large = new BufferedImage(width, height, BufferedImage.TYPE_BYTE_GRAY);
    Graphics2D g = large.createGraphics();
    g.setRenderingHint(
        RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
    g.drawImage(crop, 0, 0, width, height, null);
    g.dispose();
    return large;
  }

  private static Optional<String> code(Binarizer binary) {
    try {
      return Optional.of(new QRCodeReader().decode(new BinaryBitmap(binary)).getText());
    } catch (ReaderException e) {
      return Optional.empty();
    }
  }

  /**
   * A letter on a page.
   *
   * @param text what it is
   * @param turned whether it reads upward
   * @param box from the height of a capital to the foot of a descender, in millimetres
   * @param size in points
   */
  record Letter(String text, boolean turned, MmRect box, double size) {}

  /** Every letter of a page; blanks are left out, and accents that stand over another letter. */
  List<Letter> letters(int page) throws IOException {
    List<Letter> letters = new ArrayList<>();
    PDFTextStripper stripper =
        new PDFTextStripper() {
          @Override
          protected void processTextPosition(TextPosition text) {
            if (!text.getUnicode().isBlank() && text.getWidthDirAdj() > 0) {
              letters.add(letter(text));
            }
          }
        };
    stripper.setStartPage(page + 1);
    stripper.setEndPage(page + 1);
    try (PDDocument document = open()) {
      stripper.getText(document);
    }
    return letters;
  }

  /** Every width that a page sets for its lines, in millimetres. */
  List<Double> lineWidths(int page) throws IOException {
    List<Double> widths = new ArrayList<>();
    try (PDDocument document = open()) {
      List<Object> tokens = new PDFStreamParser(document.getPage(page)).parse();
      for (int i = 1; i < tokens.size(); i++) {
        // ISO 32000-1, table 57: the operator w sets the width, in points without a scale.
        if (tokens.get(i) instanceof Operator operator && operator.getName().equals("w")) {
          widths.add(((COSNumber) tokens.get(i - 1)).floatValue() * MM_PER_POINT);
        }
      }
    }
    return widths;
  }

  /** Where a page has pictures, in millimetres from its top-left corner. */
  List<MmRect> pictures(int page) throws IOException {
    List<MmRect> places = new ArrayList<>();
    try (PDDocument document = open()) {
      float height = document.getPage(page).getMediaBox().getHeight();
      List<Object> tokens = new PDFStreamParser(document.getPage(page)).parse();
      for (int i = 8; i < tokens.size(); i++) {
        // ISO 32000-1, 8.9.5: a picture fills the unit square, which the matrix before it places.
        if (tokens.get(i) instanceof Operator operator && operator.getName().equals("Do")) {
          double[] matrix =
              tokens.subList(i - 8, i - 2).stream()
                  .mapToDouble(number -> ((COSNumber) number).floatValue())
                  .toArray();
          places.add(mm(matrix[4], height - matrix[5] - matrix[3], matrix[0], matrix[3]));
        }
      }
    }
    return places;
  }

  /** Lato's capitals are 0.72 of its size high and its descenders reach down 0.21 of it. */
  private static Letter letter(TextPosition text) {
    double size = text.getFontSizeInPt();
    double up = 0.72 * size;
    double down = 0.21 * size;
    double advance = text.getWidthDirAdj();
    // The place of the letter's origin, y up from the page's foot.
    double x = text.getTextMatrix().getTranslateX();
    double y = text.getPageHeight() - text.getTextMatrix().getTranslateY();
    boolean turned = text.getDir() == 90;
    MmRect box =
        turned ? mm(x - up, y - advance, up + down, advance) : mm(x, y - up, advance, up + down);
    return new Letter(text.getUnicode(), turned, box, size);
  }

  private static MmRect mm(double x, double y, double width, double height) {
    double f = MM_PER_POINT;
    return new MmRect(x * f, y * f, width * f, height * f);
  }
}
