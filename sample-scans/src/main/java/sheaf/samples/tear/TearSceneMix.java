package sheaf.samples.tear;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import sheaf.core.job.JobId;
import sheaf.core.job.SheetCode;
import sheaf.core.layout.Field;
import sheaf.core.layout.Layout;
import sheaf.core.layout.Layouts;
import sheaf.core.layout.UnitSystem;
import sheaf.core.layout.Variant;
import sheaf.core.layout.Zone;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;
import sheaf.core.page.MmVector;
import sheaf.core.page.Paper;
import sheaf.core.reading.PrintScale;
import sheaf.samples.scene.Behind;
import sheaf.samples.scene.Decoys;
import sheaf.samples.scene.PaperLook;
import sheaf.samples.scene.Scene;
import sheaf.samples.scene.TearShot;
import sheaf.samples.scene.UsualDraws;

/**
 * Tear sheets in mixed settings.
 *
 * <p>Half are letter and half A4; a third were printed off size. One to four zones are shot at,
 * from the first on; one zone in fifty is hit twice. An arrow in seven makes a bullet hole, one in
 * five tears 2 to 6 mm, the others up to 60 mm, in any direction; seven in ten have three vanes. A
 * third of the sheets bear notes, a third pen dots, some staples and a few pen lines; they are
 * punched, stained, patched and torn at a corner as often as other sheets.
 */
public final class TearSceneMix {

  /** How far inside its zone a tear's ends lie, in millimetres. */
  private static final double INSIDE = 3;

  /** The usual distance of a shot from the aim, in millimetres in each direction. */
  private static final double SPREAD = 8;

  /** Long tears fit only where they begin far from the aim, but not farther than this. */
  private static final double WIDEST = 40;

  private static final double LONGEST = 60;

  /** The free room beside a strip's heading, from the zone's left edge and below it. */
  private static final MmVector BESIDE_HEADING = new MmVector(56, 2.2);

  private static final List<String> WORDS = List.of("2x", "1/2", "L3", "R2", "+4", "-3");

  private final SplittableRandom random;

  /** A mix that a random generator draws. */
  public TearSceneMix(SplittableRandom random) {
    this.random = random;
  }

  /** The next sheet, with something of the list behind it, each as likely as another. */
  public TearScene scene(List<Behind> behinds) {
    return scene(behinds, random.nextInt(1, 5));
  }

  /** The same, its zones shot at up to a number. */
  public TearScene scene(List<Behind> behinds, int shots) {
    Layout layout =
        Layouts.current(
            Variant.FOUR_ZONES,
            Paper.values()[random.nextInt(2)],
            UnitSystem.values()[random.nextInt(2)]);
    SheetCode code = new SheetCode(JobId.random(random), random.nextInt(1, 100), layout.id());
    double shaft = UsualDraws.shaft(random);
    PrintScale scale = UsualDraws.printScale(random);
    Behind behind = behinds.get(random.nextInt(behinds.size()));
    List<TearShot> tears = tears(layout, scale, shots);
    Scene sheet =
        new Scene(
            code,
            behind,
            UsualDraws.behindTone(behind, random),
            PaperLook.draw(random),
            shaft,
            List.of(),
            ticks(layout, shots),
            Decoys.worn(random),
            scale,
            random.nextLong());
    return new TearScene(sheet, tears, notes(layout), dots(layout), staples(layout), lines(layout));
  }

  private List<TearShot> tears(Layout layout, PrintScale scale, int shots) {
    int vanes = random.nextInt(10) < 7 ? 3 : 4;
    List<TearShot> tears = new ArrayList<>();
    for (Zone zone : layout.zones().subList(0, shots)) {
      // Sometimes a zone is left out, and the next one is used.
      if (shots > 1 && random.nextInt(12) == 0) {
        continue;
      }
      tears.add(tear(zone, vanes, scale));
      if (random.nextInt(50) == 0) {
        tears.add(tear(zone, vanes, scale));
      }
    }
    return tears;
  }

