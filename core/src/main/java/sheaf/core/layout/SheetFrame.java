package sheaf.core.layout;

import java.util.List;
import java.util.Optional;
import sheaf.core.layout.Ink.Align;
import sheaf.core.layout.Ink.Tone;
import sheaf.core.layout.Ink.Weight;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;
import sheaf.core.page.Paper;

/**
 * What every sheet has around its body: title, job id, rule, cautions.
 *
 * @param family the marks it stands between
 */
record SheetFrame(MarkFamily family) {

  /** From the paper's edge to the body: margin, mark and the white beside it. */
  static final double SIDE = 26;

  static final double TOP = 38;
  static final double BOTTOM = 38;

  /** White kept between a mark and other ink; the mark itself needs one cell, 1.75 mm. */
  private static final double CLEAR = 4;

  private static final double MM_PER_INCH = 25.4;
  private static final int RULE_MILLIMETRES = 100;
  private static final int RULE_INCHES = 4;
  private static final double CODE_GAP = 3;

  /** Nothing is printed nearer to the paper's edge, in millimetres. */
  private static final double EDGE = 6;

  private static final double STEP_SIZE = 8;

  /** From a step's number to its words. */
  private static final double STEP_INDENT = 3.5;

  private static final double LONG_TICK = 4;

  /** The room between the marks. */
  MmRect body() {
    Paper paper = family.paper();
    return new MmRect(SIDE, TOP, paper.width() - 2 * SIDE, paper.height() - TOP - BOTTOM);
  }

  /**
   * Draws the frame around a body.
   *
   * @param steps what to do with the sheet, in order, one line each
   */
  void draw(Drawing drawing, String title, List<String> steps, String cautions) {
    head(drawing, title, steps);
    foot(drawing, cautions);
    rule(drawing);
  }

  private MmRect mark(int index) {
    return family.marks().get(index).square();
  }

  private void head(Drawing drawing, String title, List<String> steps) {
    double top = mark(0).y();
    double width = mark(1).x() - CLEAR - SIDE;
    drawing.bold(title, SIDE, top - 1, width, Drawing.lines(1, 18), 18);
    double y = top + 9.5;
    for (int i = 0; i < steps.size(); i++) {
      double height = Drawing.lines(1, STEP_SIZE);
      drawing.bold(String.valueOf(i + 1), SIDE, y, STEP_INDENT, height, STEP_SIZE);
      drawing.text(steps.get(i), SIDE + STEP_INDENT, y, width - STEP_INDENT, height, STEP_SIZE);
      y += height + 0.6;
    }
    double left = mark(1).right() + CLEAR;
    double room = family.codes().get(0).x() - CODE_GAP - left;
    drawing.text("Job", left, top, room, Drawing.lines(1, 8), 8);
    drawing.bold("{job}", left, top + 4.2, room, Drawing.lines(1, 13), 13);
    drawing.text("Sheet {sheet}", left, top + 11, room, Drawing.lines(1, 9), 9);
  }

  private void foot(Drawing drawing, String cautions) {
    MmRect code = family.codes().get(1);
    double left = code.right() + CODE_GAP;
    double width = mark(5).x() - CLEAR - left;
    drawing.bold("{job}", left, code.y() + 2, width, Drawing.lines(1, 9), 9);
    drawing.text(
        "To read it in: scan it flat, or photograph the whole sheet with all eight square marks.",
        left,
        code.y() + 6.5,
        width,
        Drawing.lines(5, Drawing.SMALL),
        Drawing.SMALL);
    double right = mark(5).right() + CLEAR;
    double room = mark(4).x() - CLEAR - right;
    drawing.bold("Caution", right, code.y() + 2, room, Drawing.lines(1, 8), 8);
    drawing.text(
        cautions, right, code.y() + 5.8, room, Drawing.lines(6, Drawing.SMALL), Drawing.SMALL);
  }

  /** The rule that shows whether the printer kept the size, upright beside the lower right edge. */
  private void rule(Drawing drawing) {
    double x = mark(3).centre().x();
    double zero = mark(3).bottom() + CLEAR;
    drawing.stroke(x, zero, x, zero + RULE_INCHES * MM_PER_INCH, Drawing.LINE, Tone.BLACK);
    for (int mm = 0; mm <= RULE_MILLIMETRES; mm += 5) {
      double length = mm % 50 == 0 ? LONG_TICK : mm % 10 == 0 ? 2.7 : 1.5;
      drawing.stroke(x - length, zero + mm, x, zero + mm, Drawing.LINE, Tone.BLACK);
    }
    for (int eighth = 0; eighth <= RULE_INCHES * 8; eighth++) {
      double length = eighth % 8 == 0 ? LONG_TICK : eighth % 4 == 0 ? 2.7 : 1.5;
      double y = zero + eighth * MM_PER_INCH / 8;
      drawing.stroke(x, y, x + length, y, Drawing.LINE, Tone.BLACK);
    }
    numerals(drawing, x, zero);
    double height = Drawing.lines(1, Drawing.SMALL);
    drawing.turned(
        "Print at 100 %: this rule is 100 mm (left) and 4 in (right)",
        new MmRect(family.paper().width() - EDGE - height, zero, height, RULE_MILLIMETRES),
        Drawing.SMALL);
  }

  private static void numerals(Drawing drawing, double x, double zero) {
    for (int mm = 50; mm <= RULE_MILLIMETRES; mm += 50) {
      numeral(drawing, String.valueOf(mm), x - LONG_TICK - 5.5, zero + mm, 5, Align.RIGHT);
    }
    for (int inch = 1; inch <= RULE_INCHES; inch++) {
      double y = zero + inch * MM_PER_INCH;
      numeral(drawing, String.valueOf(inch), x + LONG_TICK + 0.5, y, 2, Align.LEFT);
    }
  }

  private static void numeral(
      Drawing drawing, String text, double x, double middle, double width, Align align) {
    double height = Drawing.lines(1, Drawing.SMALL);
    MmRect rect = new MmRect(x, middle - height / 2, width, height);
    drawing.label(text, rect, Drawing.SMALL, Weight.REGULAR, align);
  }

  /** A heading inside the body. */
  static void heading(Drawing drawing, String text, double x, double y, double width) {
    drawing.bold(text, x, y, width, Drawing.lines(1, 10.5), 10.5);
  }

  /** A caption centred over a place. */
  static void caption(Drawing drawing, String text, MmPoint centre, double width) {
    double height = Drawing.lines(1, 13);
    drawing.label(
        text,
        new MmRect(centre.x() - width / 2, centre.y() - height / 2, width, height),
        13,
        Weight.BOLD,
        Align.CENTRE);
  }

  /** A light line across the body that keeps two rows apart. */
  void divide(Drawing drawing, double y) {
    MmRect body = body();
    drawing.stroke(body.x(), y, body.right(), y, Drawing.LINE, Tone.LIGHT);
  }

  /** Puts the frame and the body of a sheet that is not shot at together. */
  Layout card(LayoutId id, String title, Drawing drawing) {
    return layout(id, title, List.of(), Optional.empty(), drawing);
  }

  /** Puts the frame and the body together. */
  Layout layout(
      LayoutId id, String title, List<AimDot> dots, Optional<MmRect> target, Drawing drawing) {
    return new Layout(
        id,
        title,
        family.marks(),
        family.codes(),
        dots,
        target,
        drawing.zones,
        drawing.notes,
        drawing.fields,
        drawing.ink);
  }
}
