package sheaf.core.layout;

import java.util.List;
import java.util.Optional;
import sheaf.core.layout.Ink.Tone;
import sheaf.core.measure.Unit;
import sheaf.core.page.MmRect;

/**
 * The back of a bench card, version 1, or return card, versions 1 and 2: the bow's other numbers,
 * its arrow, its sight marks, and room for free notes.
 */
final class CardBackLayout {

  private static final String CAUTIONS =
      "Arrow mass and spine: what the bow maker and the shaft maker ask, never less. Flex carbon "
          + "shafts before each shot and discard damaged ones. Never dry fire. Press: the maker's "
          + "instructions. A number here is a record, not a permission to shoot.";

  private static final double ROW = 10;
  private static final double HEAD = 5.4;
  private static final double GAP = 1.4;

  /** Where the second of two columns begins, and where a column's boxes do. */
  private static final double SECOND = 82;

  private static final double ANSWERS = 35;

  /** Words begin further left, so that three of them stand beside each other. */
  private static final double WORDS = 20;

  private static final double WORD_PITCH = 18.5;

  private static final int SIGHT_MARKS = 4;

  private final LayoutId id;
  private final SheetFrame frame;
  private final Drawing drawing = new Drawing();
  private double y;

  private CardBackLayout(LayoutId id) {
    this.id = id;
    this.frame = new SheetFrame(MarkFamily.of(id.variant(), id.paper()));
    this.y = frame.body().y();
  }

  static Layout of(LayoutId id) {
    return new CardBackLayout(id).draw();
  }

  private boolean isReturn() {
    return id.kind() == SheetKind.RETURN_CARD;
  }

  private Layout draw() {
    CardBack back = CardBack.of(BowType.of(id.variant()), id.units());
    String title = BenchCardLayout.title(id);
    frame.draw(drawing, title, steps(), CAUTIONS);
    BenchCardLayout.subtitle(BowType.of(id.variant()).label() + ", back", drawing);
    CardColumns columns = CardColumns.of(id);
    columns.heads("Measured", frame, y, drawing);
    head();
    columns.rows(back.rows(), frame, y, ROW, drawing);
    y += back.rows().size() * ROW + GAP;
    section(BowType.of(id.variant()) == BowType.CROSSBOW ? "Bolt as shot" : "Arrow as shot");
    pairs(back.arrow());
    section("Sight marks as left");
    sightMarks();
    notes();
    return frame.card(id, title, drawing);
  }

  private List<String> steps() {
    return List.of(
        CardColumns.tellsOrder(id)
            ? "Numbers go on from front to back."
            : "The rest of the card: same job, same bow.",
        BenchCardLayout.example(id.units()),
        "Notes are kept as a picture: write freely.",
        "Scan or photograph this side too.");
  }

  private void section(String text) {
    SheetFrame.heading(drawing, text, frame.body().x(), y, 70);
    head();
  }

  private void head() {
    y += HEAD;
    CardColumns.underline(frame, y, drawing);
  }

  /** Two columns, filled from the top down, first the left one. */
  private void pairs(List<CardRow> rows) {
    int half = (rows.size() + 1) / 2;
    for (int i = 0; i < rows.size(); i++) {
      double x = frame.body().x() + (i < half ? 0 : SECOND);
      double middle = y + (i % half + 0.5) * ROW;
      if (i > 0 && i < half) {
        frame.divide(drawing, y + i * ROW);
      }
      single(rows.get(i), x, middle);
    }
    y += half * ROW + GAP;
  }

  private void single(CardRow row, double x, double middle) {
    double answers = row instanceof CardRow.Pick ? WORDS : ANSWERS;
    if (isReturn()) {
      drawing.bold(row.label(), x, middle - 3.8, answers - 1, Drawing.lines(1, 9), 9);
      String last = "last: " + CardColumns.lastOf(row.key());
      drawing.text(last, x, middle + 0.3, answers - 1, Drawing.lines(1, 7), 7);
    } else {
      CardColumns.words(row, x, middle, answers - 1, drawing);
    }
    if (row instanceof CardRow.Measure measure) {
      drawing.number(row.key(), row.label(), measure.unit(), measure.form(), x + answers, middle);
    } else if (row instanceof CardRow.Pick pick) {
      int count = pick.words().size();
      Drawing.Rows place = new Drawing.Rows(x + answers, middle, WORD_PITCH, count, 0);
      drawing.choice(row.key(), row.label(), pick.words(), place);
    }
  }

  private void sightMarks() {
    Unit unit = id.units() == UnitSystem.INCHES ? Unit.YARD : Unit.METRE;
    NumberForm distance = NumberForm.decimal(3, 0, unit.symbol());
    NumberForm mark = NumberForm.decimal(2, 1, "");
    for (int i = 0; i < SIGHT_MARKS; i++) {
      double x = frame.body().x() + i % 2 * SECOND;
      double middle = y + (i / 2 + 0.5) * ROW;
      String name = "sight mark " + (i + 1);
      drawing.number(
          "sight_distance_" + (i + 1), name + ", distance", Optional.of(unit), distance, x, middle);
      drawing.beside("mark", x + 29, middle, 9, Drawing.NORMAL);
      drawing.number(
          "sight_mark_" + (i + 1), name + ", scale", Optional.empty(), mark, x + 39, middle);
    }
    y += SIGHT_MARKS / 2 * ROW + GAP;
  }

  private void notes() {
    MmRect body = frame.body();
    SheetFrame.heading(drawing, "Notes", body.x(), y, 30);
    drawing.text("kept as a picture", body.x() + 15, y + 1, 60, Drawing.lines(1, 7), 7);
    y += HEAD;
    MmRect box = new MmRect(body.x(), y, body.width(), body.bottom() - y);
    drawing.box(box, Tone.LIGHT);
    drawing.notes = Optional.of(box);
  }
}
