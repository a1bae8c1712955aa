package sheaf.forms.card;

import java.io.IOException;
import sheaf.core.page.MmRect;
import sheaf.forms.draw.Part;
import sheaf.forms.draw.TaggedPen;
import sheaf.forms.draw.Typeface;

/**
 * Two stacks of blocks, read one after the other.
 *
 * @param left the first
 * @param share of the width that it takes, between 0 and 1
 * @param right the second
 */
record Beside(Stack left, double share, Stack right) implements Block {

  private static final double GUTTER = 6;

  @Override
  public double height(Typeface typeface, double width) {
    double first = first(width);
    return Math.max(left.height(typeface, first), right.height(typeface, width - first - GUTTER));
  }

  private double first(double width) {
    return share * (width - GUTTER);
  }

  @Override
  public void draw(TaggedPen pen, Part document, MmRect room) throws IOException {
    double first = first(room.width());
    double x = room.x() + first + GUTTER;
    left.draw(pen, document, new MmRect(room.x(), room.y(), first, room.height()));
    right.draw(pen, document, new MmRect(x, room.y(), room.right() - x, room.height()));
  }
}
