package sheaf.core.layout;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import sheaf.core.layout.Ink.Align;
import sheaf.core.layout.Ink.Tone;
import sheaf.core.layout.Ink.Weight;
import sheaf.core.page.MmRect;

/**
 * The columns of a card: what is measured, as found, as left, and on a return card what it last
 * was.
 *
 * @param last where the last values stand, from the body's left edge; empty on a bench card
 * @param found where the boxes as found begin
 * @param left where the boxes as left begin
 * @param wordPitch from one word's box to the next one's; empty for as close as the words allow
 * @param order the numbers that rows bear and are sorted by, by their keys; empty for rows in the
 *     order of the bench card, without numbers
 */
record CardColumns(
    OptionalDouble last,
    double found,
    double left,
    OptionalDouble wordPitch,
    Map<String, Integer> order) {

  private static final CardColumns BENCH =
      new CardColumns(OptionalDouble.empty(), 50, 105, OptionalDouble.of(16.8), Map.of());
  private static final CardColumns RETURN =
      new CardColumns(OptionalDouble.of(41.5), 62, 110, OptionalDouble.empty(), Map.of());

  private static final double LAST_SIZE = 9;

  static CardColumns of(LayoutId id) {
    if (id.kind() != SheetKind.RETURN_CARD) {
      return BENCH;
    }
    return tellsOrder(id)
        ? RETURN.in(RestoringOrder.numbers(BowType.of(id.variant()), id.units()))
        : RETURN;
  }

  private CardColumns in(Map<String, Integer> numbers) {
    return new CardColumns(last, found, left, wordPitch, numbers);
  }

  /** Whether a card's rows are sorted and numbered as they are restored. */
  static boolean tellsOrder(LayoutId id) {
    return id.kind() == SheetKind.RETURN_CARD && id.version() > 1;
  }

  /** Where a record's last value of a field is printed. */
  static String lastOf(String key) {
    return "{last:" + key + "}";
  }

  /** The heads of the columns over a line. */
  void heads(String title, SheetFrame frame, double top, Drawing drawing) {
    double x = frame.body().x();
    SheetFrame.heading(drawing, title, x, top, last.orElse(found) - 1);
    last.ifPresent(shift -> SheetFrame.heading(drawing, "Last time", x + shift, top, 20));
    SheetFrame.heading(drawing, "As found", x + found, top, 45);
    SheetFrame.heading(drawing, "As left", x + left, top, 45);
  }

  /**
   * Rows with a light line between each two.
   *
   * @param top the line over the first row
   * @param pitch height of a row
   */
  void rows(List<CardRow> rows, SheetFrame frame, double top, double pitch, Drawing drawing) {
    MmRect body = frame.body();
    double y = top + pitch / 2;
    for (CardRow row : order.isEmpty() ? rows : RestoringOrder.sorted(rows)) {
      if (y > top + pitch) {
        frame.divide(drawing, y - pitch / 2);
      }
      row(row, body.x(), y, drawing);
      y += pitch;
    }
  }

  private void row(CardRow row, double x, double y, Drawing drawing) {
    double room = last.orElse(found) - 1;
    words(row, number(row) + row.label(), x, y, room, drawing);
    last.ifPresent(
        shift -> {
          double height = Drawing.lines(1, LAST_SIZE);
          MmRect rect = new MmRect(x + shift, y - height / 2, found - shift - 1.5, height);
          drawing.label(lastOf(row.key() + "_left"), rect, LAST_SIZE, Weight.BOLD, Align.LEFT);
        });
    answer(row, "found", x + found, y, drawing);
    answer(row, "left", x + left, y, drawing);
  }

  private String number(CardRow row) {
    return order.containsKey(row.key()) ? order.get(row.key()) + "  " : "";
  }

  /** What a row asks for, over a line that says how it is meant. */
  static void words(CardRow row, double x, double y, double room, Drawing drawing) {
    words(row, row.label(), x, y, room, drawing);
  }

  private static void words(
      CardRow row, String label, double x, double y, double room, Drawing drawing) {
    if (row.hint().isEmpty()) {
      drawing.label(
          label,
          new MmRect(x, y - Drawing.lines(1, 9) / 2, room, Drawing.lines(1, 9)),
          9,
          Weight.BOLD,
          Align.LEFT);
      return;
    }
    drawing.bold(label, x, y - 3.8, room, Drawing.lines(1, 9), 9);
    drawing.text(row.hint(), x, y + 0.3, room, Drawing.lines(1, 7), 7);
  }

  private void answer(CardRow row, String column, double x, double y, Drawing drawing) {
    String key = row.key() + "_" + column;
    String label = row.spoken() + " as " + column;
    if (row instanceof CardRow.Measure measure) {
      drawing.number(key, label, measure.unit(), measure.form(), x, y);
    } else if (row instanceof CardRow.Pick pick) {
      pick(key, label, pick.words(), x, y, drawing);
    }
  }

  private void pick(
      String key, String label, List<String> words, double x, double y, Drawing drawing) {
    if (wordPitch.isEmpty()) {
      drawing.snugChoice(key, label, words, x, y);
    } else {
      double pitch = wordPitch.getAsDouble();
      drawing.choice(key, label, words, new Drawing.Rows(x, y, pitch, words.size(), 0));
    }
  }

  static void underline(SheetFrame frame, double y, Drawing drawing) {
    MmRect body = frame.body();
    drawing.stroke(body.x(), y, body.right(), y, 0.4, Tone.BLACK);
  }
}
