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
   * A name of any length on one line: smaller if need be, and cut short if it is still too long.
   */
  void name(String text, double size, double smallest) throws IOException {
    double fitting = size;
    while (fitting > smallest && pen.widthOf(text, Weight.REGULAR, fitting) > width) {
      fitting -= 0.5;
    }
    String shown = text;
    while (pen.widthOf(shown, Weight.REGULAR, fitting) > width) {
      shown = shown.substring(0, shown.offsetByCodePoints(shown.length(), -2)) + "…";
    }
    write(shown, Weight.REGULAR, fitting);
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
