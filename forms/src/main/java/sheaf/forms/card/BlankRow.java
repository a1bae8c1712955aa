package sheaf.forms.card;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import sheaf.core.layout.Ink.Align;
import sheaf.core.layout.Ink.Weight;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;
import sheaf.core.record.Measure;
import sheaf.forms.draw.Part;
import sheaf.forms.draw.TaggedPen;
import sheaf.forms.draw.Typeface;

/**
 * Measures that nobody took, beside each other: each its name and an empty line to write on.
 *
 * @param table that the row belongs to
 * @param measures of the row, at most as many as there are columns
 * @param answers how many cells a row of the table has behind its heading
 */
record BlankRow(OnePart table, List<Measure> measures, int answers) implements Block {

  private static final double SIZE = 8;
  private static final double LINE = 12;
  private static final double GUTTER = 3;
  private static final double GAP = 1;

  /** High enough to write on a blank line by hand. */
  private static final double ROW = 4.7;

  private static final double BASELINE = 3.8;

  /** Room for most names and a line, in millimetres. */
  private static final double LEAST_COLUMN = 38;

  /** All rows of measures on a card of a width in millimetres. */
  static List<Block> rows(OnePart table, List<Measure> measures, int answers, double width) {
    int columns = columns(width);
    List<Block> rows = new ArrayList<>();
    for (int i = 0; i < measures.size(); i += columns) {
      List<Measure> row = measures.subList(i, Math.min(i + columns, measures.size()));
      rows.add(new BlankRow(table, row, answers));
    }
    return rows;
  }

  private static int columns(double width) {
    return (int) ((width + GUTTER) / (LEAST_COLUMN + GUTTER));
  }

  private static double own(double width) {
    int columns = columns(width);
    return (width - (columns - 1) * GUTTER) / columns;
  }

  private static double label(double width) {
    return own(width) - LINE - GAP;
  }

  @Override
  public double height(Typeface typeface, double width) {
    double highest = ROW;
    for (Measure measure : measures) {
      String name = typeface.breakable(measure.label(), label(width), Weight.REGULAR, SIZE);
      double lines = typeface.heightOf(name, label(width), Weight.REGULAR, SIZE);
      highest = Math.max(highest, lines + 1.4);
    }
    return highest;
  }

  @Override
  public boolean continuesASection() {
    return true;
  }

  @Override
  public void draw(TaggedPen pen, Part document, MmRect room) throws IOException {
    double own = own(room.width());
    for (int i = 0; i < measures.size(); i++) {
      double x = room.x() + i * (own + GUTTER);
      Part row = table.in(document).add("TR");
      MmRect words = new MmRect(x, room.y() + 0.8, label(room.width()), room.height() - 0.8);
      String name = measures.get(i).label();
      pen.text(row.addRowHeading(), name, words, Weight.REGULAR, SIZE, Align.LEFT);
      for (int answer = 0; answer < answers; answer++) {
        row.add("TD");
      }
      double y = room.y() + BASELINE;
      pen.decoration(
          p -> {
            p.width(0.25);
            p.line(new MmPoint(x + own - LINE, y), new MmPoint(x + own, y));
          });
    }
  }
}
