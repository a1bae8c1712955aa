package sheaf.forms.card;

import java.awt.Color;
import java.io.IOException;
import java.util.List;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmVector;
import sheaf.forms.draw.Pen;

/**
 * The signs in the picture of a group and in its legend. They differ in shape, so that a grey
 * printer and every eye tell them apart.
 */
final class Symbols {

  /** Radius below which a hole on the card could not be told from a speck, in millimetres. */
  static final double SMALLEST_HOLE = 0.8;

  private static final Color PAPER_GREY = new Color(205, 205, 205);
  private static final Color AIM_GREY = new Color(110, 110, 110);
  private static final double OUTLINE = 0.3;

  /** Slits are drawn this many radii long: shorter than they are, or they would hide the rest. */
  private static final double SLIT = 2.1;

  private static final int SLITS = 3;
  private static final double CENTRE = 1.1;
  private static final double HEAD_LENGTH = 2.6;
  private static final double HEAD_HALF_WIDTH = 1;

  private final Pen pen;

  Symbols(Pen pen) {
    this.pen = pen;
  }

  /** The aim dot: a grey cross with a ring. */
  void aim(MmPoint place, double arm) throws IOException {
    pen.colour(AIM_GREY);
    pen.width(OUTLINE);
    pen.line(place.plus(new MmVector(-arm, 0)), place.plus(new MmVector(arm, 0)));
    pen.line(place.plus(new MmVector(0, -arm)), place.plus(new MmVector(0, arm)));
    pen.ring(place, CENTRE);
  }

  /** A round hole. */
  void fieldHole(MmPoint place, double radius) throws IOException {
    pen.colour(PAPER_GREY);
    pen.disc(place, radius);
    pen.colour(Color.BLACK);
    pen.width(OUTLINE);
    pen.ring(place, radius);
  }

  /** A hole with slits, not filled, so that a round one under it still shows. */
  void broadheadHole(MmPoint place, double radius) throws IOException {
    pen.colour(Color.BLACK);
    pen.width(1.7 * OUTLINE);
    for (int i = 0; i < SLITS; i++) {
      double angle = 2 * Math.PI * i / SLITS - Math.PI / 2;
      MmVector way = new MmVector(Math.cos(angle), Math.sin(angle));
      pen.line(place.plus(way.times(radius)), place.plus(way.times(SLIT * radius)));
    }
    pen.width(OUTLINE);
    pen.ring(place, radius);
  }

  /** The field points' centre: a dot. */
  void fieldCentre(MmPoint place) throws IOException {
    pen.colour(Color.WHITE);
    pen.disc(place, CENTRE + OUTLINE);
    pen.colour(Color.BLACK);
    pen.disc(place, CENTRE);
  }

  /** The broadheads' centre: a diamond. */
  void broadheadCentre(MmPoint place) throws IOException {
    pen.colour(Color.WHITE);
    diamond(place, 1.4 * CENTRE + 1.5 * OUTLINE);
    pen.colour(Color.BLACK);
    diamond(place, 1.4 * CENTRE);
  }

  /** From one centre to the other. */
  void arrow(MmPoint from, MmPoint to) throws IOException {
    MmVector way = to.minus(from);
    MmVector unit = way.times(1 / way.length());
    MmVector side = new MmVector(-unit.dy(), unit.dx());
    // The head ends where the mark of the centre begins.
    MmPoint tip = to.plus(unit.times(-1.4 * CENTRE));
    MmPoint neck = tip.plus(unit.times(-HEAD_LENGTH));
    pen.colour(Color.BLACK);
    pen.width(0.6);
    pen.line(from, neck);
    pen.fillPolygon(
        List.of(
            tip, neck.plus(side.times(HEAD_HALF_WIDTH)), neck.plus(side.times(-HEAD_HALF_WIDTH))));
  }

  /** The region of the broadheads' centre: a dashed ellipse. */
  void region(MmPoint centre, double semiMajor, double semiMinor, double angle) throws IOException {
    pen.colour(Color.BLACK);
    pen.width(0.4);
    pen.dashes(1.6, 1.1);
    pen.ellipse(centre, semiMajor, semiMinor, angle);
    pen.dashes();
  }

  private void diamond(MmPoint place, double reach) throws IOException {
    pen.fillPolygon(
        List.of(
            place.plus(new MmVector(0, -reach)),
            place.plus(new MmVector(reach, 0)),
            place.plus(new MmVector(0, reach)),
            place.plus(new MmVector(-reach, 0))));
  }
}
