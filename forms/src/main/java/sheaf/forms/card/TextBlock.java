package sheaf.forms.card;

import java.io.IOException;
import sheaf.core.layout.Ink.Align;
import sheaf.core.layout.Ink.Weight;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;
import sheaf.forms.draw.Part;
import sheaf.forms.draw.TaggedPen;
import sheaf.forms.draw.Typeface;

/**
 * A paragraph.
 *
 * @param type its structure type: {@code P}
 * @param text what it says
 * @param weight of its letters
 * @param size of its letters in points
 */
record TextBlock(String type, String text, Weight weight, double size) implements Block {

  static TextBlock text(String text, double size) {
    return new TextBlock("P", text, Weight.REGULAR, size);
  }

  static TextBlock bold(String text, double size) {
    return new TextBlock("P", text, Weight.BOLD, size);
  }

  /** A section's name over a line as wide as the card. */
  static Block heading(String text) {
    return new Heading(text);
  }

  @Override
  public double height(Typeface typeface, double width) {
    return typeface.heightOf(typeface.breakable(text, width, weight, size), width, weight, size);
  }

  @Override
  public void draw(TaggedPen pen, Part document, MmRect room) throws IOException {
    pen.text(document.add(type), text, room, weight, size, Align.LEFT);
  }

  private record Heading(String text) implements Block {

    private static final double SIZE = 10;
    private static final double ABOVE = 1.8;
    private static final double RULE = 0.4;
    private static final double HEIGHT = ABOVE + 6.2;

    @Override
    public double height(Typeface typeface, double width) {
      return HEIGHT;
    }

    @Override
    public boolean staysWithTheNext() {
      return true;
    }

    @Override
    public void draw(TaggedPen pen, Part document, MmRect room) throws IOException {
      MmRect words = new MmRect(room.x(), room.y() + ABOVE, room.width(), 5);
      pen.text(document.add("H2"), text, words, Weight.BOLD, SIZE, Align.LEFT);
      double y = room.bottom() - 1.2;
      pen.decoration(
          p -> {
            p.width(RULE);
            p.line(new MmPoint(room.x(), y), new MmPoint(room.right(), y));
          });
    }
  }
}
