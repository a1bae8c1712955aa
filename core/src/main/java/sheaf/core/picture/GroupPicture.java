package sheaf.core.picture;

import java.util.ArrayList;
import java.util.List;
import sheaf.core.group.Group;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;
import sheaf.core.page.MmVector;
import sheaf.core.reading.Head;
import sheaf.core.result.GroupResult;
import sheaf.core.result.GroupVerdict;

/** A group sheet or sight-in sheet as it was shot: every hole, and their middle. */
public final class GroupPicture {

  private static final double AIM_ARM = 3;

  private GroupPicture() {}

  /** The picture of a sheet on which at least one hole was found, in a frame. */
  public static Picture of(GroupResult group, MmRect frame) {
    Group shots = group.shots().orElseThrow();
    PictureScale scale = PictureScale.fit(span(group, shots), frame);
    List<Shape> shapes = new ArrayList<>(Signs.aim(scale.inPicture(new MmPoint(0, 0)), AIM_ARM));
    double radius = Math.max(group.shaftDiameter() / 2 * scale.perMm(), Signs.SMALLEST_HOLE);
    boolean broadheads = group.head() == Head.BROADHEAD;
    for (MmPoint shot : shots.shots()) {
      MmPoint at = scale.inPicture(shot);
      shapes.addAll(broadheads ? Signs.broadheadHole(at, radius) : Signs.fieldHole(at, radius));
    }
    MmPoint middle = scale.inPicture(shots.centre());
    shapes.addAll(broadheads ? Signs.broadheadCentre(middle) : Signs.fieldCentre(middle));
    shapes.add(new Shape.Outline(frame, PairPicture.FRAME_WIDTH));
    shapes.addAll(
        ScaleBar.fit(group.sheet().layout().units(), scale.perMm(), frame.width()).in(frame));
    return new Picture(frame, words(group), shapes);
  }

  private static String words(GroupResult group) {
    return "The %s sheet as it was shot, around the spot. %s"
        .formatted(group.sheet().layout().kind().label(), GroupVerdict.of(group));
  }

  /** The spot and every hole, with room around them, in true millimetres. */
  private static MmRect span(GroupResult group, Group shots) {
    double radius = Math.max(group.shaftDiameter(), 1);
    List<MmPoint> places = new ArrayList<>(List.of(new MmPoint(0, 0)));
    for (MmPoint shot : shots.shots()) {
      places.add(shot.plus(new MmVector(-radius, -radius)));
      places.add(shot.plus(new MmVector(radius, radius)));
    }
    return PairPicture.around(places);
  }
}
