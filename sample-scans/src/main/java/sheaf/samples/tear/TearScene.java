package sheaf.samples.tear;

import java.util.List;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmVector;
import sheaf.samples.hole.TornHole;
import sheaf.samples.scene.Backdrop;
import sheaf.samples.scene.Fasteners;
import sheaf.samples.scene.Page;
import sheaf.samples.scene.Scene;
import sheaf.samples.scene.TearShot;
import sheaf.samples.scene.Truth;
import sheaf.samples.scene.Writing;

/**
 * A tear sheet and everything that is done to it before it is scanned.
 *
 * @param sheet paper, print, ticks and decoys; nothing is shot at it
 * @param tears in the order in which they are shot
 * @param notes written in places of their own
 * @param dots where a pen rested
 * @param staples that held it
 * @param lines that a pen drew before the sheet was shot
 */
public record TearScene(
    Scene sheet,
    List<TearShot> tears,
    List<Note> notes,
    List<MmPoint> dots,
    List<MmPoint> staples,
    List<Line> lines) {

  /** Vanes end so far from the shaft's axis, in true millimetres. */
  private static final double LOWEST_VANE = 8.5;

  private static final double HIGHEST_VANE = 15;

  /** Shorter than this, the point's own hole hides the furrow. */
  private static final double NO_FURROW = 0.5;

  /** How reading it should end: a person must look at each tear, and at a sheet without any. */
  private static final String EXPECTED = "check";

  /** Copies the lists. */
  public TearScene {
    tears = List.copyOf(tears);
    notes = List.copyOf(notes);
    dots = List.copyOf(dots);
    staples = List.copyOf(staples);
    lines = List.copyOf(lines);
  }

  /**
   * Words in a place of their own.
   *
   * @param height of a letter in millimetres
   */
  public record Note(MmPoint start, String word, double height) {}

  /** A pen's line. */
  public record Line(MmPoint from, MmPoint to) {}

  /** Prints, writes on and shoots the sheet, at so many pixels a millimetre. */
  public Scene.Ready make(double pixelsPerMm) {
    Scene.Ready ready = sheet.make(pixelsPerMm);
    SplittableRandom random = new SplittableRandom(sheet.seed() + 1);
    Writing writing = new Writing(ready.page(), random.split());
    notes.forEach(note -> writing.note(note.start(), note.word(), note.height()));
    dots.forEach(writing::dot);
    staples.forEach(at -> Fasteners.staple(ready.page(), at, random));
    lines.forEach(line -> writing.line(line.from(), line.to()));
    SplittableRandom archer = random.split();
    double light = archer.nextDouble(2 * Math.PI);
    double reach = archer.nextDouble(LOWEST_VANE, HIGHEST_VANE);
    for (TearShot tear : tears) {
      tear(ready.page(), ready.backdrop(), tear, reach, light, archer.split());
    }
    return ready;
  }

  private void tear(
      Page page,
      Backdrop backdrop,
      TearShot tear,
      double reach,
      double light,
      RandomGenerator random) {
    double radius = sheet.shaft() / 2;
    double scale = sheet.scale().mean();
    MmVector way = tear.tail().minus(tear.point()).times(scale);
    if (way.length() > 0) {
      TornHole point = TornHole.fieldPoint(radius, random);
      page.shoot(point, tear.point(), scale, backdrop, light, random);
    }
    TornHole tail = TornHole.broadhead(radius, tear.vanes(), 2 * reach, random);
    page.shoot(tail, tear.tail(), scale, backdrop, light, random);
    if (way.length() > NO_FURROW) {
      Furrow furrow = Furrow.draw(Math.atan2(way.dy(), way.dx()), way.length(), radius, random);
      page.tear(
          (perMm, right, down) -> FurrowPainter.paint(furrow, perMm, right, down, light, random),
          tear.point(),
          scale,
          backdrop);
    }
  }

  /** The same on a sheet that is pinned to a board. */
  public TearScene pinned() {
    return new TearScene(sheet.with(sheet.decoys().pinned()), tears, notes, dots, staples, lines);
  }

  /**
   * What is known of the sheet once there is a picture of it.
   *
   * @param dpi of a scan, 0 for a photo
   */
  public Truth truth(int dpi, boolean colour, boolean statesDpi) {
    return sheet.truth(List.of(), dpi, colour, statesDpi, EXPECTED).with(tears);
  }
}
