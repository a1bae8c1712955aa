package sheaf.core.layout;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import sheaf.core.layout.Ink.Tone;
import sheaf.core.measure.Unit;
import sheaf.core.page.MmRect;

/** The bench card's front, version 1: intake inspection and the measurements that restore a bow. */
final class BenchCardLayout {

  private static final String CAUTIONS =
      "Draw board and press: the maker's instructions, never with a damaged bow. Never dry fire. "
          + "Anything not sound: do not shoot. Flex carbon shafts and discard damaged ones. Arrow "
          + "mass at least what the bow maker asks. The maker's limits and local rules come first.";

  private static final double TICK_ROW = 7.6;

  /** Where the second column of tick boxes begins, from the body's left edge. */
  private static final double SECOND = 82;

  /** Where the columns of numbers begin. */
  private static final double FOUND = 50;

  private static final double LEFT = 105;

  private BenchCardLayout() {}

  static Layout of(LayoutId id) {
    Drawing drawing = new Drawing();
    SheetFrame frame = new SheetFrame(MarkFamily.of(id.variant(), id.paper()));
    frame.draw(drawing, "Bench card", steps(id.units()), CAUTIONS);
    MmRect body = frame.body();
    bow(body, drawing);
    inspection(frame, body.y() + 22, drawing);
    measures(id.units(), frame, body.y() + 53, drawing);
    return frame.layout(id, "Bench card", List.of(), Optional.empty(), drawing);
  }

  private static List<String> steps(UnitSystem units) {
    return List.of(
        "Tick what you see. Write one digit in a box.",
        units == UnitSystem.INCHES
            ? "Inches, then sixteenths: 29 3/8 in is 29 06 /16 in."
            : "The last box is tenths: 746.1 mm is 746 . 1 mm.",
        "A box left empty means: not measured.",
        "Scan or photograph the card.");
  }

  private static void bow(MmRect body, Drawing drawing) {
    double base = body.y() + 7;
    drawing.beside("Bow", body.x(), base - 2, 10, 9);
    drawing.stroke(body.x() + 10, base, body.x() + 100, base, Drawing.LINE, Tone.BLACK);
    drawing.beside("Date", body.x() + 104, base - 2, 10, 9);
    drawing.stroke(body.x() + 114, base, body.right(), base, Drawing.LINE, Tone.BLACK);
    double row = base + 8.2;
    ask("hand", "Hand", List.of("right", "left"), body.x(), row, drawing);
    ask("loosed_by", "Loosed by", List.of("release", "fingers"), body.x() + SECOND, row, drawing);
  }

  private static void inspection(SheetFrame frame, double top, Drawing drawing) {
    double x = frame.body().x();
    SheetFrame.heading(drawing, "Intake inspection", x, top, 60);
    drawing.bold("Anything not sound: do not shoot.", x + SECOND, top + 0.6, 75, 4.2, 8.5);
    underline(frame, top + 5.4, drawing);
    double first = top + 10.4;
    double right = x + SECOND;
    inspect("limbs", "Limbs", x, first, drawing);
    inspect("cams", "Cams", x, first + TICK_ROW, drawing);
    inspect("strings", "String, servings", x, first + 2 * TICK_ROW, drawing);
    inspect("cables", "Cables", right, first, drawing);
    inspect("riser", "Riser", right, first + TICK_ROW, drawing);
    inspect("arrows", "Arrows, flexed", right, first + 2 * TICK_ROW, drawing);
  }

  private static void underline(SheetFrame frame, double y, Drawing drawing) {
    MmRect body = frame.body();
    drawing.stroke(body.x(), y, body.right(), y, 0.4, Tone.BLACK);
  }

  private static void inspect(String part, String label, double x, double y, Drawing drawing) {
    ask("inspect_" + part, label, List.of("sound", "not sound"), x, y, drawing);
  }

  private static void ask(
      String key, String label, List<String> values, double x, double y, Drawing drawing) {
    drawing.beside(label, x, y, 27, 9);
    drawing.choice(key, label.toLowerCase(Locale.ROOT), Optional.empty(), values, x + 28, y, 21);
  }

