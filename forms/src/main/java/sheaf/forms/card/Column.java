package sheaf.forms.card;

import java.io.IOException;
import sheaf.core.layout.Ink.Align;
import sheaf.core.layout.Ink.Weight;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;
import sheaf.forms.draw.Pen;

/** A column of text on a page: each thing written goes below the last. */
final class Column {

  private static final double HEADING = 10;
  private static final double RULE_WIDTH = 0.4;

  private final Pen pen;
  private final double x;
  private final double width;
  private double y;

  Column(Pen pen, double x, double y, double width) {
    this.pen = pen;
    this.x = x;
    this.y = y;
    this.width = width;
  }

  /** Where the next thing goes. */
  double y() {
    return y;
  }

  void skip(double mm) {
    y += mm;
  }

  void text(String text, double size) throws IOException {
    write(text, Weight.REGULAR, size);
  }

  void bold(String text, double size) throws IOException {
    write(text, Weight.BOLD, size);
  }

  /**
   * A name on one line, smaller if need be; one that is still too long takes a second line, and
   * what is too long for both ends in three dots.
   */
  void name(String text, double size, double smallest) throws IOException {
    double fitting = size;
    while (fitting > smallest && pen.widthOf(text, Weight.REGULAR, fitting) > width) {
      fitting -= 0.5;
    }
    String first = beginning(text, fitting);
    write(first, Weight.REGULAR, fitting);
    String rest = text.substring(first.length()).strip();
    if (!rest.isEmpty()) {
      write(cut(rest, fitting), Weight.REGULAR, fitting);
    }
  }

  /** The most that fits one line, up to the end of a word unless the first is too long itself. */
  private String beginning(String text, double size) {
    int end = text.length();
    while (pen.widthOf(text.substring(0, end), Weight.REGULAR, size) > width) {
      int space = text.lastIndexOf(' ', end - 1);
      end = space > 0 ? space : text.offsetByCodePoints(end, -1);
    }
    return text.substring(0, end);
  }

  private String cut(String text, double size) {
    String shown = text;
    while (pen.widthOf(shown, Weight.REGULAR, size) > width) {
      shown = shown.substring(0, shown.offsetByCodePoints(shown.length(), -2)) + "…";
    }
    return shown;
  }

  /** A section's name over a line as wide as the column. */
  void heading(String text) throws IOException {
    bold(text, HEADING);
    y += 0.6;
    pen.width(RULE_WIDTH);
    pen.line(new MmPoint(x, y), new MmPoint(x + width, y));
    y += 1.4;
  }

  private void write(String text, Weight weight, double size) throws IOException {
    double height = pen.heightOf(text, width, weight, size);
    y += pen.block(text, new MmRect(x, y, width, height), weight, size, Align.LEFT);
  }
}
