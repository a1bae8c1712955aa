package sheaf.forms.card;

import java.awt.Color;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import sheaf.core.group.Group;
import sheaf.core.layout.Ink.Align;
import sheaf.core.layout.Ink.Weight;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;
import sheaf.core.page.MmVector;
import sheaf.core.reading.Head;
import sheaf.core.result.GroupResult;
import sheaf.core.result.GroupVerdict;
import sheaf.forms.draw.Part;
import sheaf.forms.draw.Pen;
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
  private static final double AIM_ARM = 3;

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
    pen.figure(
        document,
        "The %s sheet as it was shot, around the spot. %s"
            .formatted(group.sheet().layout().kind().label(), GroupVerdict.of(group)),
        frame,
        p -> picture(p, frame));
    double x = frame.right() + GAP;
    double y = room.y();
    for (String sentence : sentences()) {
      MmRect beside = new MmRect(x, y, room.right() - x, room.height());
      y += pen.text(document.add("P"), sentence, beside, Weight.REGULAR, NORMAL, Align.LEFT);
    }
  }

  private void picture(Pen pen, MmRect frame) throws IOException {
    Group shots = group.shots().orElseThrow();
    PictureScale scale = PictureScale.fit(span(shots), frame);
    Symbols symbols = new Symbols(pen);
    symbols.aim(scale.onCard(new MmPoint(0, 0)), AIM_ARM);
    double radius = Math.max(group.shaftDiameter() / 2 * scale.perMm(), Symbols.SMALLEST_HOLE);
    boolean broadheads = group.head() == Head.BROADHEAD;
    for (MmPoint shot : shots.shots()) {
      if (broadheads) {
        symbols.broadheadHole(scale.onCard(shot), radius);
      } else {
        symbols.fieldHole(scale.onCard(shot), radius);
      }
    }
    if (broadheads) {
      symbols.broadheadCentre(scale.onCard(shots.centre()));
    } else {
      symbols.fieldCentre(scale.onCard(shots.centre()));
    }
    pen.width(0.3);
    pen.colour(Color.BLACK);
    pen.outline(frame);
    ScaleBar.fit(group.sheet().layout().units(), scale.perMm(), frame.width()).draw(frame, pen);
  }

  /** The spot and every hole, with room around them, in true millimetres. */
  private MmRect span(Group shots) {
    double radius = Math.max(group.shaftDiameter(), 1);
    List<MmPoint> places = new ArrayList<>(List.of(new MmPoint(0, 0)));
    for (MmPoint shot : shots.shots()) {
      places.add(shot.plus(new MmVector(-radius, -radius)));
      places.add(shot.plus(new MmVector(radius, radius)));
    }
    return GroupPicture.around(places);
  }
}
