package sheaf.forms.card;

import java.awt.Color;
import java.io.IOException;
import sheaf.core.layout.Ink.Weight;
import sheaf.core.page.MmPoint;
import sheaf.core.result.PairResult;
import sheaf.forms.draw.Pen;

/** What the signs in the picture of a group mean, in two lines. */
final class Legend {

  /** Height of both lines, in millimetres. */
  static final double HEIGHT = 8.6;

  private static final double SIZE = 7;
  private static final double ROW = 4.3;
  private static final double HOLE = 1;

  /** Room for a sign, and from one word to the next sign. */
  private static final double SIGN = 5;

  private static final double GAP = 4;

  private final Pen pen;
  private final Symbols symbols;
  private double x;
  private double y;

  private Legend(Pen pen, double x, double y) {
    this.pen = pen;
    this.symbols = new Symbols(pen);
    this.x = x;
    this.y = y;
  }

  static void draw(PairResult pair, double x, double y, Pen pen) throws IOException {
    Legend legend = new Legend(pen, x, y + ROW / 2);
    Symbols symbols = legend.symbols;
    legend.entry("field point's hole", at -> symbols.fieldHole(at, HOLE));
    legend.entry("broadhead's hole", at -> symbols.broadheadHole(at, HOLE));
    legend.entry("aim dot", at -> symbols.aim(at, 2));
    if (pair.offset().isPresent()) {
      legend.x = x;
      legend.y += ROW;
      legend.entry("centre of field points", symbols::fieldCentre);
      legend.entry("centre of broadheads", symbols::broadheadCentre);
      if (pair.offset().get().region().isPresent()) {
        legend.entry("its 95 % region", at -> symbols.region(at, 2, 1.3, 0));
      }
    }
  }

  /** Draws one sign at a place. */
  @FunctionalInterface
  private interface Sign {
    void draw(MmPoint place) throws IOException;
  }

  private void entry(String meaning, Sign sign) throws IOException {
    sign.draw(new MmPoint(x + SIGN / 2, y));
    pen.colour(Color.BLACK);
    pen.text(meaning, x + SIGN + 0.6, y + 0.85, Weight.REGULAR, SIZE);
    x += SIGN + 0.6 + pen.widthOf(meaning, Weight.REGULAR, SIZE) + GAP;
  }
}
