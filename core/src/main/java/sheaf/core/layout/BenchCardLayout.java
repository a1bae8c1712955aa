package sheaf.core.layout;

import java.util.List;
import java.util.Locale;
import sheaf.core.layout.Ink.Tone;
import sheaf.core.page.MmRect;

/**
 * The front of a bench card, version 1, or return card, versions 1 and 2: intake inspection and the
 * measurements that restore a bow; in version 2 in the order in which they are restored.
 */
final class BenchCardLayout {

  private static final double TICK_ROW = 7.6;

  /** Height of the rows that tell the bow. */
  private static final double BOW_ROWS = 22;

  /** From the inspection's heading to the middle of its first row. */
  private static final double FIRST_ROW = 10.4;

  /** Where the second column of tick boxes begins, from the body's left edge. */
  private static final double SECOND = 82;

  private static final double SUBTITLE_SIZE = 11;

  /** Puts it on the title's baseline. */
  private static final double SUBTITLE_TOP = 10.47;

  private BenchCardLayout() {}

  static Layout of(LayoutId id) {
    Drawing drawing = new Drawing();
    SheetFrame frame = new SheetFrame(MarkFamily.of(id.variant(), id.paper()));
    CardFront front = CardFront.of(BowType.of(id.variant()), id.units());
    String title = title(id);
    frame.draw(drawing, title, steps(id), front.cautions());
    subtitle(BowType.of(id.variant()).label(), drawing);
    MmRect body = frame.body();
    bow(front, body, drawing);
    double end = inspection(front, frame, body.y() + BOW_ROWS, drawing);
    measures(front, CardColumns.of(id), frame, end, drawing);
    return frame.card(id, title, drawing);
  }

  /** What a card is called in print. */
  static String title(LayoutId id) {
    return id.kind() == SheetKind.RETURN_CARD ? "Return card" : "Bench card";
  }

  /** Which card of its kind it is, smaller beside the title. */
  static void subtitle(String text, Drawing drawing) {
    double height = Drawing.lines(1, SUBTITLE_SIZE);
    drawing.text(text, SheetFrame.SIDE + 38, SUBTITLE_TOP, 32, height, SUBTITLE_SIZE);
  }

  /** How a number is written in the boxes of the sheet's units. */
  static String example(UnitSystem units) {
    return units == UnitSystem.INCHES
        ? "Inches, then sixteenths: 29 3/8 in is 29 06 /16 in."
        : "The last box is tenths: 746.1 mm is 746 . 1 mm.";
  }

  private static List<String> steps(LayoutId id) {
    return List.of(
        "Tick what you see. Write one digit in a box.",
        example(id.units()),
        third(id),
        "Scan or photograph the card.");
  }

  private static String third(LayoutId id) {
    if (id.kind() != SheetKind.RETURN_CARD) {
      return "A box left empty means: not measured.";
    }
    return CardColumns.tellsOrder(id)
        ? "Restore by number; string and cables first."
        : "As found against last time shows what moved.";
  }

  private static void bow(CardFront front, MmRect body, Drawing drawing) {
    double base = body.y() + 7;
    drawing.beside("Bow", body.x(), base - 2, 10, 9);
    drawing.stroke(body.x() + 10, base, body.x() + 100, base, Drawing.LINE, Tone.BLACK);
    drawing.beside("Date", body.x() + 104, base - 2, 10, 9);
    drawing.stroke(body.x() + 114, base, body.right(), base, Drawing.LINE, Tone.BLACK);
    double x = body.x();
    for (CardRow.Pick pick : front.asked()) {
      ask(pick.key(), pick.label(), pick.words(), x, base + 8.2, drawing);
      x += SECOND;
    }
  }

  /** Returns where the next heading goes. */
  private static double inspection(CardFront front, SheetFrame frame, double top, Drawing drawing) {
    double x = frame.body().x();
    SheetFrame.heading(drawing, "Intake inspection", x, top, 60);
    drawing.bold("Anything not sound: do not shoot.", x + SECOND, top + 0.6, 75, 4.2, 8.5);
    CardColumns.underline(frame, top + 5.4, drawing);
    List<CardFront.Part> parts = front.inspected();
    int rows = (parts.size() + 1) / 2;
    for (int i = 0; i < parts.size(); i++) {
      ask(
          "inspect_" + parts.get(i).key(),
          parts.get(i).label(),
          List.of("sound", "not sound"),
          i < rows ? x : x + SECOND,
          top + FIRST_ROW + i % rows * TICK_ROW,
          drawing);
    }
    return top + FIRST_ROW + rows * TICK_ROW - TICK_ROW / 2 + 1.6;
  }

  private static void ask(
      String key, String label, List<String> words, double x, double y, Drawing drawing) {
    drawing.beside(label, x, y, 27, 9);
    drawing.choice(
        key,
        label.toLowerCase(Locale.ROOT),
        words,
        new Drawing.Rows(x + 28, y, 21, words.size(), 0));
  }

  private static void measures(
      CardFront front, CardColumns columns, SheetFrame frame, double top, Drawing drawing) {
    columns.heads("Measured", frame, top, drawing);
    double line = top + 5.4;
    CardColumns.underline(frame, line, drawing);
    double pitch = (frame.body().bottom() - line) / front.rows().size();
    columns.rows(front.rows(), frame, line, pitch, drawing);
  }
}
