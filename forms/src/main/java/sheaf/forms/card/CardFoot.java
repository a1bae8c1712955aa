package sheaf.forms.card;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import sheaf.core.layout.Ink.Align;
import sheaf.core.layout.Ink.Weight;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;
import sheaf.core.result.JobSummary;
import sheaf.forms.draw.Pen;

/** The lower part of a card: the bow's measures, the sheets that were read, the cautions. */
final class CardFoot {

  private static final String CAUTIONS =
      "Never dry fire. Use a press and a draw board only as their makers say, never with a damaged "
          + "bow. Flex carbon shafts before each shot and discard damaged ones. Broadheads: use a "
          + "head wrench, keep blades covered, shoot only at a target rated for them with a safe "
          + "backstop. Arrow mass at least what the bow maker asks. The bow maker's limits, range "
          + "rules and local law come first.";

  private static final double SMALL = 7;
  private static final double NORMAL = 8;

  /** Height of a row of measures, and the most where there is room to write by hand. */
  private static final double ROW = 4.6;

  private static final double WIDE_ROW = 8.5;
  private static final double GUTTER = 6;

  /** Length of the line on which a missing measure can be written, in millimetres. */
  private static final double BLANK = 20;

  /** Room that a section's heading takes. */
  private static final double HEADING = 6.6;

  private static final String EMPTY = "An empty line: not measured.";

  private final Pen pen;
  private final double x;
  private final double width;
  private final List<SetUp.Measure> measures;
  private final String sentences;
  private final String sheets;

  CardFoot(Pen pen, JobSummary job, SetUp setUp, double x, double width) {
    this.pen = pen;
    this.x = x;
    this.width = width;
    this.measures = setUp.measures();
    this.sentences = setUp.sentences() + (setUp.read() && hasBlank() ? " " + EMPTY : "");
    this.sheets = CardWords.sheets(job);
  }

  private boolean hasBlank() {
    return measures.stream().anyMatch(measure -> measure.value().isEmpty());
  }

  /** Millimetres that the foot takes when it is set as tightly as it may be. */
  double height() {
    return around() + rows() * ROW;
  }

  /** All but the rows of measures. */
  private double around() {
    return HEADING
        + pen.heightOf(sentences, width, Weight.REGULAR, NORMAL)
        + 1
        + 2
        + pen.heightOf(sheets, width, Weight.REGULAR, SMALL)
        + 2
        + pen.heightOf("Caution", width, Weight.BOLD, NORMAL)
        + pen.heightOf(CAUTIONS, width, Weight.REGULAR, SMALL);
  }

  /** Draws it as tightly as it may be. */
  void draw(double top) throws IOException {
    draw(top, ROW);
  }

  /** Draws it with as much room to write as there is down to a bottom. */
  void fill(double top, double bottom) throws IOException {
    draw(top, Math.min(WIDE_ROW, (bottom - top - around()) / rows()));
  }

  private void draw(double top, double row) throws IOException {
    Column column = new Column(pen, x, top, width);
    column.heading("Set-up as left");
    column.text(sentences, NORMAL);
    column.skip(1);
    measures(column.y(), row);
    column.skip(rows() * row + 2);
    column.text(sheets, SMALL);
    column.skip(2);
    column.bold("Caution", NORMAL);
    column.text(CAUTIONS, SMALL);
  }

  private int rows() {
    return (measures.size() + 1) / 2;
  }

  /** In two columns, read downward. */
  private void measures(double top, double row) throws IOException {
    double half = (width - GUTTER) / 2;
    for (int i = 0; i < measures.size(); i++) {
      double left = i < rows() ? x : x + half + GUTTER;
      double bottom = top + (i % rows() + 1) * row;
      measure(measures.get(i), new MmRect(left, bottom - ROW, half, ROW));
    }
  }

  private void measure(SetUp.Measure measure, MmRect room) throws IOException {
    pen.block(measure.label(), room, Weight.REGULAR, NORMAL, Align.LEFT);
    Optional<String> value = measure.value();
    if (value.isPresent()) {
      pen.block(value.get(), room, Weight.BOLD, NORMAL, Align.RIGHT);
    } else {
      double y = room.y() + 3.4;
      pen.width(0.25);
      pen.line(new MmPoint(room.right() - BLANK, y), new MmPoint(room.right(), y));
    }
  }
}