  private TearShot tear(Zone zone, int vanes, PrintScale scale) {
    double length = length() / scale.mean();
    MmRect room = zone.rect().grow(-INSIDE);
    double spread = SPREAD;
    while (true) {
      double angle = random.nextDouble(2 * Math.PI);
      MmPoint point =
          new MmPoint(
              room.centre().x() + random.nextGaussian() * spread,
              room.centre().y() + random.nextGaussian() * spread);
      MmPoint tail =
          length == 0
              ? point
              : point.plus(new MmVector(length * Math.cos(angle), length * Math.sin(angle)));
      if (room.contains(point) && room.contains(tail)) {
        return new TearShot(zone.number(), point, tail, vanes);
      }
      spread = Math.min(WIDEST, spread * 1.02);
    }
  }

  private double length() {
    double kind = random.nextDouble();
    if (kind < 0.14) {
      return 0;
    }
    if (kind < 0.34) {
      return random.nextDouble(2, 6);
    }
    return kind < 0.8 ? random.nextDouble(6, 30) : random.nextDouble(30, LONGEST);
  }

  private Map<String, String> ticks(Layout layout, int shots) {
    Map<String, String> ticks = new HashMap<>();
    for (int zone = 1; zone <= shots; zone++) {
      String what = any(layout, "changed_" + zone);
      if (zone == 1 || random.nextInt(6) == 0) {
        what = "nothing";
      }
      ticks.put("changed_" + zone, what);
      if (!what.equals("nothing") && random.nextInt(4) > 0) {
        ticks.put("changed_way_" + zone, any(layout, "changed_way_" + zone));
        ticks.put("changed_unit_" + zone, any(layout, "changed_unit_" + zone));
      }
    }
    return ticks;
  }

  private String any(Layout layout, String key) {
    List<Field.Option> options = ((Field.Choice) layout.field(key)).options();
    return options.get(random.nextInt(options.size())).value();
  }

  /** Words beside the headings of the strips, and on a third of the sheets one in a zone. */
  private List<TearScene.Note> notes(Layout layout) {
    List<TearScene.Note> notes = new ArrayList<>();
    for (Zone zone : layout.zones()) {
      if (random.nextInt(4) == 0) {
        MmPoint corner = new MmPoint(zone.rect().x(), zone.rect().bottom());
        notes.add(
            new TearScene.Note(corner.plus(BESIDE_HEADING), word(), random.nextDouble(2.6, 3.6)));
      }
    }
    if (random.nextInt(3) == 0) {
      MmPoint place = somewhere(layout);
      notes.add(new TearScene.Note(place, word(), random.nextDouble(4, 7)));
    }
    return notes;
  }

  private String word() {
    return WORDS.get(random.nextInt(WORDS.size()));
  }

  /** A place in a zone, with room for a word to its right. */
  private MmPoint somewhere(Layout layout) {
    MmRect room = layout.zones().get(random.nextInt(layout.zones().size())).rect();
    return new MmPoint(
        random.nextDouble(room.x() + 2, room.right() - 20),
        random.nextDouble(room.y() + 2, room.bottom() - 9));
  }

  /** On a third of the sheets a pen rested somewhere. */
  private List<MmPoint> dots(Layout layout) {
    List<MmPoint> dots = new ArrayList<>();
    int count = random.nextInt(3) == 0 ? random.nextInt(1, 4) : 0;
    for (int i = 0; i < count; i++) {
      dots.add(somewhere(layout));
    }
    return dots;
  }

  /** One sheet in ten was stapled, in a zone. */
  private List<MmPoint> staples(Layout layout) {
    return random.nextInt(10) == 0 ? List.of(somewhere(layout)) : List.of();
  }

  /** On one sheet in eight a pen crossed a zone. */
  private List<TearScene.Line> lines(Layout layout) {
    if (random.nextInt(8) > 0) {
      return List.of();
    }
    MmRect room = layout.zones().get(random.nextInt(layout.zones().size())).rect().grow(-3);
    return List.of(new TearScene.Line(within(room), within(room)));
  }

  private MmPoint within(MmRect room) {
    return new MmPoint(
        random.nextDouble(room.x(), room.right()), random.nextDouble(room.y(), room.bottom()));
  }
}
