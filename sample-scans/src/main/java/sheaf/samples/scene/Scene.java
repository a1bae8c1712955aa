package sheaf.samples.scene;

import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.TreeMap;
import sheaf.core.job.SheetCode;
import sheaf.core.layout.Field;
import sheaf.core.layout.Layout;
import sheaf.core.layout.Layouts;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;
import sheaf.core.page.MmVector;
import sheaf.core.reading.Head;
import sheaf.core.reading.PrintScale;
import sheaf.samples.hole.TornHole;

/**
 * One sheet and everything that is done to it before it is scanned.
 *
 * @param code of the sheet
 * @param behind what lies behind it
 * @param behindTone how light that is, 1 for as it should be
 * @param look of paper and print
 * @param shaft diameter of the arrows in true millimetres
 * @param arrows that go through it
 * @param ticks field key to the option ticked
 * @param decoys that are no holes
 * @param scale of the print
 * @param seed of everything random
 */
public record Scene(
    SheetCode code,
    Behind behind,
    double behindTone,
    PaperLook look,
    double shaft,
    List<Arrow> arrows,
    Map<String, String> ticks,
    Decoys decoys,
    PrintScale scale,
    long seed) {

  /** Holes nearer than this, in diameters, touch: paper between them gives way. */
  private static final double TOUCHING = 1.65;

  /** From the paper's edges to a pin: outside the register marks. */
  private static final double PIN_INSET = 4.5;

  /** Copies the collections. */
  public Scene {
    arrows = List.copyOf(arrows);
    // In order of the keys, so that the same pen strokes are drawn in every run.
    ticks = new TreeMap<>(ticks);
  }

  /** The same sheet with other decoys. */
  public Scene with(Decoys others) {
    return new Scene(code, behind, behindTone, look, shaft, arrows, ticks, others, scale, seed);
  }

  /**
   * A sheet made ready.
   *
   * @param page as it lies on the table
   * @param backdrop what it lies on
   * @param shots every hole, as shot
   */
  public record Ready(Page page, Backdrop backdrop, List<Shot> shots) {}

  /** Prints, writes on and shoots the sheet, at so many pixels a millimetre. */
  public Ready make(double pixelsPerMm) {
    SplittableRandom random = new SplittableRandom(seed);
    Page page = Page.print(code, pixelsPerMm);
    page.look(look, random.split());
    Layout layout = layout();
    Backdrop backdrop = Backdrop.of(behind, behindTone, code.layout().paper(), random.split());
    write(page, layout, random.split());
    SplittableRandom archer = random.split();
    double light = archer.nextDouble(2 * Math.PI);
    new Wearing(page, backdrop, light, random.split()).wear(decoys.wear(), layout);
    List<Shot> shots = new ArrayList<>();
    for (int i = 0; i < arrows.size(); i++) {
      shots.add(shoot(page, i, backdrop, light, archer));
    }
    return new Ready(page, backdrop, shots);
  }

  private Layout layout() {
    return Layouts.find(code.layout()).orElseThrow();
  }

  private void write(Page page, Layout layout, SplittableRandom random) {
    Writing writing = new Writing(page, random);
    ticks.forEach((key, value) -> writing.tick(box(layout, key, value)));
    MmRect room = layout.target().orElse(layout.page().grow(-30));
    for (int i = 0; i < decoys.notes(); i++) {
      double x = random.nextDouble(room.x() + 5, room.right() - 35);
      double y = random.nextBoolean() ? room.y() + 3 : room.bottom() - 12;
      writing.note(new MmPoint(x, y));
    }
    for (int i = 0; i < decoys.dots(); i++) {
      writing.dot(somewhere(room, random));
    }
    for (int i = 0; i < decoys.staples(); i++) {
      Fasteners.staple(page, somewhere(room, random), random);
    }
    for (int i = 0; i < Math.min(decoys.rings(), arrows.size()); i++) {
      writing.ring(arrows.get(i).axis());
    }
    for (int i = 0; i < Math.min(decoys.strikes(), arrows.size()); i++) {
      writing.strike(arrows.get(arrows.size() - 1 - i).axis());
    }
    pin(page, layout, random);
  }

  private void pin(Page page, Layout layout, SplittableRandom random) {
    Color colour = Fasteners.pinColour(random);
    for (int i = 0; i < decoys.pins(); i++) {
      double x = i % 2 == 0 ? PIN_INSET : layout.page().right() - PIN_INSET;
      double y = i / 2 == 0 ? PIN_INSET : layout.page().bottom() - PIN_INSET;
      Fasteners.pin(page, new MmPoint(x, y), colour);
    }
  }

  private static MmPoint somewhere(MmRect room, SplittableRandom random) {
    return new MmPoint(
        random.nextDouble(room.x(), room.right()), random.nextDouble(room.y(), room.bottom()));
  }

  private static MmRect box(Layout layout, String key, String value) {
    Field.Choice choice = (Field.Choice) layout.field(key);
    return choice.options().stream()
        .filter(option -> option.value().equals(value))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException(key + " has no box " + value))
        .box();
  }

  private Shot shoot(
      Page page, int number, Backdrop backdrop, double light, SplittableRandom random) {
    Arrow arrow = arrows.get(number);
    TornHole hole =
        arrow.head() == Head.BROADHEAD
            ? TornHole.broadhead(shaft / 2, arrow.blades(), arrow.cut(), random)
            : TornHole.fieldPoint(shaft / 2, random);
    MmPoint centroid = hole.openingCentroid();
    Optional<MmVector> neighbour = touching(number);
    if (neighbour.isPresent()) {
      hole = hole.givingWay(neighbour.get(), random);
    }
    page.shoot(hole, arrow.axis(), scale.mean(), backdrop, light, random);
    MmVector toCentroid = new MmVector(centroid.x() / scale.mean(), centroid.y() / scale.mean());
    return new Shot(
        arrow.axis(),
        arrow.head(),
        arrow.blades(),
        arrow.cut(),
        arrow.aim(),
        arrow.zone(),
        arrow.axis().plus(toCentroid));
  }

  /** From an arrow to an earlier one that it touches, in true millimetres. */
  private Optional<MmVector> touching(int number) {
    MmPoint axis = arrows.get(number).axis();
    return arrows.subList(0, number).stream()
        .map(other -> other.axis().minus(axis).times(scale.mean()))
        .filter(apart -> apart.length() < TOUCHING * shaft)
        .findFirst();
  }

  /**
   * What is known of the sheet once there is a picture of it.
   *
   * @param dpi of a scan, 0 for a photo
   */
  public Truth truth(
      List<Shot> shots, int dpi, boolean colour, boolean statesDpi, String expected) {
    return new Truth(
        code.text(),
        behind.label(),
        dpi,
        colour,
        scale.x(),
        scale.y(),
        statesDpi,
        shaft,
        ticks,
        shots,
        Shot.offset(shots, layout(), scale),
        expected);
  }
}
