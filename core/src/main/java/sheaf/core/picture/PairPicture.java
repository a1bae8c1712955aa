package sheaf.core.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sheaf.core.group.Ellipse;
import sheaf.core.group.Group;
import sheaf.core.group.Offset;
import sheaf.core.layout.UnitSystem;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;
import sheaf.core.page.MmVector;
import sheaf.core.result.PairResult;
import sheaf.core.result.Verdict;

/**
 * A pair sheet as a picture: every hole in its true size and place from the aim dot, both centres,
 * the way from one to the other, and the region of that way.
 */
public final class PairPicture {

  /** Room around what must be seen, in true millimetres. */
  private static final double ROOM = 4;

  /** A region that spans more than this many times what the holes span is cut off. */
  private static final double LARGEST_REGION = 2.2;

  /** Shorter ways between the centres, in millimetres in the picture, need no arrow. */
  private static final double SHORTEST_ARROW = 2.5;

  static final double FRAME_WIDTH = 0.3;
  private static final double AIM_ARM = 4;

  private final PairResult pair;
  private final PictureScale scale;
  private final List<Shape> shapes = new ArrayList<>();

  private PairPicture(PairResult pair, PictureScale scale) {
    this.pair = pair;
    this.scale = scale;
  }

  /** The picture of a pair sheet on which at least one hole was found, in a frame. */
  public static Picture of(PairResult pair, MmRect frame) {
    PictureScale scale = PictureScale.fit(span(pair), frame);
    PairPicture inside = new PairPicture(pair, scale);
    inside.shots();
    List<Shape> shapes = new ArrayList<>();
    shapes.add(new Shape.Inside(frame, inside.shapes));
    shapes.add(new Shape.Outline(frame, FRAME_WIDTH));
    UnitSystem units = pair.sheet().layout().units();
    shapes.addAll(ScaleBar.fit(units, scale.perMm(), frame.width()).in(frame));
    return new Picture(frame, words(pair), shapes);
  }

  private static String words(PairResult pair) {
    return "The pair sheet as it was shot: %d field points and %d broadheads around the aim. %s"
        .formatted(shots(pair.field()).size(), shots(pair.broadhead()).size(), Verdict.of(pair));
  }

  private void shots() {
    shapes.addAll(Signs.aim(scale.inPicture(new MmPoint(0, 0)), AIM_ARM));
    double radius = Math.max(pair.shaftDiameter() / 2 * scale.perMm(), Signs.SMALLEST_HOLE);
    for (MmPoint shot : shots(pair.field())) {
      shapes.addAll(Signs.fieldHole(scale.inPicture(shot), radius));
    }
    for (MmPoint shot : shots(pair.broadhead())) {
      shapes.addAll(Signs.broadheadHole(scale.inPicture(shot), radius));
    }
    pair.offset().ifPresent(this::compared);
  }

  private void compared(Offset offset) {
    MmPoint field = pair.field().orElseThrow().centre();
    if (offset.region().isPresent()) {
      Ellipse region = offset.region().get();
      MmPoint centre = scale.inPicture(field.plus(region.centre()));
      double perMm = scale.perMm();
      shapes.addAll(
          Signs.region(
              centre, region.semiMajor() * perMm, region.semiMinor() * perMm, region.angle()));
    }
    MmPoint from = scale.inPicture(field);
    MmPoint to = scale.inPicture(field.plus(offset.shift()));
    if (from.distanceTo(to) >= SHORTEST_ARROW) {
      shapes.addAll(Signs.arrow(from, to));
    }
    shapes.addAll(Signs.fieldCentre(from));
    shapes.addAll(Signs.broadheadCentre(to));
  }

  private static List<MmPoint> shots(Optional<Group> group) {
    return group.map(Group::shots).orElse(List.of());
  }

  /** What the picture must show, in true millimetres from the dot. */
  private static MmRect span(PairResult pair) {
    MmRect holes = holes(pair);
    if (!regionFits(pair)) {
      return holes;
    }
    double reach = pair.offset().flatMap(Offset::region).orElseThrow().semiMajor();
    MmPoint centre = pair.broadhead().orElseThrow().centre();
    return around(
        List.of(
            new MmPoint(holes.x(), holes.y()),
            new MmPoint(holes.right(), holes.bottom()),
            centre.plus(new MmVector(-reach, -reach)),
            centre.plus(new MmVector(reach, reach))));
  }

  /** The dot and every hole, with room around them. */
  private static MmRect holes(PairResult pair) {
    List<MmPoint> places = new ArrayList<>();
    places.add(new MmPoint(0, 0));
    double radius = Math.max(pair.shaftDiameter(), 1);
    Stream.concat(shots(pair.field()).stream(), shots(pair.broadhead()).stream())
        .forEach(
            shot -> {
              places.add(shot.plus(new MmVector(-radius, -radius)));
              places.add(shot.plus(new MmVector(radius, radius)));
            });
    return around(places);
  }

  /** Whether the region, if there is one, is small enough to be shown whole. */
  public static boolean regionFits(PairResult pair) {
    MmRect holes = holes(pair);
    double largest = LARGEST_REGION * Math.max(holes.width(), holes.height());
    return pair.offset()
        .flatMap(Offset::region)
        .filter(r -> 2 * r.semiMajor() <= largest)
        .isPresent();
  }

  /** The places with room around them. */
  static MmRect around(List<MmPoint> places) {
    double left = places.stream().mapToDouble(MmPoint::x).min().orElseThrow();
    double right = places.stream().mapToDouble(MmPoint::x).max().orElseThrow();
    double top = places.stream().mapToDouble(MmPoint::y).min().orElseThrow();
    double bottom = places.stream().mapToDouble(MmPoint::y).max().orElseThrow();
    return new MmRect(left, top, right - left, bottom - top).grow(ROOM);
  }
}
