package sheaf.forms.card;

import java.awt.Color;
import java.io.IOException;
import java.util.List;
import sheaf.core.layout.Ink.Align;
import sheaf.core.layout.Ink.Weight;
import sheaf.core.page.MmRect;
import sheaf.forms.draw.Part;
import sheaf.forms.draw.TaggedPen;
import sheaf.forms.draw.Typeface;

/** What must not be overlooked: white on black, or in a frame. */
final class Frame {

  private static final double SIZE = 9;
  private static final double BELOW = 2.4;

  private Frame() {}

  /** Nobody may shoot the bow. */
  static Block doNotShoot(String why) {
    return new Banner(why);
  }

  /** Somebody must look. */
  static Block doubts(String what) {
    return new Outlined(what);
  }

  private record Banner(String why) implements Block {

    private static final double INSET = 3;
    private static final double TITLE = 20;
    private static final double TITLE_HEIGHT = 10;

    @Override
    public double height(Typeface typeface, double width) {
      return TITLE_HEIGHT + words(typeface, width) + 2 + BELOW;
    }

    private double words(Typeface typeface, double width) {
      return typeface.heightOf(
          typeface.breakable(why, width - 2 * INSET, Weight.BOLD, SIZE),
          width - 2 * INSET,
          Weight.BOLD,
          SIZE);
    }

    @Override
    public void draw(TaggedPen pen, Part document, MmRect room) throws IOException {
      pen.decoration(
          p ->
              p.fill(List.of(new MmRect(room.x(), room.y(), room.width(), room.height() - BELOW))));
      double inside = room.width() - 2 * INSET;
      MmRect title = new MmRect(room.x() + INSET, room.y() + 1, inside, 9.5);
      MmRect rest =
          new MmRect(
              room.x() + INSET,
              room.y() + TITLE_HEIGHT,
              inside,
              room.height() - TITLE_HEIGHT - BELOW);
      pen.colour(Color.WHITE);
      pen.text(document.add("P"), "DO NOT SHOOT", title, Weight.BOLD, TITLE, Align.LEFT);
      pen.text(document.add("P"), why, rest, Weight.BOLD, SIZE, Align.LEFT);
      pen.colour(Color.BLACK);
    }
  }

  private record Outlined(String what) implements Block {

    private static final double INSET = 2;
    private static final double LINE = 0.6;

    @Override
    public double height(Typeface typeface, double width) {
      return typeface.heightOf(what, width - 2 * INSET, Weight.BOLD, SIZE) + 2 + BELOW;
    }

    @Override
    public void draw(TaggedPen pen, Part document, MmRect room) throws IOException {
      MmRect box = new MmRect(room.x(), room.y(), room.width(), room.height() - BELOW);
      pen.decoration(
          p -> {
            p.width(LINE);
            p.outline(box.grow(-LINE / 2));
          });
      MmRect words =
          new MmRect(box.x() + INSET, box.y() + 1, box.width() - 2 * INSET, box.height() - 2);
      pen.text(document.add("P"), what, words, Weight.BOLD, SIZE, Align.LEFT);
    }
  }
}
