package sheaf.scanner.proof;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import sheaf.core.reading.PageReading;
import sheaf.core.reading.Reason;

/** The words above a proof picture. */
final class ProofCaption {

  private ProofCaption() {}

  /** Lines of at most so many characters: what the sheet is, how it ended, and why. */
  static List<String> of(PageReading reading, int width) {
    List<String> lines = new ArrayList<>();
    String sheet =
        reading
            .sheet()
            .map(
                code ->
                    "job %s, sheet %d, %s"
                        .formatted(
                            code.job().spoken(), code.number(), code.layout().kind().label()))
            .orElse("sheet unknown");
    lines.add(reading.state().label().toUpperCase(Locale.ROOT) + ": " + sheet);
    int number = 0;
    for (Reason reason : reading.reasons()) {
      number++;
      lines.addAll(wrap(number + ". " + plain(reason.message()), width));
    }
    return lines;
  }

  /** The drawing font knows only ASCII. */
  private static String plain(String text) {
    return Normalizer.normalize(text, Normalizer.Form.NFKD).replaceAll("[^\\x20-\\x7E]", "");
  }

  private static List<String> wrap(String text, int width) {
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : text.split(" ")) {
      if (line.length() > 0 && line.length() + 1 + word.length() > width) {
        lines.add(line.toString());
        line.setLength(0);
        line.append("   ");
      }
      line.append(line.length() == 0 ? "" : " ").append(word);
    }
    lines.add(line.toString());
    return lines;
  }
}
