package sheaf.core.layout;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.DoubleConsumer;
import sheaf.core.measure.Unit;

/** The rows under a target that say how it was shot, from the top down. */
final class Strip {

  /** Height of a row with tick boxes, and of one with digit boxes too. */
  static final double TICK_ROW = 8.2;

  static final double DIGIT_ROW = 10.5;

  /** Height of the three rows that tell a change. */
  static final double CHANGES = 2 * TICK_ROW + DIGIT_ROW;

  /** Where the answers begin, from the left edge. */
  private static final double ANSWERS = 36;

  /** From one number to the next, and from one word to the next, so that boxes stand in columns. */
  private static final double NUMBER_PITCH = 12.2;

  private static final double WORD_PITCH = 20.4;

  private final SheetFrame frame;
  private final UnitSystem units;
  private final Drawing drawing;
  private final double x;
  private final double top;
  private double y;

  Strip(SheetFrame frame, UnitSystem units, double top, Drawing drawing) {
    this.frame = frame;
    this.units = units;
    this.drawing = drawing;
    this.x = frame.body().x();
    this.top = top;
    this.y = top;
  }

  /** The shortest step in which a change is told, and its unit, as words. */
  static String step(UnitSystem units) {
    return units == UnitSystem.INCHES ? "1/64 in" : "0.1 mm";
  }

  /** How far away the target stood: the usual distances to tick, or another to write. */
  void distance() {
    row(DIGIT_ROW, this::distance);
  }

  /** How many arrows were shot. */
  void arrows(String key, String label) {
    row(
        TICK_ROW,
        middle -> {
          question(label, "how many arrows", middle);
          List<String> counts = List.of("1", "2", "3", "4", "5", "6");
          choice(key, label.toLowerCase(Locale.ROOT), counts, NUMBER_PITCH, middle);
        });
  }

  /** One of a few longer words. */
  void words(String key, String label, String hint, List<String> words) {
    row(
        TICK_ROW,
        middle -> {
          question(label, hint, middle);
          choice(key, label.toLowerCase(Locale.ROOT), words, 2 * WORD_PITCH, middle);
        });
  }

  /** What was changed since the paper before, which way and by how much. */
  void changes(String paper) {
    row(TICK_ROW, middle -> changed(paper, middle));
    row(TICK_ROW, this::way);
    row(DIGIT_ROW, this::howMuch);
  }

  /** A number before and after, such as a mark on a sight's scale. */
  void beforeAndAfter(String key, String label, String hint, NumberForm form) {
    row(
        DIGIT_ROW,
        middle -> {
          question(label, hint, middle);
          double after = x + ANSWERS + 3 * WORD_PITCH;
          one(key + "_before", label + " before", "before", form, x + ANSWERS, middle);
          one(key + "_after", label + " after", "after", form, after, middle);
        });
  }

  private void one(
      String key, String label, String word, NumberForm form, double left, double middle) {
    drawing.beside(word, left, middle, 13, Drawing.NORMAL);
    drawing.number(key, label.toLowerCase(Locale.ROOT), Optional.empty(), form, left + 14, middle);
  }

  private void row(double height, DoubleConsumer draw) {
    if (y > top) {
      frame.divide(drawing, y);
    }
    draw.accept(y + height / 2);
    y += height;
  }

  private void choice(String key, String label, List<String> values, double pitch, double middle) {
    drawing.choice(key, label, Optional.empty(), values, x + ANSWERS, middle, pitch);
  }

  private void distance(double middle) {
    boolean inches = units == UnitSystem.INCHES;
    Unit unit = inches ? Unit.YARD : Unit.METRE;
    question("Distance", "in " + (inches ? "yards" : "metres"), middle);
    double answers = x + ANSWERS;
    List<String> usual =
        inches
            ? List.of("10", "15", "20", "25", "30", "40", "50")
            : List.of("10", "15", "18", "20", "30", "40", "50");
    drawing.choice("distance", "distance", Optional.of(unit), usual, answers, middle, NUMBER_PITCH);
    double other = answers + usual.size() * NUMBER_PITCH;
    drawing.beside("or", other, middle, 5, Drawing.NORMAL);
    drawing.number(
        "distance_written",
        "distance written by hand",
        Optional.of(unit),
        NumberForm.decimal(3, 0, unit.symbol()),
        other + 6,
        middle);
  }

  private void changed(String paper, double middle) {
    question("Changed before", "since the " + paper + " before this", middle);
    List<String> parts = List.of("nothing", "rest", "nocking", "yoke", "sight", "other");
    choice("changed", "changed before this " + paper, parts, WORD_PITCH, middle);
  }

  private void way(double middle) {
    question("Which way", "the changed part was moved", middle);
    List<String> ways = List.of("left", "right", "up", "down");
    choice("changed_way", "which way it was changed", ways, WORD_PITCH, middle);
  }

  private void howMuch(double middle) {
    question("How much", "write it, tick its unit", middle);
    drawing.number(
        "changed_by",
        "how much it was changed",
        Optional.empty(),
        NumberForm.decimal(2, 0, ""),
        x + ANSWERS,
        middle);
    drawing.choice(
        "changed_unit",
        "unit of the change",
        Optional.empty(),
        List.of(step(units), "turns", "clicks"),
        x + ANSWERS + WORD_PITCH,
        middle,
        WORD_PITCH);
  }

  /** What a row asks for, over a line that says how it is meant. */
  private void question(String text, String hint, double middle) {
    double height = Drawing.lines(1, 9);
    drawing.bold(text, x, middle - height + 0.4, ANSWERS - 1, height, 9);
    double small = Drawing.lines(1, Drawing.SMALL);
    drawing.text(hint, x, middle + 0.2, ANSWERS - 1, small, Drawing.SMALL);
  }
}
