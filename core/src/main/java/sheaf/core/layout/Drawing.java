package sheaf.core.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sheaf.core.layout.Ink.Align;
import sheaf.core.layout.Ink.Tone;
import sheaf.core.layout.Ink.Weight;
import sheaf.core.measure.Unit;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;

/** Collects what a layout consists of while it is being laid out. */
final class Drawing {

  /** Thinnest printed line in millimetres; thinner ones break up on an office laser printer. */
  static final double LINE = 0.3;

  /** Side of a tick box in millimetres. */
  static final double TICK = 5;

  /** A box for one handwritten digit, in millimetres. */
  static final double DIGIT_WIDTH = 6.5;

  static final double DIGIT_HEIGHT = 8.5;

  /** Letter sizes in points; 7 is the least that a worn printer keeps legible. */
  static final double SMALL = 7;

  static final double NORMAL = 8.5;

  private static final double POINT = 25.4 / 72;

  /** Room that a line of text takes, as a multiple of its size. */
  private static final double LEADING = 1.3;

  final List<Field> fields = new ArrayList<>();
  final List<Ink> ink = new ArrayList<>();
  final List<Zone> zones = new ArrayList<>();

  /** Where people write freely; few sheets have such a place. */
  Optional<MmRect> notes = Optional.empty();

  /** Height of {@code lines} lines of text, in millimetres. */
  static double lines(int lines, double size) {
    return lines * size * LEADING * POINT;
  }

  void stroke(double x1, double y1, double x2, double y2, double width, Tone tone) {
    ink.add(new Ink.Stroke(new MmPoint(x1, y1), new MmPoint(x2, y2), width, tone));
  }

  void box(MmRect rect, Tone tone) {
    ink.add(new Ink.Box(rect, LINE, tone));
  }

  /** Text whose rectangle starts at (x, y). */
  void text(String text, double x, double y, double width, double height, double size) {
    label(text, new MmRect(x, y, width, height), size, Weight.REGULAR, Align.LEFT);
  }

  void bold(String text, double x, double y, double width, double height, double size) {
    label(text, new MmRect(x, y, width, height), size, Weight.BOLD, Align.LEFT);
  }

  void label(String text, MmRect rect, double size, Weight weight, Align align) {
    ink.add(new Ink.Label(text, rect, size, weight, align, false));
  }

  void turned(String text, MmRect rect, double size) {
    ink.add(new Ink.Label(text, rect, size, Weight.REGULAR, Align.LEFT, true));
  }

  /** One line of text whose middle is at height {@code middle}. */
  void beside(String text, double x, double middle, double width, double size) {
    double height = lines(1, size);
    text(text, x, middle - height / 2, width, height, size);
  }

  /**
   * How tick boxes are set out.
   *
   * @param x left edge of the first box
   * @param middle height of the middles of the first row's boxes
   * @param pitch from one box's left edge to the next one's
   * @param columns boxes in a row
   * @param rowPitch from one row's middle to the next one's
   */
  record Rows(double x, double middle, double pitch, int columns, double rowPitch) {}

  /**
   * Tick boxes in a row, each with its word to the right.
   *
   * @param x left edge of the first box
   * @param middle height of the boxes' middles
   * @param pitch from one box's left edge to the next one's
   */
  void choice(
      String key,
      String label,
      Optional<Unit> unit,
      List<String> values,
      double x,
      double middle,
      double pitch) {
    choice(key, label, unit, values, new Rows(x, middle, pitch, values.size(), 0));
  }

  /** Tick boxes in rows, whose values have no unit. */
  void choice(String key, String label, List<String> values, Rows rows) {
    choice(key, label, Optional.empty(), values, rows);
  }

  private void choice(
      String key, String label, Optional<Unit> unit, List<String> values, Rows rows) {
    List<Field.Option> options = new ArrayList<>();
    for (String value : values) {
      double left = rows.x() + options.size() % rows.columns() * rows.pitch();
      double middle = rows.middle() + options.size() / rows.columns() * rows.rowPitch();
      options.add(option(value, left, middle, rows.pitch()));
    }
    fields.add(new Field.Choice(key, label, unit, options));
  }

  /** Tick boxes in a row, as close to each other as their words allow. */
  void snugChoice(String key, String label, List<String> values, double x, double middle) {
    List<Field.Option> options = new ArrayList<>();
    double left = x;
    for (String value : values) {
      double pitch = TICK + 2 + value.length() * NumberForm.LETTER_WIDTH;
      options.add(option(value, left, middle, pitch));
      left += pitch;
    }
    fields.add(new Field.Choice(key, label, Optional.empty(), options));
  }

  private Field.Option option(String value, double left, double middle, double pitch) {
    MmRect box = new MmRect(left, middle - TICK / 2, TICK, TICK);
    box(box, Tone.BLACK);
    beside(value, left + TICK + 1, middle, pitch - TICK - 1.5, NORMAL);
    return new Field.Option(value, box);
  }

  /**
   * Boxes for a number, digit by digit, and the words that belong to them.
   *
   * @param x left edge of the first box
   * @param middle height of the boxes' middles
   */
  void number(
      String key, String label, Optional<Unit> unit, NumberForm form, double x, double middle) {
    List<Field.Digit> digits = new ArrayList<>();
    double left = x;
    for (NumberForm.Part part : form.parts()) {
      if (part.place().isPresent()) {
        MmRect box = new MmRect(left, middle - DIGIT_HEIGHT / 2, DIGIT_WIDTH, DIGIT_HEIGHT);
        digits.add(new Field.Digit(box, part.place().getAsDouble()));
        box(box, Tone.LIGHT);
      } else if (!part.text().isEmpty()) {
        beside(part.text(), left + 0.6, middle + 1.6, part.width() - 0.6, NORMAL);
      }
      left += part.width();
    }
    fields.add(new Field.Number(key, label, unit, digits));
  }
}
