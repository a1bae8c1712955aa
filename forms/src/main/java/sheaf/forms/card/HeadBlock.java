package sheaf.forms.card;

import java.io.IOException;
import java.util.Optional;
import sheaf.core.layout.Ink.Align;
import sheaf.core.layout.Ink.Weight;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;
import sheaf.core.record.BowRecord;
import sheaf.forms.draw.Part;
import sheaf.forms.draw.QrSymbol;
import sheaf.forms.draw.TaggedPen;
import sheaf.forms.draw.Typeface;

/** A card's head: what it is, who made it, whose bow it is, and both codes. */
final class HeadBlock implements Block {

  private static final double CODE = 28;
  private static final double CODE_GAP = 2;
  private static final double TITLE = 17;
  private static final double NORMAL = 8;
  private static final double SMALL = 7;
  private static final double LEAST = CODE + 4.5;

  private final BowRecord record;
  private final CardHead head;

  HeadBlock(BowRecord record, CardHead head) {
    this.record = record;
    this.head = head;
  }

  @Override
  public double height(Typeface typeface, double width) {
    double words = words(width);
    double height = Typeface.lineHeight(TITLE) + Typeface.lineHeight(10) + 1.2;
    height += head.shop().map(shop -> lines(typeface, shop, words, 10)).orElse(0.0);
    for (String line : CardWords.about(record, head.printed())) {
      height += lines(typeface, line, words, NORMAL);
    }
    return Math.max(LEAST, height) + 3.4;
  }

  private static double lines(Typeface typeface, String text, double width, double size) {
    String broken = typeface.breakable(text, width, Weight.REGULAR, size);
    return typeface.heightOf(broken, width, Weight.REGULAR, size);
  }

  private static double words(double width) {
    return width - 2 * CODE - CODE_GAP - 2;
  }

  @Override
  public void draw(TaggedPen pen, Part document, MmRect room) throws IOException {
    double width = words(room.width());
    double y = room.y() - 1;
    y += line(pen, document.add("H1"), head.title(), room.x(), y, width, Weight.BOLD, TITLE);
    Optional<String> shop = head.shop();
    if (shop.isPresent()) {
      y += line(pen, document.add("P"), shop.get(), room.x(), y, width, Weight.REGULAR, 10);
    }
    y += 0.6;
    String job = "Job " + record.last().job().spoken();
    y += line(pen, document.add("P"), job, room.x(), y, width, Weight.BOLD, 10);
    for (String line : CardWords.about(record, head.printed())) {
      y += line(pen, document.add("P"), line, room.x(), y, width, Weight.REGULAR, NORMAL);
    }
    codes(pen, document, room);
    pen.decoration(
        p -> {
          p.width(0.4);
          double rule = room.bottom() - 2.4;
          p.line(new MmPoint(room.x(), rule), new MmPoint(room.right(), rule));
        });
  }

  private static double line(
      TaggedPen pen,
      Part part,
      String text,
      double x,
      double y,
      double width,
      Weight weight,
      double size)
      throws IOException {
    return pen.text(part, text, new MmRect(x, y, width, 100), weight, size, Align.LEFT);
  }

  private void codes(TaggedPen pen, Part document, MmRect room) throws IOException {
    MmRect right = new MmRect(room.right() - CODE, room.y() - 3, CODE, CODE);
    MmRect left = new MmRect(right.x() - CODE_GAP - CODE, right.y(), CODE, CODE);
    code(pen, document, left, KeyNumbers.fitting(record, left), "Key numbers");
    code(pen, document, right, head.code(), head.codeCaption());
  }

  /** A code with its caption; what it holds is not told, as the record's link is a secret. */
  static void code(TaggedPen pen, Part document, MmRect square, String text, String caption)
      throws IOException {
    pen.figure(
        document,
        "Code to photograph: " + caption,
        square,
        p -> p.fill(QrSymbol.onCard(square, text)));
    MmRect below = new MmRect(square.x() - 1, square.bottom() - 0.8, square.width() + 2, 4);
    pen.text(document.add("Caption"), caption, below, Weight.REGULAR, SMALL, Align.CENTRE);
  }
}
