package sheaf.core.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sheaf.core.layout.Ink.Tone;
import sheaf.core.measure.Distance;
import sheaf.core.measure.Unit;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;

/** The line sheet, version 1: one upright line, shot at from near (top) to far (bottom). */
final class LineLayout {

  private static final String TITLE = "Line sheet";

  private static final String CAUTIONS =
      "A stop rated for the arrow stands behind the sheet, and nobody between you and it. Flex "
          + "carbon shafts before each shot and discard damaged ones. Never dry fire. The bow "
          + "maker's limits, range rules and local law come first.";

  /**
   * Near to far; a small paper has the first five. In yards or metres, as the sheet's units are.
   */
  private static final List<Integer> DISTANCES = List.of(3, 5, 10, 15, 20, 25, 30);

  /** Paper of at least this height in millimetres has all bands. */
  private static final double TALL = 400;

  private static final int BANDS_ON_SMALL_PAPER = 5;

  /** Width of the column of distance and arrows beside the bands. */
  private static final double COLUMN = 40;

  private static final double ARROW_PITCH = 12.2;

  private static final double RING_RADIUS = 8;
  private static final double LINE_WIDTH = 1.2;
  private static final double SPOT_RADIUS = 1.3;

  private final LayoutId id;
  private final SheetFrame frame;
  private final Drawing drawing = new Drawing();
  private final Unit unit;

  private LineLayout(LayoutId id) {
    this.id = id;
    this.frame = new SheetFrame(MarkFamily.of(id.variant(), id.paper()));
    this.unit = id.units() == UnitSystem.INCHES ? Unit.YARD : Unit.METRE;
  }

  static Layout of(LayoutId id) {
    return new LineLayout(id).draw();
  }

  private boolean isSet() {
    return id.variant() == Variant.SET_DISTANCES;
  }

  private Layout draw() {
    frame.draw(drawing, TITLE, steps(), CAUTIONS);
    MmRect body = frame.body();
    double height = body.height() - Strip.CHANGES;
    MmRect target = new MmRect(body.x() + COLUMN, body.y(), body.width() - COLUMN, height);
    drawing.box(target, Tone.LIGHT);
    int bands = id.paper().height() > TALL ? DISTANCES.size() : BANDS_ON_SMALL_PAPER;
    List<AimDot> dots = new ArrayList<>();
    double from = target.y();
    for (int i = 0; i < bands; i++) {
      double top = target.y() + i * height / bands;
      MmRect band = new MmRect(target.x(), top, target.width(), height / bands);
      dots.add(band(i, band, from));
      from = band.centre().y() + RING_RADIUS;
      if (i > 0) {
        frame.divide(drawing, top);
      }
    }
    line(target.centre().x(), from, target.bottom());
    frame.divide(drawing, target.bottom());
    new Strip(frame, id.units(), target.bottom(), drawing).changes("sheet");
    return frame.layout(id, TITLE, dots, Optional.of(target), drawing);
  }

  private List<String> steps() {
    return List.of(
        isSet()
            ? "Stand at the distance printed beside a ring."
            : "Write each distance you stand at.",
        "Same sight setting and the ring's spot as aim.",
        "Go from near to far, one to three arrows each.",
        "Scan or photograph the sheet.");
  }

  private AimDot band(int index, MmRect band, double lineFrom) {
    MmPoint c = band.centre();
    line(c.x(), lineFrom, c.y() - RING_RADIUS);
    drawing.ink.add(new Ink.Ring(c, RING_RADIUS, LINE_WIDTH));
    drawing.ink.add(new Ink.Disc(c, SPOT_RADIUS));
    int number = index + 1;
    Distance set = new Distance(DISTANCES.get(index), unit);
    drawing.zones.add(new Zone(number, band, isSet() ? Optional.of(set) : Optional.empty()));
    column(number, set, frame.body().x(), c.y());
    return new AimDot(Aim.FIELD, c, RING_RADIUS + LINE_WIDTH / 2);
  }

  private void line(double x, double from, double to) {
    drawing.stroke(x, from, x, to, LINE_WIDTH, Tone.BLACK);
  }

  private void column(int number, Distance set, double x, double middle) {
    double line = middle - 6;
    if (isSet()) {
      double height = Drawing.lines(1, 20);
      drawing.bold(set.toString(), x, line - height / 2, COLUMN - 2, height, 20);
    } else {
      SheetFrame.heading(drawing, number + "", x, line - 2.4, 5);
      drawing.number(
          "distance_" + number,
          "distance of band " + number,
          Optional.of(unit),
          NumberForm.decimal(3, 0, unit.symbol()),
          x + 6,
          line);
    }
    drawing.text("arrows shot", x, middle + 0.4, COLUMN - 2, Drawing.lines(1, 7), 7);
    drawing.choice(
        "arrows_" + number,
        "arrows shot at band " + number,
        List.of("1", "2", "3"),
        new Drawing.Rows(x, middle + 6.6, ARROW_PITCH, 3, 0));
  }
}
