package sheaf.core.layout;

import java.util.List;
import java.util.Optional;
import sheaf.core.layout.Ink.Align;
import sheaf.core.layout.Ink.Tone;
import sheaf.core.layout.Ink.Weight;
import sheaf.core.measure.Unit;
import sheaf.core.page.MmRect;

/** The scale page, version 1: a rule across and a rule down, to check a printer with. */
final class ScaleLayout {

  private static final String TITLE = "Scale page";

  private static final String CAUTIONS =
      "Check each printer, and each program that prints, before its first pad. A sheet printed at "
          + "another size shows distances that are wrong, and a photo cannot tell. Never judge a "
          + "bow or an arrow by a number that was read from a sheet of unknown size.";

  private static final double MM_PER_INCH = 25.4;

  /** From the body's edges to the cross: room for ticks and numbers. */
  private static final double INSET = 11;

  /** Room for the last number beyond a rule's end. */
  private static final double BEYOND = 2.5;

  private static final double TENTH_TICK = 5;
  private static final double FIFTH_TICK = 3.4;
  private static final double TICK = 2;
  private static final double TICK_WIDTH = 0.25;
  private static final double OVERSHOOT = 8;
  private static final double SIZE = 10;

  /** Between the rules and the words in the corner that they enclose. */
  private static final double WORDS = 15;

  /** Where the boxes begin, from the words' left edge. */
  private static final double ANSWERS = 62;

  private final LayoutId id;
  private final SheetFrame frame;
  private final Drawing drawing = new Drawing();
  private final double x0;
  private final double y0;
  private final int across;
  private final int down;

  private ScaleLayout(LayoutId id) {
    this.id = id;
    this.frame = new SheetFrame(MarkFamily.of(id.variant(), id.paper()));
    MmRect body = frame.body();
    x0 = body.x() + INSET;
    y0 = body.y() + INSET;
    across = tens(body.right() - BEYOND - x0);
    down = tens(body.bottom() - BEYOND - y0);
  }

  static Layout of(LayoutId id) {
    return new ScaleLayout(id).draw();
  }

  private static int tens(double length) {
    return (int) Math.floor(length / 10) * 10;
  }

  private Layout draw() {
    frame.draw(drawing, TITLE, steps(), CAUTIONS);
    drawing.stroke(x0 - OVERSHOOT, y0, x0 + across, y0, Drawing.LINE, Tone.BLACK);
    drawing.stroke(x0, y0 - OVERSHOOT, x0, y0 + down, Drawing.LINE, Tone.BLACK);
    drawing.text("mm", x0 - 9, y0 - 5, 6, Drawing.lines(1, Drawing.SMALL), Drawing.SMALL);
    millimetres(across, true);
    millimetres(down, false);
    inches(across, true);
    inches(down, false);
    words();
    return frame.card(id, TITLE, drawing);
  }

  private static List<String> steps() {
    return List.of(
        "Print at 100 %, as you print your sheets.",
        "Lay a steel rule along each line, 0 on the cross.",
        "Write what it shows at the last number.",
        "Too long or too short? See below.");
  }

  private void millimetres(int length, boolean level) {
    for (int mm = 1; mm <= length; mm++) {
      tick(mm, -(mm % 10 == 0 ? TENTH_TICK : mm % 5 == 0 ? FIFTH_TICK : TICK), level);
      if (mm % 10 == 0) {
        number(String.valueOf(mm), mm, -TENTH_TICK - 2.2, level);
      }
    }
  }

  private void inches(int length, boolean level) {
    int sixteenths = (int) Math.floor(length / MM_PER_INCH * 16);
    for (int i = 1; i <= sixteenths; i++) {
      double at = i * MM_PER_INCH / 16;
      tick(at, i % 16 == 0 ? TENTH_TICK : i % 8 == 0 ? FIFTH_TICK : TICK, level);
      if (i % 16 == 0) {
        number(i / 16 + " in", at, TENTH_TICK + 2.4, level);
      }
    }
  }

  /** A tick at a distance from the cross, to the inner side when its length is above zero. */
  private void tick(double at, double length, boolean level) {
    if (level) {
      drawing.stroke(x0 + at, y0, x0 + at, y0 + length, TICK_WIDTH, Tone.BLACK);
    } else {
      drawing.stroke(x0, y0 + at, x0 + length, y0 + at, TICK_WIDTH, Tone.BLACK);
    }
  }

  private void number(String text, double at, double off, boolean level) {
    double height = Drawing.lines(1, Drawing.SMALL);
    double x = level ? x0 + at : x0 + off;
    double y = level ? y0 + off : y0 + at;
    double width = level ? 8 : 6;
    Align align = level ? Align.CENTRE : off < 0 ? Align.RIGHT : Align.LEFT;
    double left = level ? x - width / 2 : off < 0 ? x + 1.8 - width : x - 1.4;
    drawing.label(
        text,
        new MmRect(left, y - height / 2, width, height),
        Drawing.SMALL,
        Weight.REGULAR,
        align);
  }

  private void words() {
    MmRect body = frame.body();
    double x = x0 + WORDS;
    double y = y0 + WORDS;
    double width = body.right() - x;
    boolean inches = id.units() == UnitSystem.INCHES;
    int wholeAcross = (int) (across / MM_PER_INCH);
    int wholeDown = (int) (down / MM_PER_INCH);
    ask("across", inches ? wholeAcross + " in" : across + " mm", x, y + 6, inches);
    ask("down", inches ? wholeDown + " in" : down + " mm", x, y + 18, inches);
    y += 32;
    SheetFrame.heading(drawing, "What it means", x, y, width);
    y += 7;
    for (String line : meanings()) {
      double height = Drawing.lines(2, SIZE);
      drawing.text(line, x, y, width, height, SIZE);
      y += height + 3;
    }
  }

  private void ask(String way, String last, double x, double middle, boolean inches) {
    String text = "At %s %s your rule shows".formatted(last, way);
    drawing.bold(text, x, middle - 2.4, ANSWERS - 1, Drawing.lines(1, SIZE), SIZE);
    drawing.number(
        "rule_" + way,
        "what a rule shows " + way,
        Optional.of(inches ? Unit.INCH : Unit.MILLIMETRE),
        inches ? NumberForm.sixteenths(2) : NumberForm.decimal(3, 1, "mm"),
        x + ANSWERS,
        middle);
  }

  private List<String> meanings() {
    return List.of(
        "The same to 1/2 mm in 100 mm (1/32 in in 6 in): good. Keep these settings for your pads.",
        "Your rule shows less: the printer shrinks. Choose 100 % or actual size, not fit to page, "
            + "and print this page again.",
        "Your rule shows more: the printer enlarges. Turn off borderless printing and fit to page, "
            + "and print this page again.",
        "Across and down differ: the printer stretches one way. Try another paper setting or "
            + "another printer for sheets that are shot at.",
        "Or scan this page on a flatbed at 300 dpi: reading it tells the print scale both ways.");
  }
}
