package sheaf.desk.watch;

import java.nio.charset.StandardCharsets;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The end of a PDF file: {@code startxref}, the place of the last table of objects, and {@code
 * %%EOF} (ISO 32000-2, 7.5.5).
 */
final class PdfEnd {

  /** Everything that counts stands within so many bytes from the end. */
  private static final int TAIL = 4096;

  /** A table begins with a word, or with the number of the stream that holds it. */
  private static final int HEAD_OF_TABLE = 32;

  private static final Pattern END = Pattern.compile("startxref\\s+(\\d{1,10})\\s+%%EOF");
  private static final Pattern TABLE =
      Pattern.compile("\\s*(xref\\s|\\d+\\s+\\d+\\s+obj\\b)", Pattern.DOTALL);

  private PdfEnd() {}

  static FileEnd of(byte[] file) {
    int from = Math.max(0, file.length - TAIL);
    Matcher end = END.matcher(text(file, from, file.length));
    long last = -1;
    long table = -1;
    while (end.find()) {
      last = from + end.end();
      table = Long.parseLong(end.group(1));
    }
    if (last < 0 || table >= file.length || !isTable(file, (int) table)) {
      return FileEnd.UNFINISHED;
    }
    return FileEnd.endingAt(last, file);
  }

  private static boolean isTable(byte[] file, int at) {
    return TABLE.matcher(text(file, at, Math.min(file.length, at + HEAD_OF_TABLE))).lookingAt();
  }

  private static String text(byte[] file, int from, int to) {
    return new String(file, from, to - from, StandardCharsets.ISO_8859_1);
  }
}
