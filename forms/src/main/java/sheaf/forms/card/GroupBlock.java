package sheaf.forms.card;

import java.io.IOException;
import java.util.List;
import sheaf.core.layout.Ink.Align;
import sheaf.core.layout.Ink.Weight;
import sheaf.core.page.MmRect;
import sheaf.core.picture.GroupPicture;
import sheaf.core.picture.Picture;
import sheaf.core.result.GroupResult;
import sheaf.core.result.GroupVerdict;
import sheaf.forms.draw.Part;
import sheaf.forms.draw.TaggedPen;
import sheaf.forms.draw.Typeface;

/**
 * A group sheet or sight-in sheet as a picture, with what it came to beside it.
 *
 * @param group at least one shot
 */
record GroupBlock(GroupResult group) implements Block {

  private static final double SIDE = 36;
  private static final double BELOW = 2;
  private static final double GAP = 4;
  private static final double NORMAL = 8;

  @Override
  public double height(Typeface typeface, double width) {
    double words = 0;
    for (String sentence : sentences()) {
      words += typeface.heightOf(sentence, width - SIDE - GAP, Weight.REGULAR, NORMAL);
    }
    return Math.max(SIDE, words) + BELOW;
  }

  private List<String> sentences() {
    return GroupVerdict.sentences(group).stream().map(CardWords::bound).toList();
  }

  @Override
  public void draw(TaggedPen pen, Part document, MmRect room) throws IOException {
    MmRect frame = new MmRect(room.x(), room.y(), SIDE, SIDE);
    Picture picture = GroupPicture.of(group, frame);
    pen.figure(document, picture.words(), frame, p -> PicturePainter.paint(picture.shapes(), p));
    double x = frame.right() + GAP;
    double y = room.y();
    for (String sentence : sentences()) {
      MmRect beside = new MmRect(x, y, room.right() - x, room.height());
      y += pen.text(document.add("P"), sentence, beside, Weight.REGULAR, NORMAL, Align.LEFT);
    }
  }
}
