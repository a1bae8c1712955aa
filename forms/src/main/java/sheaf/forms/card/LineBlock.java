package sheaf.forms.card;

import java.io.IOException;
import java.util.List;
import sheaf.core.group.LineShot;
import sheaf.core.layout.Ink.Align;
import sheaf.core.layout.Ink.Weight;
import sheaf.core.page.MmRect;
import sheaf.core.picture.LinePicture;
import sheaf.core.picture.Picture;
import sheaf.core.result.LineVerdict;
import sheaf.forms.draw.Part;
import sheaf.forms.draw.TaggedPen;
import sheaf.forms.draw.Typeface;

/**
 * The line sheet as a plot: left and right of the line as shot, near distances at the top.
 *
 * @param shots at least one
 */
record LineBlock(List<LineShot> shots) implements Block {

  private static final double WIDEST = 62;
  private static final double SHARE = 0.62;
  private static final double HEIGHT = 36;
  private static final double BELOW = 2;
  private static final double GAP = 4;

  private static final double NORMAL = 8;

  @Override
  public double height(Typeface typeface, double width) {
    double room = width - plotWidth(width) - GAP;
    return Math.max(HEIGHT, typeface.heightOf(words(), room, Weight.REGULAR, NORMAL)) + BELOW;
  }

  @Override
  public void draw(TaggedPen pen, Part document, MmRect room) throws IOException {
    MmRect all = new MmRect(room.x(), room.y(), plotWidth(room.width()), HEIGHT);
    String words = words();
    Picture plot = LinePicture.of(shots, all);
    pen.figure(document, plot.words(), all, p -> PicturePainter.paint(plot.shapes(), p));
    double x = all.right() + GAP;
    MmRect beside = new MmRect(x, room.y(), room.right() - x, room.height());
    pen.text(document.add("P"), words, beside, Weight.REGULAR, NORMAL, Align.LEFT);
  }

  private static double plotWidth(double width) {
    return Math.min(SHARE * width, WIDEST);
  }

  private String words() {
    return CardWords.bound(LineVerdict.of(shots));
  }
}
