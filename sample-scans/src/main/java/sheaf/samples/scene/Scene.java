package sheaf.samples.scene;

import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import sheaf.core.job.SheetCode;
import sheaf.core.layout.Aim;
import sheaf.core.layout.Field;
import sheaf.core.layout.Layout;
import sheaf.core.layout.Layouts;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;
import sheaf.core.page.MmVector;
import sheaf.core.reading.Head;
import sheaf.samples.hole.TornHole;

/**
 * One sheet and everything that is done to it before it is scanned.
 *
 * @param code of the sheet
 * @param behind what lies behind it
 * @param behindTone the exact tone of that, with its own unevenness from scene to scene
 * @param tint of the paper
 * @param shaft diameter of the arrows in true millimetres
 * @param arrows that go through it
 * @param ticks field key to the option ticked
 * @param words scribbled into the margins of the target
 * @param dots where a pen rested
 * @param scaleX print scale across
 * @param scaleY print scale down
 * @param seed of everything random
 */
public record Scene(
    SheetCode code,
    Behind behind,
    Color behindTone,
    Color tint,
    double shaft,
    List<Arrow> arrows,
    Map<String, String> ticks,
    int words,
    int dots,
    double scaleX,
    double scaleY,
    long seed) {

  /**
   * An arrow shot at the sheet.
   *
   * @param axis where, on the page as designed
   * @param head on it
   * @param blades of the head
   * @param cut cutting diameter in true millimetres
   * @param aim the dot meant
   */
  public record Arrow(MmPoint axis, Head head, int blades, double cut, Aim aim) {}

  /**
   * A sheet made ready.
   *
   * @param page as it lies on the table
   * @param shots every hole, as shot
   */
  public record Ready(Page page, List<Shot> shots) {}

  /** Prints, writes on and shoots the sheet, at so many pixels a millimetre. */
  public Ready make(double pixelsPerMm) {
    SplittableRandom random = new SplittableRandom(seed);
    Page page = Page.print(code, pixelsPerMm);
    page.age(tint, random.split());
    Layout layout = Layouts.find(code.layout()).orElseThrow();
    write(page, layout, random.split());
    SplittableRandom archer = random.split();
    List<Shot> shots = new ArrayList<>();
    for (Arrow arrow : arrows) {
      shots.add(shoot(page, arrow, archer));
    }
    return new Ready(page, shots);
  }

  private void write(Page page, Layout layout, SplittableRandom random) {
    Writing writing = new Writing(page, random);
    ticks.forEach((key, value) -> writing.tick(box(layout, key, value)));
    MmRect room = layout.target().orElse(layout.page().grow(-30));
    for (int i = 0; i < words; i++) {
      double x = random.nextDouble(room.x() + 5, room.right() - 40);
      double y = random.nextBoolean() ? room.y() + 4 : room.bottom() - 10;
      writing.scribble(new MmPoint(x, y), random.nextInt(2, 6), random.nextDouble(3, 6));
    }
    for (int i = 0; i < dots; i++) {
      writing.dot(
          new MmPoint(
              random.nextDouble(room.x(), room.right()),
              random.nextDouble(room.y(), room.bottom())));
    }
  }

  private static MmRect box(Layout layout, String key, String value) {
    Field.Choice choice = (Field.Choice) layout.field(key);
    return choice.options().stream()
        .filter(option -> option.value().equals(value))
        .findFirst()
        .orElseThrow()
        .box();
  }

  private Shot shoot(Page page, Arrow arrow, SplittableRandom random) {
    TornHole hole =
        arrow.head() == Head.BROADHEAD
            ? TornHole.broadhead(shaft / 2, arrow.blades(), arrow.cut(), random)
            : TornHole.fieldPoint(shaft / 2, random);
    double scale = (scaleX + scaleY) / 2;
    page.shoot(hole, arrow.axis(), scale, behindTone, random);
    MmPoint centroid = hole.openingCentroid();
    MmPoint opening = arrow.axis().plus(new MmVector(centroid.x() / scale, centroid.y() / scale));
    return new Shot(arrow.axis(), arrow.head(), arrow.blades(), arrow.cut(), arrow.aim(), opening);
  }

  /** What is known of the sheet once it is scanned. */
  public Truth truth(
      List<Shot> shots, int dpi, boolean colour, boolean statesDpi, String expected) {
    return new Truth(
        code.text(),
        behind.label(),
        dpi,
        colour,
        scaleX,
        scaleY,
        statesDpi,
        shaft,
        ticks,
        shots,
        expected);
  }
}
