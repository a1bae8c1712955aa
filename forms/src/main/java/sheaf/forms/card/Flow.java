package sheaf.forms.card;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import sheaf.core.page.MmRect;
import sheaf.forms.draw.Typeface;

/**
 * Puts blocks below each other, onto as many pages as they need.
 *
 * <p>Everything is placed before anything is drawn, so that the first page can say how many there
 * are.
 */
final class Flow {

  /** A block in its place. */
  record Placed(Block block, MmRect room) {}

  private final Typeface typeface;
  private final MmRect first;
  private final MmRect others;
  private final List<List<Placed>> pages = new ArrayList<>(List.of(new ArrayList<>()));
  private final Map<Block, Double> heights = new IdentityHashMap<>();
  private double y;

  /**
   * An empty flow.
   *
   * @param first where blocks may stand on the first page
   * @param others the same on every other page
   */
  Flow(Typeface typeface, MmRect first, MmRect others) {
    this.typeface = typeface;
    this.first = first;
    this.others = others;
    this.y = first.y();
  }

  /** Places blocks in order; those that belong to their next go to a new page with it. */
  List<List<Placed>> place(List<Block> blocks) {
    int start = 0;
    for (int end = 1; end <= blocks.size(); end++) {
      if (end == blocks.size() || !blocks.get(end - 1).staysWithTheNext()) {
        placeTogether(blocks.subList(start, end));
        start = end;
      }
    }
    return pages;
  }

  private void placeTogether(List<Block> blocks) {
    double height = blocks.stream().mapToDouble(this::height).sum();
    boolean begun = y > room().y();
    if (begun && y + height > room().bottom() + 0.01) {
      pages.add(new ArrayList<>());
      y = others.y();
    }
    for (Block block : blocks) {
      double own = height(block);
      pages
          .get(pages.size() - 1)
          .add(new Placed(block, new MmRect(room().x(), y, room().width(), own)));
      y += own;
    }
  }

  private double height(Block block) {
    return heights.computeIfAbsent(block, one -> one.height(typeface, first.width()));
  }

  private MmRect room() {
    return pages.size() == 1 ? first : others;
  }
}
