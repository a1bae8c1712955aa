package sheaf.forms.card;

import java.io.IOException;
import sheaf.core.layout.Ink.Align;
import sheaf.core.layout.Ink.Weight;
import sheaf.core.page.MmRect;
import sheaf.core.picture.PairPicture;
import sheaf.core.picture.Picture;
import sheaf.core.result.PairResult;
import sheaf.forms.draw.Part;
import sheaf.forms.draw.TaggedPen;
import sheaf.forms.draw.Typeface;

/**
 * A pair sheet's picture with its legend, and its numbers beside it.
 *
 * @param pair the sheet, with at least one hole
 * @param pictureHeight in millimetres
 */
record PairBlock(PairResult pair, double pictureHeight) implements Block {

  /** Width of the picture as a share of the card's inside, and the gap beside it. */
  private static final double PICTURE_SHARE = 0.56;

  private static final double WIDEST_PICTURE = 90;
  private static final double GAP = 5;
  private static final double LABEL = 7.5;
  private static final double NUMBER = 9;
  private static final double NORMAL = 8;
  private static final double SKIP = 1.4;
  private static final double BELOW = 2;

  @Override
  public double height(Typeface typeface, double width) {
    double picture = pictureHeight + 1.5 + Legend.height(pair);
    double beside = width - pictureWidth(width) - GAP;
    return Math.max(picture, numbersHeight(typeface, beside)) + BELOW;
  }

  private static double pictureWidth(double width) {
    return Math.min(PICTURE_SHARE * width, WIDEST_PICTURE);
  }

  @Override
  public void draw(TaggedPen pen, Part document, MmRect room) throws IOException {
    double legend = Legend.height(pair);
    MmRect frame = new MmRect(room.x(), room.y(), pictureWidth(room.width()), pictureHeight);
    Picture picture = PairPicture.of(pair, frame);
    MmRect below = new MmRect(frame.x(), frame.bottom() + 1.5, frame.width(), legend);
    MmRect all =
        new MmRect(frame.x(), frame.y(), frame.width(), below.bottom() - frame.y()).grow(0.5);
    pen.figure(
        document,
        picture.words(),
        all,
        p -> {
          PicturePainter.paint(picture.shapes(), p);
          Legend.draw(pair, below, p);
        });
    double left = frame.right() + GAP;
    numbers(pen, document, new MmRect(left, room.y(), room.right() - left, room.height() - BELOW));
  }

  private double numbersHeight(Typeface typeface, double width) {
    double height = 0;
    for (PairNumbers.Row row : PairNumbers.of(pair)) {
      height += typeface.heightOf(row.label(), width, Weight.REGULAR, LABEL) + SKIP;
      for (int i = 0; i < row.lines().size(); i++) {
        Weight weight = i == 0 ? Weight.BOLD : Weight.REGULAR;
        height += typeface.heightOf(row.lines().get(i), width, weight, i == 0 ? NUMBER : NORMAL);
      }
    }
    return height;
  }

  private void numbers(TaggedPen pen, Part document, MmRect room) throws IOException {
    double y = room.y() - 0.5;
    for (PairNumbers.Row row : PairNumbers.of(pair)) {
      Part part = document.add("P");
      y += pen.text(part, row.label(), at(room, y), Weight.REGULAR, LABEL, Align.LEFT);
      for (int i = 0; i < row.lines().size(); i++) {
        Weight weight = i == 0 ? Weight.BOLD : Weight.REGULAR;
        double size = i == 0 ? NUMBER : NORMAL;
        y += pen.text(part, row.lines().get(i), at(room, y), weight, size, Align.LEFT);
      }
      y += SKIP;
    }
  }

  private static MmRect at(MmRect room, double y) {
    return new MmRect(room.x(), y, room.width(), 100);
  }
}
