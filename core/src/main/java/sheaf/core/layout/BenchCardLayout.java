package sheaf.core.layout;

import java.util.List;
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

  private static final double INSPECTION_ROW = 7.6;
  private static final double FOUND = 61;
  private static final double LEFT = 111;

  private BenchCardLayout() {}

  static Layout of(LayoutId id) {
    Drawing drawing = new Drawing();
    SheetFrame frame = new SheetFrame(MarkFamily.of(id.variant(), id.paper()));
    frame.draw(
        drawing,
        "Bench card",
        "Tick what you see, write one digit a box. A box left empty means not measured.",
        CAUTIONS);
    MmRect body = frame.body();
    reference(body, drawing);
    inspection(body.x(), body.y() + 10, drawing);
    measures(id.units(), body, drawing);
    return frame.layout(id, "Bench card", List.of(), Optional.empty(), drawing);
  }

  private static void reference(MmRect body, Drawing drawing) {
    double base = body.y() + 7;
    drawing.beside("Bow", body.x(), base - 2, 10, Drawing.NORMAL);
    drawing.stroke(body.x() + 10, base, body.x() + 100, base, Drawing.LINE, Tone.BLACK);
    drawing.beside("Date", body.x() + 103, base - 2, 10, Drawing.NORMAL);
    drawing.stroke(body.x() + 113, base, body.right(), base, Drawing.LINE, Tone.BLACK);
  }

  private static void inspection(double x, double top, Drawing drawing) {
    SheetFrame.heading(drawing, "Intake inspection", x, top, 80);
    double first = top + 9;
    double right = x + 82;
    inspect("limbs", "Limbs", x, first, drawing);
    inspect("cams", "Cams", x, first + INSPECTION_ROW, drawing);
    inspect("strings", "String, servings", x, first + 2 * INSPECTION_ROW, drawing);
    inspect("cables", "Cables", right, first, drawing);
    inspect("riser", "Riser", right, first + INSPECTION_ROW, drawing);
    inspect("arrows", "Arrows, flexed", right, first + 2 * INSPECTION_ROW, drawing);
    double last = first + 3 * INSPECTION_ROW + 1;
    ask("hand", "Hand", List.of("right", "left"), x, last, drawing);
    ask("loosed_by", "Loosed by", List.of("release", "fingers"), right, last, drawing);
  }

  private static void inspect(String part, String label, double x, double y, Drawing drawing) {
    ask("inspect_" + part, label, List.of("sound", "not sound"), x, y, drawing);
  }

  private static void ask(
      String key, String label, List<String> values, double x, double y, Drawing drawing) {
    drawing.beside(label, x, y, 27, 9);
    drawing.choice(
        key, label.toLowerCase(java.util.Locale.ROOT), Optional.empty(), values, x + 28, y, 19);
  }

  private static void measures(UnitSystem units, MmRect body, Drawing drawing) {
    double top = body.y() + 53;
    SheetFrame.heading(drawing, "Measured", body.x(), top, 50);
    SheetFrame.heading(drawing, "As found", body.x() + FOUND, top, 45);
    SheetFrame.heading(drawing, "As left", body.x() + LEFT, top, 45);
    List<Measure> rows = Measure.front(units);
    double first = top + 10;
    double stops = body.bottom() - 4;
    double pitch = (stops - first) / rows.size();
    double y = first;
    for (Measure row : rows) {
      measure(row, body.x(), y, drawing);
      y += pitch;
    }
    drawing.bold("Cam stops touch", body.x(), stops - 2, 58, Drawing.lines(1, 9), 9);
    camStops("cam_stops_found", body.x() + FOUND, stops, drawing);
    camStops("cam_stops_left", body.x() + LEFT, stops, drawing);
  }

  private static void measure(Measure row, double x, double y, Drawing drawing) {
    drawing.bold(row.label(), x, y - 3.8, FOUND - 2, Drawing.lines(1, 9), 9);
    drawing.text(row.hint(), x, y + 0.5, FOUND - 2, Drawing.lines(1, 7), 7);
    drawing.number(
        row.key() + "_found", row.label() + " as found", row.unit(), row.form(), x + FOUND, y);
    drawing.number(
        row.key() + "_left", row.label() + " as left", row.unit(), row.form(), x + LEFT, y);
  }

  private static void camStops(String key, double x, double y, Drawing drawing) {
    drawing.choice(
        key,
        "cam stops touch",
        Optional.empty(),
        List.of("together", "top 1st", "low 1st"),
        x,
        y,
        16.4);
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
          length(units, "draw_length", "Draw length (ATA)", "nock to grip pivot + 1 3/4 in", 2),
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
