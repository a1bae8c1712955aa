package sheaf.core.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sheaf.core.layout.Ink.Tone;
import sheaf.core.measure.Unit;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;

/** The pair sheet, version 1: field points and broadheads shot at two dots, or at one. */
final class PairLayout {

  /** Keys of its fields, for those who read them. */
  static final String DISTANCE = "distance";

  private static final String CAUTIONS =
      "Broadheads: use a head wrench, keep blades covered, shoot only at a target rated for them "
          + "with a safe backstop. Flex carbon shafts before each shot and discard damaged ones. "
          + "Never dry fire. The bow maker's limits, range rules and local law come first.";

  private static final double STRIP = 52;
  private static final double ROW = 10;

  /** Where the answers of the strip begin, from its left edge. */
  private static final double ANSWERS = 37;

  private static final double RING_RADIUS = 13.5;
  private static final double RING_WIDTH = 3;
  private static final double SPOT_RADIUS = 2;
  private static final double SPOKE = 6;

  private PairLayout() {}

  static Layout of(LayoutId id) {
    Drawing drawing = new Drawing();
    SheetFrame frame = new SheetFrame(MarkFamily.of(id.variant(), id.paper()));
    frame.draw(drawing, "Pair sheet", instruction(id.variant()), CAUTIONS);
    MmRect body = frame.body();
    MmRect target = new MmRect(body.x(), body.y(), body.width(), body.height() - STRIP);
    drawing.box(target, Tone.LIGHT);
    List<AimDot> dots = dots(id.variant(), target, drawing);
    strip(id.units(), body.x(), target.bottom() + 2 + ROW / 2, drawing);
    return frame.layout(id, "Pair sheet", dots, Optional.of(target), drawing);
  }

  private static String instruction(Variant variant) {
    return variant == Variant.TWO_DOTS
        ? "Same distance, same aim: field points at the upper dot, broadheads at the lower one. "
            + "Then fill in the strip below."
        : "Same distance, same aim: shoot field points and broadheads at the one dot. "
            + "Then fill in the strip below.";
  }

  private static List<AimDot> dots(Variant variant, MmRect target, Drawing drawing) {
    List<AimDot> dots = new ArrayList<>();
    if (variant == Variant.SHARED_DOT) {
      dots.add(dot(Aim.SHARED, target.centre(), drawing));
      return dots;
    }
    MmPoint field = within(target, 0.29, 0.33);
    MmPoint broadhead = within(target, 0.71, 0.70);
    dots.add(dot(Aim.FIELD, field, drawing));
    dots.add(dot(Aim.BROADHEAD, broadhead, drawing));
    SheetFrame.caption(drawing, "FIELD POINTS", new MmPoint(field.x(), field.y() - 26), 50);
    SheetFrame.caption(drawing, "BROADHEADS", new MmPoint(broadhead.x(), broadhead.y() - 26), 50);
    return dots;
  }

  private static MmPoint within(MmRect rect, double across, double down) {
    return new MmPoint(rect.x() + across * rect.width(), rect.y() + down * rect.height());
  }

  /** A ring and a spot rather than a black disc: a hole through white paper shows its whole rim. */
  private static AimDot dot(Aim aim, MmPoint centre, Drawing drawing) {
    drawing.ink.add(new Ink.Ring(centre, RING_RADIUS, RING_WIDTH));
    drawing.ink.add(new Ink.Disc(centre, SPOT_RADIUS));
    double rim = RING_RADIUS + RING_WIDTH / 2;
    if (aim == Aim.BROADHEAD) {
      spokes(centre, rim, drawing);
    }
    return new AimDot(aim, centre, rim);
  }

  /** Four spokes like blades, so that the broadheads' dot is told from the other at a distance. */
  private static void spokes(MmPoint c, double rim, Drawing drawing) {
    double end = rim + SPOKE;
    drawing.stroke(c.x() - end, c.y(), c.x() - rim, c.y(), RING_WIDTH, Tone.BLACK);
    drawing.stroke(c.x() + rim, c.y(), c.x() + end, c.y(), RING_WIDTH, Tone.BLACK);
    drawing.stroke(c.x(), c.y() - end, c.x(), c.y() - rim, RING_WIDTH, Tone.BLACK);
    drawing.stroke(c.x(), c.y() + rim, c.x(), c.y() + end, RING_WIDTH, Tone.BLACK);
  }

  private static void strip(UnitSystem units, double x, double firstRow, Drawing drawing) {
    double answers = x + ANSWERS;
    double y = firstRow;
    distance(units, x, y, drawing);
    y += ROW;
    question(drawing, "Field points shot", x, y);
    arrows("arrows_field", "field points shot", answers, y, drawing);
    y += ROW;
    question(drawing, "Broadheads shot", x, y);
    arrows("arrows_broadhead", "broadheads shot", answers, y, drawing);
    y += ROW;
    question(drawing, "Changed before this", x, y);
    drawing.choice(
        "changed",
        "changed before this sheet",
        Optional.empty(),
        List.of("nothing", "rest", "nocking", "yoke", "sight", "other"),
        answers,
        y,
        20);
    y += ROW;
    question(drawing, "Which way, how much", x, y);
    howMuch(units, answers, y, drawing);
  }

  private static void distance(UnitSystem units, double x, double y, Drawing drawing) {
    boolean inches = units == UnitSystem.INCHES;
    Unit unit = inches ? Unit.YARD : Unit.METRE;
    question(drawing, "Distance, " + (inches ? "yards" : "metres"), x, y);
    double answers = x + ANSWERS;
    List<String> usual =
        inches
            ? List.of("10", "15", "20", "25", "30", "40", "50")
            : List.of("10", "15", "18", "20", "30", "40", "50");
    double pitch = 12.2;
    drawing.choice(DISTANCE, "distance", Optional.of(unit), usual, answers, y, pitch);
    double other = answers + usual.size() * pitch;
    drawing.beside("or", other, y, 5, Drawing.NORMAL);
    drawing.number(
        "distance_written",
        "distance written by hand",
        Optional.of(unit),
        NumberForm.decimal(3, 0, unit.symbol()),
        other + 6,
        y);
  }

  private static void howMuch(UnitSystem units, double x, double y, Drawing drawing) {
    drawing.choice(
        "changed_way",
        "which way it was changed",
        Optional.empty(),
        List.of("left", "right", "up", "down"),
        x,
        y,
        14.2);
    double amount = x + 4 * 14.2;
    drawing.number(
        "changed_by",
        "how much it was changed",
        Optional.empty(),
        NumberForm.decimal(2, 0, ""),
        amount,
        y);
    String step = units == UnitSystem.INCHES ? "1/64 in" : "0.1 mm";
    drawing.choice(
        "changed_unit",
        "unit of the change",
        Optional.empty(),
        List.of(step, "turns", "clicks"),
        amount + 2 * Drawing.DIGIT_WIDTH + 2.5,
        y,
        16.5);
  }

  private static void arrows(String key, String label, double x, double y, Drawing drawing) {
    List<String> counts = List.of("1", "2", "3", "4", "5", "6");
    drawing.choice(key, label, Optional.empty(), counts, x, y, 12.2);
  }

  private static void question(Drawing drawing, String text, double x, double middle) {
    double height = Drawing.lines(1, 9);
    drawing.bold(text, x, middle - height / 2, ANSWERS - 1, height, 9);
  }
}
