package sheaf.forms.card;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
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
  private static final double NAME = 10;
  private static final double NORMAL = 8;
  private static final double SMALL = 7;
  private static final double LEAST = CODE + 4.5;
  private static final double BELOW = 3.4;

  /** Large letters begin lower in their line than the codes and the logo in their squares. */
  private static final double RISE = 1;

  private final BowRecord record;
  private final CardHead head;
  private final boolean runOn;

  /**
   * The head of a card.
   *
   * @param runOn whether who and when run on in one line
   */
  HeadBlock(BowRecord record, CardHead head, boolean runOn) {
    this.runOn = runOn;
    this.record = record;
    this.head = head;
  }

  /**
   * A line of the head.
   *
   * @param type its structure type
   * @param above room over it in millimetres
   */
  private record Line(String type, String text, Weight weight, double size, double above) {}

  private List<Line> lines() {
    List<Line> lines = new ArrayList<>();
    lines.add(new Line("H1", head.title(), Weight.BOLD, TITLE, 0));
    head.shop().ifPresent(name -> lines.add(new Line("P", name, Weight.REGULAR, NAME, 0)));
    head.contact().ifPresent(how -> lines.add(new Line("P", how, Weight.REGULAR, NORMAL, 0)));
    String job = "Job " + record.last().job().spoken();
    lines.add(new Line("P", job, Weight.BOLD, NAME, 0.6));
    List<String> about = CardWords.about(record, head.printed());
    List<String> shown = runOn ? List.of(String.join(" \u00b7 ", about)) : about;
    shown.forEach(line -> lines.add(new Line("P", line, Weight.REGULAR, NORMAL, 0)));
    return lines;
  }

  @Override
  public double height(Typeface typeface, double width) {
    MmRect room = new MmRect(0, 0, words(width), 1000);
    Optional<LogoPlace> logo = head.logo().map(picture -> LogoPlace.of(picture, room));
    MmRect words = logo.map(LogoPlace::words).orElse(room);
    double bottom = words.y() - RISE;
    for (Line line : lines()) {
      String text = typeface.breakable(line.text, words.width(), line.weight, line.size);
      bottom += line.above + typeface.heightOf(text, words.width(), line.weight, line.size);
    }
    double picture = logo.map(place -> place.logo().bottom()).orElse(0.0);
    return Math.max(Math.max(LEAST, bottom), picture) + BELOW;
  }

  private static double words(double width) {
    return width - 2 * CODE - CODE_GAP - 2;
  }

  @Override
  public void draw(TaggedPen pen, Part document, MmRect room) throws IOException {
    MmRect left = new MmRect(room.x(), room.y(), words(room.width()), room.height());
    Optional<LogoPlace> logo = head.logo().map(picture -> LogoPlace.of(picture, left));
    MmRect words = logo.map(LogoPlace::words).orElse(left);
    double y = words.y() - RISE;
    for (Line line : lines()) {
      y += line.above;
      MmRect at = new MmRect(words.x(), y, words.width(), 100);
      y += pen.text(document.add(line.type), line.text, at, line.weight, line.size, Align.LEFT);
    }
    if (logo.isPresent()) {
      pen.picture(document, head.logoWords(), logo.get().logo(), head.logo().orElseThrow());
    }
    codes(pen, document, room);
    pen.decoration(
        p -> {
          p.width(0.4);
          double rule = room.bottom() - 2.4;
          p.line(new MmPoint(room.x(), rule), new MmPoint(room.right(), rule));
        });
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
