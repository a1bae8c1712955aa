package sheaf.forms.card;

import java.io.IOException;
import java.util.List;
import sheaf.core.page.MmRect;
import sheaf.forms.draw.Part;
import sheaf.forms.draw.TaggedPen;
import sheaf.forms.draw.Typeface;

/**
 * Two columns of blocks of equal width, read one after the other.
 *
 * @param left from top to bottom
 * @param right from top to bottom
 */
record Beside(List<Block> left, List<Block> right) implements Block {

  private static final double GUTTER = 6;

  @Override
  public double height(Typeface typeface, double width) {
    double half = (width - GUTTER) / 2;
    return Math.max(sum(left, typeface, half), sum(right, typeface, half));
  }

  private static double sum(List<Block> blocks, Typeface typeface, double width) {
    return blocks.stream().mapToDouble(block -> block.height(typeface, width)).sum();
  }

  @Override
  public void draw(TaggedPen pen, Part document, MmRect room) throws IOException {
    double half = (room.width() - GUTTER) / 2;
    column(left, pen, document, new MmRect(room.x(), room.y(), half, room.height()));
    column(right, pen, document, new MmRect(room.right() - half, room.y(), half, room.height()));
  }

  private static void column(List<Block> blocks, TaggedPen pen, Part document, MmRect room)
      throws IOException {
    double y = room.y();
    for (Block block : blocks) {
      double height = block.height(pen.typeface(), room.width());
      block.draw(pen, document, new MmRect(room.x(), y, room.width(), height));
      y += height;
    }
  }
}
