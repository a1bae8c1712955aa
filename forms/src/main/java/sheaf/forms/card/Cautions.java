package sheaf.forms.card;

import java.io.IOException;
import sheaf.core.layout.Ink.Align;
import sheaf.core.layout.Ink.Weight;
import sheaf.core.page.MmRect;
import sheaf.forms.draw.Part;
import sheaf.forms.draw.TaggedPen;
import sheaf.forms.draw.Typeface;

/**
 * The foot of a card's first page.
 *
 * @param sheets which sheets the card was made from, in words
 */
record Cautions(String sheets) implements Block {

  private static final double SMALL = 7;
  private static final double NORMAL = 8;
  private static final double ABOVE = 2;

  private static final TextBlock HEADING = TextBlock.bold("Caution", NORMAL);
  private static final TextBlock WORDS = TextBlock.text(CardWords.CAUTIONS, SMALL);

  @Override
  public double height(Typeface typeface, double width) {
    return ABOVE
        + TextBlock.text(sheets, SMALL).height(typeface, width)
        + 1
        + HEADING.height(typeface, width)
        + WORDS.height(typeface, width);
  }

  @Override
  public void draw(TaggedPen pen, Part document, MmRect room) throws IOException {
    double y = room.y() + ABOVE;
    y += pen.text(document.add("P"), sheets, lower(room, y), Weight.REGULAR, SMALL, Align.LEFT);
    y += 1;
    HEADING.draw(pen, document, lower(room, y));
    WORDS.draw(pen, document, lower(room, y + HEADING.height(pen.typeface(), room.width())));
  }

  private static MmRect lower(MmRect room, double y) {
    return new MmRect(room.x(), y, room.width(), room.bottom() - y);
  }
}
