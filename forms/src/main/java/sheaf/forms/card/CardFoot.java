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
  private static final double ROW = 4.7;
  private static final double GUTTER = 6;

  /** Length of the line on which a missing measure can be written, in millimetres. */
  private static final double BLANK = 18;

  private static final double HEADING = 6.6;

  private final Pen pen;
  private final double x;
  private final double width;

  CardFoot(Pen pen, double x, double width) {
    this.pen = pen;
    this.x = x;
    this.width = width;
  }

  /** Millimetres that the foot takes. */
  double height(JobSummary job, SetUp setUp) {
    return HEADING
        + pen.heightOf(setUp.sentences(), width, Weight.REGULAR, NORMAL)
        + 1
        + rows(setUp) * ROW
        + 2
        + pen.heightOf(CardWords.sheets(job), width, Weight.REGULAR, SMALL)
        + 2
        + pen.heightOf("Caution", width, Weight.BOLD, NORMAL)
        + pen.heightOf(CAUTIONS, width, Weight.REGULAR, SMALL);
  }

  void draw(JobSummary job, SetUp setUp, double top) throws IOException {
    Column column = new Column(pen, x, top, width);
    column.heading("Set-up as left");
    column.text(setUp.sentences(), NORMAL);
    column.skip(1);
    measures(setUp.measures(), column.y());
    column.skip(rows(setUp) * ROW + 2);
    column.text(CardWords.sheets(job), SMALL);
    column.skip(2);
    column.bold("Caution", NORMAL);
    column.text(CAUTIONS, SMALL);
  }

  private static int rows(SetUp setUp) {
    return (setUp.measures().size() + 1) / 2;
  }

  /** In two columns, read downward. */
  private void measures(List<SetUp.Measure> measures, double top) throws IOException {
    double half = (width - GUTTER) / 2;
    int rows = (measures.size() + 1) / 2;
    for (int i = 0; i < measures.size(); i++) {
      double left = i < rows ? x : x + half + GUTTER;
      measure(measures.get(i), new MmRect(left, top + i % rows * ROW, half, ROW));
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
