package sheaf.forms.card;

import java.io.IOException;
import java.util.List;
import sheaf.core.page.MmRect;
import sheaf.forms.draw.Part;
import sheaf.forms.draw.TaggedPen;
import sheaf.forms.draw.Typeface;

/**
 * Blocks that stay together on one page.
 *
 * @param blocks from top to bottom
 */
record Stack(List<Block> blocks) implements Block {

  @Override
  public double height(Typeface typeface, double width) {
    return blocks.stream().mapToDouble(block -> block.height(typeface, width)).sum();
  }

  @Override
  public void draw(TaggedPen pen, Part document, MmRect room) throws IOException {
    double y = room.y();
    for (Block block : blocks) {
      double height = block.height(pen.typeface(), room.width());
      block.draw(pen, document, new MmRect(room.x(), y, room.width(), height));
      y += height;
    }
  }
}
