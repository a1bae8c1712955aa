package sheaf.forms.card;

import java.awt.Color;
import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDPage;
import sheaf.core.layout.Ink.Align;
import sheaf.core.layout.Ink.Weight;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;
import sheaf.core.record.BowRecord;
import sheaf.forms.draw.ArchivalDocument;
import sheaf.forms.draw.Part;
import sheaf.forms.draw.Picture;
import sheaf.forms.draw.TaggedPen;
import sheaf.forms.draw.Typeface;

/**
 * A tag to cut out, fold and carry in a wallet: codes on its front, the measures on its back.
 *
 * <p>Folded it has the size of a bank card, ISO/IEC 7810 ID-1: 85.60 mm by 53.98 mm.
 */
public final class WalletTag {

  private static final double WIDTH = 85.6;
  private static final double HEIGHT = 53.98;
  private static final double TOP = 22;
  private static final double INSET = 3.5;
  private static final double KEY_CODE = 30;
  private static final double RECORD_CODE = 22;
  private static final double SMALL = 7;
  private static final double NORMAL = 8;
  private static final double TITLE = 11;

  /** Height of two lines of small print or one large one on black, in millimetres. */
  private static final double WARNING = 9;

  private final TaggedPen pen;
  private final Part document;
  private final BowRecord record;
  private final CardHead head;

  private WalletTag(TaggedPen pen, Part document, BowRecord record, CardHead head) {
    this.pen = pen;
    this.document = document;
    this.record = record;
    this.head = head;
  }

  /** Draws the tag of a record on a page of its own, of a size in millimetres. */
  public static void draw(
      ArchivalDocument document,
      BowRecord record,
      CardHead head,
      double pageWidth,
      double pageHeight)
      throws IOException {
    PDPage page = document.page(pageWidth, pageHeight);
    MmRect front = new MmRect((pageWidth - WIDTH) / 2, TOP, WIDTH, HEIGHT);
    MmRect back = new MmRect(front.x(), front.bottom(), WIDTH, HEIGHT);
    document.draw(
        page,
        pen -> {
          pen.colour(Color.BLACK);
          WalletTag tag = new WalletTag(pen, document.root(), record, head);
          tag.front(front.grow(-INSET));
          TagBack.draw(pen, document.root(), record, back.grow(-INSET));
          tag.cutLines(front, back);
        });
  }

  private void front(MmRect room) throws IOException {
    double end = words(room, room.width() - KEY_CODE - 2);
    MmRect key = new MmRect(room.right() - KEY_CODE + 1, room.y() - 2, KEY_CODE, KEY_CODE);
    HeadBlock.code(pen, document, key, KeyNumbers.fitting(record, key), "Key numbers");
    double top = room.bottom() - 2.2 - RECORD_CODE;
    MmRect code = new MmRect(room.x() - 1, top, RECORD_CODE, RECORD_CODE);
    HeadBlock.code(pen, document, code, head.code(), head.codeCaption());
    double x = code.right() + 3;
    double between = Math.max(end + 1, top - 1);
    logo(new MmRect(x, between, key.x() - 1 - x, key.bottom() + 3 - between));
    MmRect warning = new MmRect(x, key.bottom() + 4, room.right() - x, WARNING);
    warning(warning);
    double below = warning.bottom();
    contact(new MmRect(x, below, warning.width(), room.bottom() + 1 - below));
  }

  /** What it is, who made it, which job and when; returns where that ends. */
  private double words(MmRect room, double width) throws IOException {
    double y = room.y() - 1.2;
    y += line("H1", head.title(), room.x(), y, width, Weight.BOLD, TITLE);
    if (head.shop().isPresent()) {
      String shop = shortened(head.shop().get(), width, NORMAL);
      y += line("P", shop, room.x(), y, width, Weight.REGULAR, NORMAL);
    }
    String job = "Job " + record.last().job().spoken();
    y += line("P", job, room.x(), y, width, Weight.BOLD, NORMAL);
    String printed = "Printed " + CardWords.date(head.printed());
    return y + line("P", printed, room.x(), y, width, Weight.REGULAR, SMALL);
  }

  private void logo(MmRect room) throws IOException {
    if (head.logo().isPresent()) {
      Picture logo = head.logo().get();
      MmRect place = LogoPlace.fitting(logo, room.x(), room.y(), room.width(), room.height());
      pen.picture(document, head.logoWords(), place, logo);
    }
  }

  private void contact(MmRect room) throws IOException {
    if (head.contact().isPresent()) {
      String words = shortened(head.contact().get(), room.width(), SMALL);
      line("P", words, room.x(), room.y(), room.width(), Weight.REGULAR, SMALL);
    }
  }

  private void warning(MmRect room) throws IOException {
    if (record.last().notSound().isEmpty()) {
      String caution = "Never dry fire. The bow maker's limits and local rules come first.";
      pen.text(document.add("P"), caution, room, Weight.REGULAR, SMALL, Align.LEFT);
      return;
    }
    pen.decoration(p -> p.fill(List.of(new MmRect(room.x(), room.y(), room.width(), 8))));
    pen.colour(Color.WHITE);
    MmRect words = new MmRect(room.x() + 2, room.y() + 0.8, room.width() - 4, 8);
    pen.text(document.add("P"), "DO NOT SHOOT", words, Weight.BOLD, 14, Align.LEFT);
    pen.colour(Color.BLACK);
  }

  private double line(
      String type, String text, double x, double y, double width, Weight weight, double size)
      throws IOException {
    MmRect room = new MmRect(x, y, width, 50);
    return pen.text(document.add(type), text, room, weight, size, Align.LEFT);
  }

  /** As much of a text as fits two lines. */
  private String shortened(String text, double width, double size) {
    Typeface typeface = pen.typeface();
    double most = 2 * Typeface.lineHeight(size) + 0.1;
    String shown = text;
    int end = text.length();
    while (height(typeface, shown, width, size) > most) {
      end = text.offsetByCodePoints(end, -1);
      shown = text.substring(0, end).strip() + "…";
    }
    return shown;
  }

  private static double height(Typeface typeface, String text, double width, double size) {
    String broken = typeface.breakable(text, width, Weight.REGULAR, size);
    return typeface.heightOf(broken, width, Weight.REGULAR, size);
  }

  private void cutLines(MmRect front, MmRect back) throws IOException {
    String how = "Cut along the line, fold at the dashes. Print at 100 %.";
    MmRect above = new MmRect(front.x(), front.y() - 6, front.width(), 5);
    pen.text(document.add("P"), how, above, Weight.REGULAR, NORMAL, Align.LEFT);
    if (CardWords.lacksLetters(record, head, pen.typeface())) {
      MmRect below = new MmRect(back.x(), back.bottom() + 3, back.width(), 12);
      pen.text(document.add("P"), CardWords.LACKING, below, Weight.REGULAR, NORMAL, Align.LEFT);
    }
    pen.decoration(
        p -> {
          p.width(0.25);
          p.outline(new MmRect(front.x(), front.y(), WIDTH, 2 * HEIGHT));
          p.dashes(1.5, 1.5);
          p.line(new MmPoint(back.x(), back.y()), new MmPoint(back.right(), back.y()));
          p.dashes();
        });
  }
}
