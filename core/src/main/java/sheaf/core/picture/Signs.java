package sheaf.core.picture;

import java.util.ArrayList;
import java.util.List;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmVector;
import sheaf.core.picture.Shape.Stroke;
import sheaf.core.picture.Shape.Tone;

/**
 * The signs in the picture of a group and in its legend. They differ in shape, so that a grey
 * printer and every eye tell them apart.
 */
public final class Signs {

  /** Radius below which a hole in a picture could not be told from a speck, in millimetres. */
  static final double SMALLEST_HOLE = 0.8;

  private static final double OUTLINE = 0.3;

  /** Slits are drawn this many radii long: shorter than they are, or they would hide the rest. */
  private static final double SLIT = 2.1;

  private static final int SLITS = 3;
  private static final double CENTRE = 1.1;
  private static final double HEAD_LENGTH = 2.6;
  private static final double HEAD_HALF_WIDTH = 1;

  private Signs() {}

  /** The aim dot: a faint cross with a ring. */
  public static List<Shape> aim(MmPoint place, double arm) {
    return List.of(
        line(place.plus(new MmVector(-arm, 0)), place.plus(new MmVector(arm, 0)), Tone.FAINT),
        line(place.plus(new MmVector(0, -arm)), place.plus(new MmVector(0, arm)), Tone.FAINT),
        new Shape.Ring(place, CENTRE, OUTLINE, Tone.FAINT));
  }

  private static Shape line(MmPoint from, MmPoint to, Tone tone) {
    return new Shape.Line(from, to, OUTLINE, tone, Stroke.WHOLE);
  }

  /** A round hole. */
  public static List<Shape> fieldHole(MmPoint place, double radius) {
    return List.of(
        new Shape.Disc(place, radius, Tone.HOLE), new Shape.Ring(place, radius, OUTLINE, Tone.INK));
  }

  /** A hole with slits, not filled, so that a round one under it still shows. */
  public static List<Shape> broadheadHole(MmPoint place, double radius) {
    List<Shape> shapes = new ArrayList<>();
    for (int i = 0; i < SLITS; i++) {
      double angle = 2 * Math.PI * i / SLITS - Math.PI / 2;
      MmVector way = new MmVector(Math.cos(angle), Math.sin(angle));
      shapes.add(
          new Shape.Line(
              place.plus(way.times(radius)),
              place.plus(way.times(SLIT * radius)),
              1.7 * OUTLINE,
              Tone.INK,
              Stroke.WHOLE));
    }
    shapes.add(new Shape.Ring(place, radius, OUTLINE, Tone.INK));
    return shapes;
  }

  /** The field points' centre: a dot. */
  public static List<Shape> fieldCentre(MmPoint place) {
    return List.of(
        new Shape.Disc(place, CENTRE + OUTLINE, Tone.PAPER),
        new Shape.Disc(place, CENTRE, Tone.INK));
  }

  /** The broadheads' centre: a diamond. */
  public static List<Shape> broadheadCentre(MmPoint place) {
    return List.of(
        diamond(place, 1.4 * CENTRE + 1.5 * OUTLINE, Tone.PAPER),
        diamond(place, 1.4 * CENTRE, Tone.INK));
  }

  /** From one centre to the other. */
  static List<Shape> arrow(MmPoint from, MmPoint to) {
    MmVector way = to.minus(from);
    MmVector unit = way.times(1 / way.length());
    MmVector side = new MmVector(-unit.dy(), unit.dx());
    // The head ends where the mark of the centre begins.
    MmPoint tip = to.plus(unit.times(-1.4 * CENTRE));
    MmPoint neck = tip.plus(unit.times(-HEAD_LENGTH));
    return List.of(
        new Shape.Line(from, neck, 0.6, Tone.INK, Stroke.WHOLE),
        new Shape.Polygon(
            List.of(
                tip,
                neck.plus(side.times(HEAD_HALF_WIDTH)),
                neck.plus(side.times(-HEAD_HALF_WIDTH))),
            Tone.INK));
  }

  /** The region of the broadheads' centre: a dashed ellipse. */
  public static List<Shape> region(
      MmPoint centre, double semiMajor, double semiMinor, double angle) {
    return List.of(new Shape.Oval(centre, semiMajor, semiMinor, angle, 0.4, Stroke.DASHED));
  }

  private static Shape diamond(MmPoint place, double reach, Tone tone) {
    return new Shape.Polygon(
        List.of(
            place.plus(new MmVector(0, -reach)),
            place.plus(new MmVector(reach, 0)),
            place.plus(new MmVector(0, reach)),
            place.plus(new MmVector(-reach, 0))),
        tone);
  }
}