  private static void measures(UnitSystem units, SheetFrame frame, double top, Drawing drawing) {
    MmRect body = frame.body();
    SheetFrame.heading(drawing, "Measured", body.x(), top, 50);
    SheetFrame.heading(drawing, "As found", body.x() + FOUND, top, 45);
    SheetFrame.heading(drawing, "As left", body.x() + LEFT, top, 45);
    double line = top + 5.4;
    underline(frame, line, drawing);
    List<Measure> rows = Measure.front(units);
    double pitch = (body.bottom() - line) / (rows.size() + 1);
    double y = line + pitch / 2;
    for (Measure row : rows) {
      measure(row, body.x(), y, drawing);
      frame.divide(drawing, y + pitch / 2);
      y += pitch;
    }
    words("Cam stops", "which one touches first", body.x(), y, drawing);
    camStops("found", body.x() + FOUND, y, drawing);
    camStops("left", body.x() + LEFT, y, drawing);
  }

  private static void words(String label, String hint, double x, double y, Drawing drawing) {
    drawing.bold(label, x, y - 3.8, FOUND - 2, Drawing.lines(1, 9), 9);
    drawing.text(hint, x, y + 0.3, FOUND - 2, Drawing.lines(1, 7), 7);
  }

  private static void measure(Measure row, double x, double y, Drawing drawing) {
    words(row.label(), row.hint(), x, y, drawing);
    drawing.number(
        row.key() + "_found", row.label() + " as found", row.unit(), row.form(), x + FOUND, y);
    drawing.number(
        row.key() + "_left", row.label() + " as left", row.unit(), row.form(), x + LEFT, y);
  }

  private static void camStops(String column, double x, double y, Drawing drawing) {
    drawing.choice(
        "cam_stops_" + column,
        "Cam stop to touch first as " + column,
        Optional.empty(),
        List.of("both", "top", "bottom"),
        x,
        y,
        16.8);
  }

  /**
   * A number asked for twice, as found and as left.
   *
   * @param key in JSON, without the column's name
   * @param label in bold
   * @param hint how it is measured
   * @param unit of the number
   * @param form of the boxes
   */
  private record Measure(
      String key, String label, String hint, Optional<Unit> unit, NumberForm form) {

    static List<Measure> front(UnitSystem units) {
      return List.of(
          length(units, "draw_length", "Draw length (ATA)", drawHint(units), 2),
          length(units, "bow_plus_loop", "Bow plus loop", "string peg to back of loop", 2),
          length(units, "axle_to_axle", "Axle to axle", "between the axles", 2),
          length(units, "brace_height", "Brace height", "string to grip pivot, at rest", 2),
          weight("peak_weight", "Peak weight", "highest on the scale"),
          weight("holding_weight", "Holding weight", "lowest at full draw"),
          new Measure(
              "limb_bolt_turns",
              "Limb-bolt turns",
              "out from bottomed, same top and bottom",
              Optional.of(Unit.TURN),
              NumberForm.decimal(1, 2, "turns")),
          length(units, "centre_shot", "Centre shot", "riser to middle of shaft", 1),
          length(units, "nocking_height", "Nocking height", "above square to the rest", 1),
          length(units, "peep_height", "Peep height", "nocking point to peep", 2),
          new Measure(
              "arrow_mass",
              "Arrow, total mass",
              "complete with point",
              Optional.of(Unit.GRAIN),
              NumberForm.decimal(3, 0, "gr")),
          units == UnitSystem.INCHES
              ? speed(Unit.FEET_PER_SECOND, 3, 0)
              : speed(Unit.METRES_PER_SECOND, 2, 1));
    }

    /** The ATA adds 1 3/4 in, 44.45 mm, to the true draw length. */
    private static String drawHint(UnitSystem units) {
      return "nock to grip pivot + " + (units == UnitSystem.INCHES ? "1 3/4 in" : "44.5 mm");
    }

    private static Measure length(
        UnitSystem units, String key, String label, String hint, int inchDigits) {
      return units == UnitSystem.INCHES
          ? new Measure(key, label, hint, Optional.of(Unit.INCH), NumberForm.sixteenths(inchDigits))
          : new Measure(
              key,
              label,
              hint,
              Optional.of(Unit.MILLIMETRE),
              NumberForm.decimal(inchDigits + 1, 1, "mm"));
    }

    private static Measure weight(String key, String label, String hint) {
      return new Measure(
          key, label, hint, Optional.of(Unit.POUND_FORCE), NumberForm.decimal(2, 1, "lb"));
    }

    private static Measure speed(Unit unit, int whole, int decimals) {
      return new Measure(
          "speed",
          "Speed",
          "chronograph, this arrow",
          Optional.of(unit),
          NumberForm.decimal(whole, decimals, unit.symbol()));
    }
  }
}
