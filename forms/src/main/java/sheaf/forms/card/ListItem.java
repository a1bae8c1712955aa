package sheaf.forms.card;

import java.io.IOException;
import java.util.List;
import java.util.stream.IntStream;
import sheaf.core.layout.Ink.Align;
import sheaf.core.layout.Ink.Weight;
import sheaf.core.page.MmRect;
import sheaf.forms.draw.Part;
import sheaf.forms.draw.TaggedPen;
import sheaf.forms.draw.Typeface;

/** One item of a list, with its number or sign before it. */
final class ListItem implements Block {

  private static final double SIZE = 8;
  private static final double INDENT = 5;
  private static final double BELOW = 0.7;

  private final OnePart list;
  private final String sign;
  private final String text;

  private ListItem(OnePart list, String sign, String text) {
    this.list = list;
    this.sign = sign;
    this.text = text;
  }

  /** A numbered list. */
  static List<Block> numbered(List<String> texts) {
    OnePart list = new OnePart("L");
    return IntStream.range(0, texts.size())
        .mapToObj(i -> (Block) new ListItem(list, i + 1 + ".", texts.get(i)))
        .toList();
  }

  @Override
  public double height(Typeface typeface, double width) {
    double room = width - INDENT;
    String broken = typeface.breakable(text, room, Weight.REGULAR, SIZE);
    return typeface.heightOf(broken, room, Weight.REGULAR, SIZE) + BELOW;
  }

  @Override
  public boolean continuesASection() {
    return true;
  }

  @Override
  public void draw(TaggedPen pen, Part document, MmRect room) throws IOException {
    Part item = list.in(document).add("LI");
    MmRect label = new MmRect(room.x(), room.y(), INDENT, room.height());
    pen.text(item.add("Lbl"), sign, label, Weight.REGULAR, SIZE, Align.LEFT);
    MmRect words = new MmRect(room.x() + INDENT, room.y(), room.width() - INDENT, room.height());
    pen.text(item.add("LBody"), text, words, Weight.REGULAR, SIZE, Align.LEFT);
  }
}
