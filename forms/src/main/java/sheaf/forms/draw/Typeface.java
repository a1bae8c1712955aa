package sheaf.forms.draw;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import sheaf.core.layout.Ink.Weight;
import sheaf.core.page.MmRect;

/**
 * The one typeface, embedded as a subset in each document.
 *
 * <p>Its files are parsed once for the life of the program, which halves the time a page takes.
 */
public final class Typeface {

  private static final TrueTypeFont REGULAR = parse("Lato-Regular.ttf");
  private static final TrueTypeFont BOLD = parse("Lato-Bold.ttf");

  /** Looking a letter up in the font takes far longer than looking it up here. */
  private static final Map<Integer, Letter> REGULAR_LETTERS = new ConcurrentHashMap<>();

  private static final Map<Integer, Letter> BOLD_LETTERS = new ConcurrentHashMap<>();

  /** Printed in place of a letter that the typeface lacks: WHITE SQUARE, which it has. */
  public static final char LACKING = '\u25a1';

  /** From line to line, in letter sizes. */
  private static final double LEADING = 1.3;

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
    double thousandths = 0;
    for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
      Letter letter = letter(text.codePointAt(i), weight);
      thousandths += letter.known() ? letter.width() : letter(LACKING, weight).width();
    }
    return thousandths / 1000 * size * Mm.PER_POINT;
  }

  /** Puts letters into the subsets that are embedded, before anything is written with them. */
  void embed(String letters) {
    for (Weight weight : Weight.values()) {
      printable(letters, weight).codePoints().forEach(of(weight)::addToSubset);
    }
  }

  /** From line to line in millimetres, at a size in points. */
  public static double lineHeight(double size) {
    return size * LEADING * Mm.PER_POINT;
  }

  /** Height in millimetres that a text needs at a width. */
  public double heightOf(String text, double width, Weight weight, double size) {
    return lines(text, width, weight, size).size() * lineHeight(size);
  }

  /**
   * A text broken at its spaces into lines of at most a width in millimetres.
   *
   * @throws TextDoesNotFitException when a word is wider than that
   */
  List<String> lines(String text, double width, Weight weight, double size) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    double space = width(" ", weight, size);
    double taken = 0;
    for (String word : text.split(" ")) {
      double own = width(word, weight, size);
      if (own > width) {
        throw new TextDoesNotFitException(word, new MmRect(0, 0, width, 1));
      }
      if (!line.isEmpty() && taken + space + own > width) {
        lines.add(line.toString());
        line.setLength(0);
      }
      taken = line.isEmpty() ? own : taken + space + own;
      line.append(line.isEmpty() ? "" : " ").append(word);
    }
    lines.add(line.toString());
    return lines;
  }

  /** The text with spaces put into every word that is wider than a width in millimetres. */
  public String breakable(String text, double width, Weight weight, double size) {
    StringBuilder all = new StringBuilder();
    double taken = 0;
    for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
      String letter = Character.toString(text.codePointAt(i));
      double own = width(letter, weight, size);
      boolean inWord = !letter.equals(" ");
      if (inWord && taken > 0 && taken + own > width) {
        all.append(' ');
        taken = 0;
      }
      taken = inWord ? taken + own : 0;
      all.append(letter);
    }
    return all.toString();
  }

  /** The text with an empty box for every character that the typeface lacks. */
  String printable(String text, Weight weight) {
    StringBuilder printable = new StringBuilder();
    text.codePoints().forEach(c -> printable.appendCodePoint(has(c, weight) ? c : LACKING));
    return printable.toString();
  }

  /** Whether a text has letters for which an empty box is printed. */
  public boolean lacksLettersOf(String text, Weight weight) {
    return text.codePoints().anyMatch(c -> !has(c, weight));
  }

  private boolean has(int codePoint, Weight weight) {
    return letter(codePoint, weight).known();
  }

  /**
   * What the typeface has for a character.
   *
   * @param known whether it has anything
   * @param width in thousandths of the letter size
   */
  private record Letter(boolean known, double width) {}

  private static Letter letter(int codePoint, Weight weight) {
    return weight == Weight.BOLD
        ? BOLD_LETTERS.computeIfAbsent(codePoint, c -> look(BOLD, c))
        : REGULAR_LETTERS.computeIfAbsent(codePoint, c -> look(REGULAR, c));
  }

  private static Letter look(TrueTypeFont font, int codePoint) {
    synchronized (Typeface.class) {
      try {
        int glyph = font.getUnicodeCmapLookup().getGlyphId(codePoint);
        return new Letter(glyph != 0, font.getAdvanceWidth(glyph) * 1000.0 / font.getUnitsPerEm());
      } catch (IOException e) {
        throw new UncheckedIOException(e);
      }
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
