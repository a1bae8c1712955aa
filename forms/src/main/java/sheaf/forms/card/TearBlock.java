package sheaf.forms.card;

import java.io.IOException;
import java.util.List;
import sheaf.core.layout.Ink.Align;
import sheaf.core.layout.Ink.Weight;
import sheaf.core.page.MmRect;
import sheaf.core.picture.Picture;
import sheaf.core.picture.TearPicture;
import sheaf.core.record.Tear;
import sheaf.forms.draw.Part;
import sheaf.forms.draw.TaggedPen;
import sheaf.forms.draw.Typeface;

/**
 * The first tear and the last, side by side, both at one scale.
 *
 * @param tears of a visit, at least one
 */
record TearBlock(List<Tear> tears) implements Block {

  private static final double FRAME = 27;
  private static final double GAP = 3;
  private static final double WORD_GAP = 2;
  private static final double BELOW = 2;

  private static final double SMALL = 7;
  private static final double NORMAL = 8;

  @Override
  public double height(Typeface typeface, double width) {
    double words =
        tears.stream().mapToDouble(tear -> words(typeface, tear, width)).max().orElseThrow();
    return Math.max(FRAME, words) + BELOW;
  }

  private static double words(Typeface typeface, Tear tear, double width) {
    double room = half(width) - FRAME - WORD_GAP;
    return Typeface.lineHeight(NORMAL)
        + typeface.heightOf(where(tear), room, Weight.REGULAR, SMALL)
        + typeface.heightOf(way(tear), room, Weight.REGULAR, NORMAL);
  }

  private static double half(double width) {
    return (width - GAP) / 2;
  }

  @Override
  public void draw(TaggedPen pen, Part document, MmRect room) throws IOException {
    double half = half(room.width());
    double scale = TearPicture.scale(List.of(tears.get(0), tears.get(tears.size() - 1)), FRAME);
    Tear first = tears.get(0);
    Tear last = tears.get(tears.size() - 1);
    boolean single = tears.size() == 1;
    one(pen, document, single ? "Only tear" : "First tear", first, at(room, 0, half), scale);
    if (!single) {
      one(pen, document, "Last tear", last, at(room, half + GAP, half), scale);
    }
  }

  private static MmRect at(MmRect room, double right, double width) {
    return new MmRect(room.x() + right, room.y(), width, room.height());
  }

  private static void one(
      TaggedPen pen, Part document, String name, Tear tear, MmRect room, double scale)
      throws IOException {
    MmRect frame = new MmRect(room.x(), room.y(), FRAME, FRAME);
    Picture picture = TearPicture.of(tear, frame, scale);
    pen.figure(
        document,
        name + ". " + picture.words(),
        frame,
        p -> PicturePainter.paint(picture.shapes(), p));
    double x = frame.right() + WORD_GAP;
    MmRect words = new MmRect(x, room.y(), room.right() - x, room.height());
    Part part = document.add("P");
    double y = pen.text(part, name, words, Weight.BOLD, NORMAL, Align.LEFT);
    y += pen.text(part, where(tear), lower(words, y), Weight.REGULAR, SMALL, Align.LEFT);
    pen.text(part, way(tear), lower(words, y), Weight.REGULAR, NORMAL, Align.LEFT);
  }

  private static MmRect lower(MmRect room, double by) {
    return new MmRect(room.x(), room.y() + by, room.width(), room.height() - by);
  }

  private static String where(Tear tear) {
    return "Sheet %d, zone %d.".formatted(tear.sheet(), tear.zone());
  }

  private static String way(Tear tear) {
    return CardWords.bound(TearPicture.way(tear));
  }
}
