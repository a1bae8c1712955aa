package sheaf.core.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sheaf.core.layout.Ink.Tone;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;

/** The tear sheet, version 1: four zones for one shot each, and what was changed before it. */
final class TearLayout {

  private static final String TITLE = "Tear sheet";

  private static final String CAUTIONS =
      "A stop rated for the arrow stands well behind the paper; nobody stands beside or behind it. "
          + "Flex carbon shafts before each shot and discard damaged ones. Never dry fire. Press "
          + "and yokes: the maker's instructions. The bow maker's limits and range rules come "
          + "first.";

  private static final int ZONES = 4;

  /** Between two zones, and between a zone and its strip. */
  private static final double GAP = 4;

  private static final double TICK_ROW = 6.8;
  private static final double HEADING = 6;

  /** Two rows of tick boxes beside the digits. */
  private static final double HOW_MUCH = 2 * TICK_ROW;

  private static final double STRIP = HEADING + 3 * TICK_ROW + HOW_MUCH;

  /** Where the answers begin, from a strip's left edge. */
  private static final double ANSWERS = 17;

  private static final double WORD_PITCH = 20;
  private static final double SHORT_PITCH = 15;

  private static final double SPOT_RADIUS = 1.3;

  /** The aim's four bars leave so much paper free around the spot: a tear seldom reaches them. */
  private static final double BAR_FROM = 17;

  private static final double BAR_TO = 23;
  private static final double BAR_WIDTH = 1.2;

  private TearLayout() {}

  static Layout of(LayoutId id) {
    Drawing drawing = new Drawing();
    SheetFrame frame = new SheetFrame(MarkFamily.of(id.variant(), id.paper()));
    frame.draw(drawing, TITLE, steps(id.units()), CAUTIONS);
    MmRect body = frame.body();
    double width = (body.width() - GAP) / 2;
    double height = (body.height() - GAP) / 2;
    List<AimDot> dots = new ArrayList<>();
    for (int i = 0; i < ZONES; i++) {
      double x = body.x() + (i % 2) * (width + GAP);
      double y = body.y() + (i / 2) * (height + GAP);
      MmRect zone = new MmRect(x, y, width, height - STRIP - 1);
      dots.add(zone(i + 1, zone, drawing));
      strip(i + 1, id.units(), x, zone.bottom() + 1, drawing);
    }
    return frame.layout(id, TITLE, dots, Optional.of(body), drawing);
  }

  private static List<String> steps(UnitSystem units) {
    return List.of(
        "Stretch it flat on a frame, a stop behind it.",
        "From about 2 %s, one shot at 1.".formatted(units == UnitSystem.INCHES ? "yd" : "m"),
        "Change one thing, tick it, shoot at 2, and so on.",
        "Scan or photograph the sheet.");
  }

  private static AimDot zone(int number, MmRect zone, Drawing drawing) {
    drawing.box(zone, Tone.LIGHT);
    drawing.zones.add(new Zone(number, zone, Optional.empty()));
    double height = Drawing.lines(1, 22);
    drawing.bold(String.valueOf(number), zone.x() + 2.5, zone.y() + 0.5, 5.5, height, 22);
    MmPoint c = zone.centre();
    drawing.ink.add(new Ink.Disc(c, SPOT_RADIUS));
    drawing.stroke(c.x() - BAR_TO, c.y(), c.x() - BAR_FROM, c.y(), BAR_WIDTH, Tone.BLACK);
    drawing.stroke(c.x() + BAR_FROM, c.y(), c.x() + BAR_TO, c.y(), BAR_WIDTH, Tone.BLACK);
    drawing.stroke(c.x(), c.y() - BAR_TO, c.x(), c.y() - BAR_FROM, BAR_WIDTH, Tone.BLACK);
    drawing.stroke(c.x(), c.y() + BAR_FROM, c.x(), c.y() + BAR_TO, BAR_WIDTH, Tone.BLACK);
    return new AimDot(Aim.FIELD, c, BAR_TO);
  }

  private static void strip(int number, UnitSystem units, double x, double top, Drawing drawing) {
    String shot = " shot " + number;
    SheetFrame.heading(drawing, "Changed before" + shot, x, top + 0.6, 60);
    double y = top + HEADING + TICK_ROW / 2;
    label("What", x, y, drawing);
    drawing.choice(
        "changed_" + number,
        "changed before" + shot,
        List.of("nothing", "rest", "nocking", "yoke", "cams", "other"),
        new Drawing.Rows(x + ANSWERS, y, WORD_PITCH, 3, TICK_ROW));
    y += 2 * TICK_ROW;
    label("Which way", x, y, drawing);
    drawing.choice(
        "changed_way_" + number,
        "which way it was changed before" + shot,
        List.of("left", "right", "up", "down"),
        new Drawing.Rows(x + ANSWERS, y, SHORT_PITCH, 4, TICK_ROW));
    y += TICK_ROW;
    howMuch(number, units, x, y, drawing);
  }

  private static void howMuch(int number, UnitSystem units, double x, double y, Drawing drawing) {
    double middle = y + TICK_ROW / 2;
    label("How much", x, middle, drawing);
    drawing.number(
        "changed_by_" + number,
        "how much it was changed before shot " + number,
        Optional.empty(),
        NumberForm.decimal(2, 0, ""),
        x + ANSWERS,
        middle);
    drawing.choice(
        "changed_unit_" + number,
        "unit of the change before shot " + number,
        List.of(Strip.step(units), "turns", "clicks"),
        new Drawing.Rows(x + ANSWERS + WORD_PITCH, y, WORD_PITCH, 2, TICK_ROW));
  }

  private static void label(String text, double x, double middle, Drawing drawing) {
    drawing.beside(text, x, middle, ANSWERS - 0.5, Drawing.NORMAL);
  }
}
