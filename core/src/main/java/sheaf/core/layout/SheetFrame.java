package sheaf.core.layout;

import java.util.List;
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

  /** The room between the marks. */
  MmRect body() {
    Paper paper = family.paper();
    return new MmRect(SIDE, TOP, paper.width() - 2 * SIDE, paper.height() - TOP - BOTTOM);
  }

  /** Draws the frame around a body. */
  void draw(Drawing drawing, String title, String instruction, String cautions) {
    head(drawing, title, instruction);
    foot(drawing, cautions);
    rule(drawing);
  }

  private MmRect mark(int index) {
    return family.marks().get(index).square();
  }

  private void head(Drawing drawing, String title, String instruction) {
    double top = mark(0).y();
    double width = mark(1).x() - CLEAR - SIDE;
    drawing.bold(title, SIDE, top, width, Drawing.lines(1, 17), 17);
    double below = top + Drawing.lines(1, 17) + 1;
    drawing.text(instruction, SIDE, below, width, Drawing.lines(4, 8), 8);
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
    drawing.bold("{job}", left, code.y() + 1, width, Drawing.lines(1, 9), 9);
    drawing.text(
        "Scan it flat, or photograph the whole sheet with all eight square marks in the picture.",
        left,
        code.y() + 6,
        width,
        Drawing.lines(5, Drawing.SMALL),
        Drawing.SMALL);
    double right = mark(5).right() + CLEAR;
    drawing.text(
        cautions,
        right,
        code.y() + 1,
        mark(4).x() - CLEAR + 1 - right,
        code.height() - 1,
        Drawing.SMALL);
  }

  /** The rule that shows whether the printer kept the size, upright beside the lower right edge. */
  private void rule(Drawing drawing) {
    double x = mark(3).centre().x();
    double zero = mark(3).bottom() + CLEAR;
    drawing.stroke(x, zero, x, zero + RULE_INCHES * MM_PER_INCH, Drawing.LINE, Tone.BLACK);
    for (int mm = 0; mm <= RULE_MILLIMETRES; mm += 5) {
      double length = mm % 50 == 0 ? 4.5 : mm % 10 == 0 ? 3 : 1.5;
      drawing.stroke(x - length, zero + mm, x, zero + mm, Drawing.LINE, Tone.BLACK);
    }
    for (int eighth = 0; eighth <= RULE_INCHES * 8; eighth++) {
      double length = eighth % 8 == 0 ? 4.5 : eighth % 4 == 0 ? 3 : 1.5;
      double y = zero + eighth * MM_PER_INCH / 8;
      drawing.stroke(x, y, x + length, y, Drawing.LINE, Tone.BLACK);
    }
    double height = Drawing.lines(1, Drawing.SMALL);
    drawing.turned(
        "Print at 100 %: this rule is 100 mm (left) and 4 in (right)",
        new MmRect(x - 4.5 - 0.8 - height, zero, height, RULE_MILLIMETRES), Drawing.SMALL);
  }

  /** A heading inside the body. */
  static void heading(Drawing drawing, String text, double x, double y, double width) {
    drawing.bold(text, x, y, width, Drawing.lines(1, 10), 10);
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

  /** Puts the frame and the body together. */
  Layout layout(
      LayoutId id,
      String title,
      List<AimDot> dots,
      java.util.Optional<MmRect> target,
      Drawing drawing) {
    return new Layout(
        id, title, family.marks(), family.codes(), dots, target, drawing.fields, drawing.ink);
  }
}
