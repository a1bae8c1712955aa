package sheaf.core.layout;

import java.util.List;
import java.util.Optional;
import sheaf.core.measure.Unit;
import sheaf.core.page.MmRect;

/**
 * The force-draw sheet, version 1: what the scale on a draw board shows at every inch, or every 25
 * mm, that the string is drawn, and at full draw.
 */
public final class PullsLayout {

  /** Rows for pulls: 26 in from rest are more than the longest usual draw takes. */
  public static final int PULLS = 26;

  /** The field of the way from rest to full draw. */
  public static final String FULL_DRAW = "full_draw";

  /** The field of the pull there. */
  public static final String FULL_DRAW_PULL = "full_draw_pull";

  private static final String TITLE = "Force-draw sheet";

  private static final String CAUTIONS =
      "Draw board: the maker's instructions, never with a damaged bow, hands clear of string and "
          + "cams. Let the string down slowly; never let it go. No farther than the bow's full "
          + "draw. The bow maker's limits and local rules come first.";

  private static final String KEY = "pull_";

  /** A step of the metric sheet, about an inch. */
  private static final int STEP_MM = 25;

  private static final double HEAD = 6.4;
  private static final double GAP = 4;

  /** Where a column's boxes begin. */
  private static final double BOXES = 34;

  private static final double LABEL_SIZE = 10.5;

  private final LayoutId id;
  private final SheetFrame frame;
  private final Drawing drawing = new Drawing();
  private final boolean inches;

  private PullsLayout(LayoutId id) {
    this.id = id;
    this.frame = new SheetFrame(MarkFamily.of(id.variant(), id.paper()));
    this.inches = id.units() == UnitSystem.INCHES;
  }

  /** The field of the pull after so many steps from rest, 1 to {@value #PULLS}. */
  public static String key(int step) {
    return KEY + step;
  }

  /** How far the string is drawn after so many steps, in inches. */
  public static double inchesDrawn(int step, UnitSystem units) {
    return units == UnitSystem.INCHES
        ? step
        : Unit.MILLIMETRE.convert((double) step * STEP_MM, Unit.INCH);
  }

  static Layout of(LayoutId id) {
    return new PullsLayout(id).draw();
  }

  private Layout draw() {
    frame.draw(drawing, TITLE, steps(), CAUTIONS);
    MmRect body = frame.body();
    double width = (body.width() - GAP) / 2;
    int rows = (PULLS + 2) / 2;
    double pitch = (body.height() - HEAD) / rows;
    for (int column = 0; column < 2; column++) {
      double x = body.x() + column * (width + GAP);
      SheetFrame.heading(drawing, "Drawn from rest", x, body.y(), BOXES);
      SheetFrame.heading(drawing, "Pull", x + BOXES, body.y(), 30);
      for (int row = 0; row < rows; row++) {
        double middle = body.y() + HEAD + (row + 0.5) * pitch;
        row(column * rows + row + 1, x, middle);
      }
    }
    for (int row = 0; row < rows; row++) {
      frame.divide(drawing, body.y() + HEAD + row * pitch);
    }
    return frame.card(id, TITLE, drawing);
  }

  private List<String> steps() {
    return List.of(
        "On a draw board, with a scale in pounds.",
        "Write the pull at every " + (inches ? "inch" : "25 mm") + " from rest.",
        "Full draw comes last; leave empty what is farther.",
        "Scan or photograph the sheet.");
  }

  private void row(int number, double x, double middle) {
    if (number <= PULLS) {
      String drawn = inches ? number + " in" : number * STEP_MM + " mm";
      label(drawn, x, middle);
      pull(key(number), "pull at " + drawn, x, middle);
    } else if (number == PULLS + 1) {
      label("Full draw", x, middle);
      drawing.number(
          FULL_DRAW,
          "full draw from rest",
          Optional.of(inches ? Unit.INCH : Unit.MILLIMETRE),
          inches ? NumberForm.sixteenths(2) : NumberForm.decimal(3, 0, "mm"),
          x + BOXES,
          middle);
    } else {
      label("Pull there", x, middle);
      pull(FULL_DRAW_PULL, "pull at full draw", x, middle);
    }
  }

  private void label(String text, double x, double middle) {
    double height = Drawing.lines(1, LABEL_SIZE);
    drawing.bold(text, x, middle - height / 2, BOXES - 2, height, LABEL_SIZE);
  }

  private void pull(String key, String label, double x, double middle) {
    NumberForm form = NumberForm.decimal(3, 1, "lb");
    drawing.number(key, label, Optional.of(Unit.POUND_FORCE), form, x + BOXES, middle);
  }
}
