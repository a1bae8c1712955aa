package sheaf.desk.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import sheaf.core.job.SheetCode;
import sheaf.core.measure.Distance;
import sheaf.core.page.MmVector;
import sheaf.core.reading.ReadingState;

/** Lines of plain text. */
public final class Text {

  /** Narrower than this, wrapping does more harm than a line that is too long. */
  private static final int NARROWEST = 20;

  private Text() {}

  /**
   * Breaks a text at its spaces.
   *
   * @param text one paragraph
   * @param width the most characters a line should have
   * @return at least one line; a longer word stands alone
   */
  public static List<String> wrap(String text, int width) {
    int room = Math.max(width, NARROWEST);
    List<String> lines = new ArrayList<>();
    StringBuilder line = new StringBuilder();
    for (String word : text.split(" ")) {
      if (!line.isEmpty() && line.length() + 1 + word.length() > room) {
        lines.add(line.toString());
        line.setLength(0);
      }
      line.append(line.isEmpty() ? "" : " ").append(word);
    }
    lines.add(line.toString());
    return lines;
  }

  /**
   * A paragraph whose first line begins with a lead and whose other lines are indented as far.
   *
   * @param lead such as {@code " - "}
   * @param text the paragraph
   * @param width of the whole line
   * @return lines, each with its end
   */
  public static String hanging(String lead, String text, int width) {
    List<String> lines = wrap(text, width - lead.length());
    return lead + String.join("\n" + " ".repeat(lead.length()), lines) + "\n";
  }

  /** A count with its noun: {@code 1 sheet}, {@code 2 sheets}. */
  public static String count(int number, String noun) {
    return number + " " + noun + (number == 1 ? "" : "s");
  }

  /** A length to a tenth of a millimetre, without its unit. */
  static String tenths(double mm) {
    return String.format(Locale.ROOT, "%.1f", mm);
  }

  /** A way on paper by its parts: {@code 3.0 mm left, 3.1 mm low}. */
  static String parts(MmVector way) {
    return "%s mm %s, %s mm %s"
        .formatted(
            tenths(Math.abs(way.dx())),
            way.dx() < 0 ? "left" : "right",
            tenths(Math.abs(way.dy())),
            way.dy() < 0 ? "high" : "low");
  }

  /** The line that names a sheet and what was shot at it. */
  static String sheet(
      SheetCode sheet, Optional<Distance> from, String shots, ReadingState state, int width) {
    String head =
        "Sheet %d, %s%s: %s%s"
            .formatted(
                sheet.number(),
                sheet.layout().kind().label(),
                from.map(distance -> " at " + distance).orElse(""),
                shots,
                state == ReadingState.CHECK ? " (with doubts)" : "");
    return hanging("  ", head, width);
  }

  /** Shortens a text in its middle, where the names of many scans are alike. */
  public static String elide(String text, int width) {
    if (text.length() <= width) {
      return text;
    }
    int tail = (width - 2) / 2;
    return text.substring(0, width - 2 - tail) + ".." + text.substring(text.length() - tail);
  }
}
