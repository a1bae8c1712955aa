package sheaf.forms.card;

import java.awt.Color;
import java.io.IOException;
import java.util.List;
import java.util.function.Function;
import sheaf.core.group.Offset;
import sheaf.core.layout.Ink.Weight;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;
import sheaf.core.picture.PairPicture;
import sheaf.core.picture.Shape;
import sheaf.core.picture.Signs;
import sheaf.core.result.PairResult;
import sheaf.forms.draw.Pen;

/** What the signs in the picture of a group mean, in two columns. */
final class Legend {

  private static final double SIZE = 7;
  private static final double ROW = 3.9;
  private static final double HOLE = 0.9;

  /** Room for a sign before its words. */
  private static final double SIGN = 5.4;

  private final Pen pen;
  private final MmRect room;
  private int entries;

  private Legend(Pen pen, MmRect room) {
    this.pen = pen;
    this.room = room;
  }

  /** Millimetres that a legend takes. */
  static double height(PairResult pair) {
    return (pair.offset().isPresent() ? 3 : 2) * ROW;
  }

  static void draw(PairResult pair, MmRect room, Pen pen) throws IOException {
    Legend legend = new Legend(pen, room);
    legend.entry("field point's hole", at -> Signs.fieldHole(at, HOLE));
    legend.entry("broadhead's hole", at -> Signs.broadheadHole(at, HOLE));
    if (pair.offset().isPresent()) {
      legend.entry("centre of field points", Signs::fieldCentre);
      legend.entry("centre of broadheads", Signs::broadheadCentre);
    }
    legend.entry("aim dot", at -> Signs.aim(at, 2));
    if (pair.offset().flatMap(Offset::region).isPresent()) {
      String meaning =
          PairPicture.regionFits(pair) ? "95 % region of that centre" : "95 % region: far wider";
      legend.entry(meaning, at -> Signs.region(at, 2, 1.3, 0));
    }
  }

  private void entry(String meaning, Function<MmPoint, List<Shape>> sign) throws IOException {
    double x = room.x() + entries % 2 * room.width() / 2;
    double y = room.y() + (entries / 2 + 0.5) * ROW;
    PicturePainter.paint(sign.apply(new MmPoint(x + SIGN / 2, y)), pen);
    pen.colour(Color.BLACK);
    pen.text(meaning, x + SIGN + 0.6, y + 0.85, Weight.REGULAR, SIZE);
    entries++;
  }
}
