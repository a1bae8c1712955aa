package sheaf.forms.card;

import java.io.IOException;
import sheaf.core.page.MmRect;
import sheaf.forms.draw.Part;
import sheaf.forms.draw.TaggedPen;
import sheaf.forms.draw.Typeface;

/** Something that stands on a card in one piece, as wide as the card's inside. */
interface Block {

  /** Millimetres that it takes from top to bottom at a width in millimetres. */
  double height(Typeface typeface, double width);

  /**
   * Draws it.
   *
   * @param document the whole card, to add parts to
   * @param room as high as {@link #height} asked for
   */
  void draw(TaggedPen pen, Part document, MmRect room) throws IOException;

  /** Whether it may not stand last on a page, as a heading. */
  default boolean staysWithTheNext() {
    return false;
  }

  /** Whether a section that was begun goes on with it. */
  default boolean continuesASection() {
    return false;
  }

  /** Empty room. */
  static Block gap(double mm) {
    return new Block() {
      @Override
      public double height(Typeface typeface, double width) {
        return mm;
      }

      @Override
      public void draw(TaggedPen pen, Part document, MmRect room) {
        // Nothing is drawn into a gap.
      }

      @Override
      public boolean staysWithTheNext() {
        return true;
      }
    };
  }
}
