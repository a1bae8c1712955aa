package sheaf.forms.draw;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import sheaf.core.layout.Ink.Weight;

/**
 * The one typeface, embedded as a subset in each document.
 *
 * <p>Its files are parsed once for the life of the program, which halves the time a page takes.
 */
public final class Typeface {

  private static final TrueTypeFont REGULAR = parse("Lato-Regular.ttf");
  private static final TrueTypeFont BOLD = parse("Lato-Bold.ttf");

  private final PDFont regular;
  private final PDFont bold;

  /** The typeface for one document. */
  public Typeface(PDDocument document) throws IOException {
    // Parsed fonts keep a reading position, so two documents must not load them at once.
    synchronized (Typeface.class) {
      regular = PDType0Font.load(document, REGULAR, true);
      bold = PDType0Font.load(document, BOLD, true);
    }
  }

  PDFont of(Weight weight) {
    return weight == Weight.BOLD ? bold : regular;
  }

  /** Width of a text in millimetres at a size in points. */
  public double width(String text, Weight weight, double size) {
    try {
      return of(weight).getStringWidth(printable(text, weight)) / 1000 * size * Mm.PER_POINT;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Puts letters into the subsets that are embedded, before anything is written with them. */
  void embed(String letters) {
    for (Weight weight : Weight.values()) {
      printable(letters, weight).codePoints().forEach(of(weight)::addToSubset);
    }
  }

  /** The text with every character that the typeface lacks replaced by a question mark. */
  String printable(String text, Weight weight) {
    StringBuilder printable = new StringBuilder();
    text.codePoints().forEach(c -> printable.appendCodePoint(has(c, weight) ? c : '?'));
    return printable.toString();
  }

  private boolean has(int codePoint, Weight weight) {
    try {
      return (weight == Weight.BOLD ? BOLD : REGULAR).getUnicodeCmapLookup().getGlyphId(codePoint)
          != 0;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static TrueTypeFont parse(String file) {
    try (InputStream font = Typeface.class.getResourceAsStream("/sheaf/forms/fonts/" + file)) {
      TrueTypeFont parsed = new TTFParser().parse(new RandomAccessReadBuffer(font.readAllBytes()));
      // Ligatures would be copied out of the finished document as nothing at all.
      parsed.setEnableGsub(false);
      return parsed;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
