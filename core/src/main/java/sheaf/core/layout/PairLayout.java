package sheaf.core.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
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

  /** Height of a row with tick boxes, and of one with digit boxes too. */
  private static final double TICK_ROW = 8.2;

  private static final double DIGIT_ROW = 10.5;

  private static final double STRIP = 4 * TICK_ROW + 2 * DIGIT_ROW;

  /** Where the answers of the strip begin, from its left edge. */
  private static final double ANSWERS = 36;

  /** From one number to the next, and from one word to the next, so that boxes stand in columns. */
  private static final double NUMBER_PITCH = 12.2;

  private static final double WORD_PITCH = 20.4;

  private static final double RING_RADIUS = 14;
  private static final double RING_WIDTH = 1.2;
  private static final double SPOT_RADIUS = 1.3;
  private static final double SPOKE = 6;

  /**
   * From the target's edge to the middle of a caption: far from the dots, where few arrows land.
   */
  private static final double CAPTION_INSIDE = 6;

  private PairLayout() {}

  static Layout of(LayoutId id) {
    Drawing drawing = new Drawing();
    SheetFrame frame = new SheetFrame(MarkFamily.of(id.variant(), id.paper()));
    frame.draw(drawing, "Pair sheet", steps(id.variant()), CAUTIONS);
    MmRect body = frame.body();
    MmRect target = new MmRect(body.x(), body.y(), body.width(), body.height() - STRIP);
    drawing.box(target, Tone.LIGHT);
    List<AimDot> dots = dots(id.variant(), target, drawing);
    strip(id.units(), frame, target.bottom(), drawing);
    return frame.layout(id, "Pair sheet", dots, Optional.of(target), drawing);
  }

  private static List<String> steps(Variant variant) {
    return List.of(
        "Same distance and same aim for every arrow.",
        variant == Variant.TWO_DOTS
            ? "Field points: upper dot. Broadheads: lower dot."
            : "Shoot field points and broadheads at the one dot.",
        "Pull the arrows, then tick the boxes below.",
        "Scan or photograph the sheet.");
  }

  private static List<AimDot> dots(Variant variant, MmRect target, Drawing drawing) {
    List<AimDot> dots = new ArrayList<>();
    double top = target.y() + CAPTION_INSIDE;
    if (variant == Variant.SHARED_DOT) {
      dots.add(dot(Aim.SHARED, target.centre(), drawing));
      caption(drawing, "FIELD POINTS AND BROADHEADS", target.centre().x(), top);
      return dots;
    }
    MmPoint field = within(target, 0.29, 0.33);
    MmPoint broadhead = within(target, 0.71, 0.70);
    dots.add(dot(Aim.FIELD, field, drawing));
    dots.add(dot(Aim.BROADHEAD, broadhead, drawing));
    caption(drawing, "FIELD POINTS", field.x(), top);
    caption(drawing, "BROADHEADS", broadhead.x(), target.bottom() - CAPTION_INSIDE);
    return dots;
  }

  private static void caption(Drawing drawing, String text, double x, double y) {
    SheetFrame.caption(drawing, text, new MmPoint(x, y), 90);
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
    // From the middle of the ring's ink, so that no white shows where a spoke meets the round rim.
    double root = RING_RADIUS;
    drawing.stroke(c.x() - end, c.y(), c.x() - root, c.y(), RING_WIDTH, Tone.BLACK);
    drawing.stroke(c.x() + root, c.y(), c.x() + end, c.y(), RING_WIDTH, Tone.BLACK);
    drawing.stroke(c.x(), c.y() - end, c.x(), c.y() - root, RING_WIDTH, Tone.BLACK);
    drawing.stroke(c.x(), c.y() + root, c.x(), c.y() + end, RING_WIDTH, Tone.BLACK);
  }

  private static void strip(UnitSystem units, SheetFrame frame, double top, Drawing drawing) {
    double x = frame.body().x();
    double y = top;
    distance(units, x, y + DIGIT_ROW / 2, drawing);
    y += DIGIT_ROW;
    frame.divide(drawing, y);
    arrows("arrows_field", "Field points shot", x, y + TICK_ROW / 2, drawing);
    y += TICK_ROW;
    frame.divide(drawing, y);
    arrows("arrows_broadhead", "Broadheads shot", x, y + TICK_ROW / 2, drawing);
    y += TICK_ROW;
    frame.divide(drawing, y);
    changed(x, y + TICK_ROW / 2, drawing);
    y += TICK_ROW;
    frame.divide(drawing, y);
    way(x, y + TICK_ROW / 2, drawing);
    y += TICK_ROW;
    frame.divide(drawing, y);
    howMuch(units, x, y + DIGIT_ROW / 2, drawing);
  }

  private static void distance(UnitSystem units, double x, double y, Drawing drawing) {
    boolean inches = units == UnitSystem.INCHES;
    Unit unit = inches ? Unit.YARD : Unit.METRE;
    question(drawing, "Distance", "in " + (inches ? "yards" : "metres"), x, y);
    double answers = x + ANSWERS;
    List<String> usual =
        inches
            ? List.of("10", "15", "20", "25", "30", "40", "50")
            : List.of("10", "15", "18", "20", "30", "40", "50");
    drawing.choice(DISTANCE, "distance", Optional.of(unit), usual, answers, y, NUMBER_PITCH);
    double other = answers + usual.size() * NUMBER_PITCH;
    drawing.beside("or", other, y, 5, Drawing.NORMAL);
    drawing.number(
        "distance_written",
        "distance written by hand",
        Optional.of(unit),
        NumberForm.decimal(3, 0, unit.symbol()),
        other + 6,
        y);
  }

  private static void arrows(String key, String label, double x, double y, Drawing drawing) {
    question(drawing, label, "how many arrows", x, y);
    List<String> counts = List.of("1", "2", "3", "4", "5", "6");
    String name = label.toLowerCase(Locale.ROOT);
    drawing.choice(key, name, Optional.empty(), counts, x + ANSWERS, y, NUMBER_PITCH);
  }

  private static void changed(double x, double y, Drawing drawing) {
    question(drawing, "Changed before", "since the sheet before this", x, y);
    drawing.choice(
        "changed",
        "changed before this sheet",
        Optional.empty(),
        List.of("nothing", "rest", "nocking", "yoke", "sight", "other"),
        x + ANSWERS,
        y,
        WORD_PITCH);
  }

  private static void way(double x, double y, Drawing drawing) {
    question(drawing, "Which way", "the changed part was moved", x, y);
    drawing.choice(
        "changed_way",
        "which way it was changed",
        Optional.empty(),
        List.of("left", "right", "up", "down"),
        x + ANSWERS,
        y,
        WORD_PITCH);
  }

  private static void howMuch(UnitSystem units, double x, double y, Drawing drawing) {
    question(drawing, "How much", "write it, tick its unit", x, y);
    drawing.number(
        "changed_by",
        "how much it was changed",
        Optional.empty(),
        NumberForm.decimal(2, 0, ""),
        x + ANSWERS,
        y);
    String step = units == UnitSystem.INCHES ? "1/64 in" : "0.1 mm";
    drawing.choice(
        "changed_unit",
        "unit of the change",
        Optional.empty(),
        List.of(step, "turns", "clicks"),
        x + ANSWERS + WORD_PITCH,
        y,
        WORD_PITCH);
  }

  /** What a row asks for, over a line that says how it is meant. */
  private static void question(Drawing drawing, String text, String hint, double x, double middle) {
    double height = Drawing.lines(1, 9);
    drawing.bold(text, x, middle - height + 0.4, ANSWERS - 1, height, 9);
    double small = Drawing.lines(1, Drawing.SMALL);
    drawing.text(hint, x, middle + 0.2, ANSWERS - 1, small, Drawing.SMALL);
  }
}
