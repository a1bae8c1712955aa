package sheaf.forms.card;

import java.awt.Color;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import sheaf.core.layout.Ink.Align;
import sheaf.core.layout.Ink.Weight;
import sheaf.core.layout.UnitSystem;
import sheaf.core.measure.Inches;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;
import sheaf.core.page.MmVector;
import sheaf.core.record.Tear;
import sheaf.forms.draw.Part;
import sheaf.forms.draw.Pen;
import sheaf.forms.draw.TaggedPen;
import sheaf.forms.draw.Typeface;

/**
 * The first tear and the last, side by side, both at one scale.
 *
 * @param tears of a visit, at least one
 */
record TearBlock(List<Tear> tears) implements Block {

  private static final double FRAME = 27;
  private static final double GAP = 3;
  private static final double WORD_GAP = 2;
  private static final double BELOW = 2;

  /** Half a usual shaft, in true millimetres. */
  private static final double SHAFT_RADIUS = 3;

  /** Enlarging a small tear further would make it look like a bad one. */
  private static final double LARGEST_SCALE = 1;

  private static final double SMALL = 7;
  private static final double NORMAL = 8;
  private static final Color PAPER_GREY = new Color(205, 205, 205);
  private static final Color CROSS_GREY = new Color(110, 110, 110);

  @Override
  public double height(Typeface typeface, double width) {
    double words =
        tears.stream().mapToDouble(tear -> words(typeface, tear, width)).max().orElseThrow();
    return Math.max(FRAME, words) + BELOW;
  }

  private static double words(Typeface typeface, Tear tear, double width) {
    double room = half(width) - FRAME - WORD_GAP;
    return Typeface.lineHeight(NORMAL)
        + typeface.heightOf(where(tear), room, Weight.REGULAR, SMALL)
        + typeface.heightOf(way(tear), room, Weight.REGULAR, NORMAL);
  }

  private static double half(double width) {
    return (width - GAP) / 2;
  }

  @Override
  public void draw(TaggedPen pen, Part document, MmRect room) throws IOException {
    double half = half(room.width());
    double scale = scale();
    Tear first = tears.get(0);
    Tear last = tears.get(tears.size() - 1);
    boolean single = tears.size() == 1;
    one(pen, document, single ? "Only tear" : "First tear", first, at(room, 0, half), scale);
    if (!single) {
      one(pen, document, "Last tear", last, at(room, half + GAP, half), scale);
    }
  }

  private static MmRect at(MmRect room, double right, double width) {
    return new MmRect(room.x() + right, room.y(), width, room.height());
  }

  /** Card millimetres for a true one, at which the longer of both tears fits its frame. */
  private double scale() {
    double longest =
        Math.max(
            tears.get(0).pointToTail().length(),
            tears.get(tears.size() - 1).pointToTail().length());
    return Math.min(LARGEST_SCALE, (FRAME / 2 - 4) / Math.max(longest, 1));
  }

  private static void one(
      TaggedPen pen, Part document, String name, Tear tear, MmRect room, double scale)
      throws IOException {
    MmRect frame = new MmRect(room.x(), room.y(), FRAME, FRAME);
    pen.figure(
        document,
        name + " as the archer sees it: " + way(tear) + ".",
        frame,
        p -> picture(p, tear, frame, scale));
    double x = frame.right() + WORD_GAP;
    MmRect words = new MmRect(x, room.y(), room.right() - x, room.height());
    Part part = document.add("P");
    double y = pen.text(part, name, words, Weight.BOLD, NORMAL, Align.LEFT);
    y += pen.text(part, where(tear), lower(words, y), Weight.REGULAR, SMALL, Align.LEFT);
    pen.text(part, way(tear), lower(words, y), Weight.REGULAR, NORMAL, Align.LEFT);
  }

  private static MmRect lower(MmRect room, double by) {
    return new MmRect(room.x(), room.y() + by, room.width(), room.height() - by);
  }

  private static String where(Tear tear) {
    return "Sheet %d, zone %d.".formatted(tear.sheet(), tear.zone());
  }

  private static String way(Tear tear) {
    MmVector v = tear.pointToTail();
    String length =
        CardWords.bound(
            String.format(Locale.ROOT, "%.0f mm = %s", v.length(), Inches.decimal(v.length())));
    return tear.isBulletHole()
        ? "Round hole, no tear to tell"
        : "Tail %s toward %d o'clock: %s".formatted(length, tear.clock(), parts(v));
  }

  private static String parts(MmVector v) {
    return CardWords.bound(
        String.format(
            Locale.ROOT,
            "%.0f mm %s, %.0f mm %s",
            Math.abs(v.dx()),
            v.dx() < 0 ? "left" : "right",
            Math.abs(v.dy()),
            v.dy() < 0 ? "high" : "low"));
  }

  private static void picture(Pen pen, Tear tear, MmRect frame, double scale) throws IOException {
    MmPoint point = frame.centre();
    MmPoint tail = point.plus(tear.pointToTail().times(scale));
    double radius = SHAFT_RADIUS * scale;
    pen.colour(CROSS_GREY);
    pen.width(0.25);
    pen.line(new MmPoint(frame.x(), point.y()), new MmPoint(frame.right(), point.y()));
    pen.line(new MmPoint(point.x(), frame.y()), new MmPoint(point.x(), frame.bottom()));
    pen.colour(PAPER_GREY);
    pen.width(2 * radius);
    pen.line(point, tail);
    pen.disc(tail, radius);
    pen.disc(point, radius);
    pen.colour(Color.BLACK);
    pen.width(0.3);
    pen.ring(tail, radius);
    pen.disc(point, Math.max(radius, 0.8));
    pen.outline(frame);
    ScaleBar.fit(UnitSystem.METRIC, scale, frame.width()).draw(frame, pen);
  }
}
