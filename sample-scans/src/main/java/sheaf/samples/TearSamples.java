package sheaf.samples;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import sheaf.core.job.SheetCode;
import sheaf.core.layout.Layout;
import sheaf.core.layout.Layouts;
import sheaf.core.layout.Variant;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmVector;
import sheaf.core.page.Paper;
import sheaf.samples.scan.FlatbedScan;
import sheaf.samples.scan.ScanFile;
import sheaf.samples.scene.Behind;
import sheaf.samples.scene.Scene;
import sheaf.samples.scene.TearShot;
import sheaf.samples.tear.TearScene;

/** Tear sheets: a bow tuned from a long tear to a bullet hole, and a zone that was hit twice. */
final class TearSamples {

  private static final int DPI = 200;
  private static final int QUALITY = 80;
  private static final int VANES = 3;

  private TearSamples() {}

  /** Tail high and left, less so after each change, and at last a bullet hole. */
  static Sample tunedToABulletHole() {
    SheetCode code = Studio.code(20, 2, Variant.FOUR_ZONES, Paper.LETTER);
    Map<String, String> ticks = new TreeMap<>();
    ticks.put("changed_1", "nothing");
    ticks.put("changed_2", "nocking");
    ticks.put("changed_way_2", "down");
    ticks.put("changed_3", "rest");
    ticks.put("changed_way_3", "left");
    ticks.put("changed_4", "rest");
    ticks.put("changed_way_4", "left");
    List<TearShot> tears =
        List.of(
            shot(code, 1, new MmVector(6, 9), new MmVector(-24, -19)),
            shot(code, 2, new MmVector(5, -4), new MmVector(-20, -3)),
            shot(code, 3, new MmVector(8, 10), new MmVector(-8, -2)),
            shot(code, 4, new MmVector(5, 3), new MmVector(0, 0)));
    return scan(code, Behind.BACKING, tears, ticks, 201, true, -0.7);
  }

  /** Two arrows in the second zone: only a person knows which of them counts. */
  static Sample hitTwice() {
    SheetCode code = Studio.code(21, 3, Variant.FOUR_ZONES, Paper.A4);
    Map<String, String> ticks = new TreeMap<>();
    ticks.put("changed_1", "nothing");
    ticks.put("changed_2", "yoke");
    List<TearShot> tears =
        List.of(
            shot(code, 1, new MmVector(-10, 4), new MmVector(17, -8)),
            shot(code, 2, new MmVector(-14, -12), new MmVector(-2, 13)),
            shot(code, 2, new MmVector(12, 6), new MmVector(10, -9)));
    return scan(code, Behind.BLACK, tears, ticks, 202, false, 1.6);
  }

  /**
   * A shot at a zone.
   *
   * @param off from the zone's aim to where the point went in
   * @param way from there to the tail
   */
  private static TearShot shot(SheetCode code, int zone, MmVector off, MmVector way) {
    Layout layout = Layouts.find(code.layout()).orElseThrow();
    MmPoint point = layout.zones().get(zone - 1).rect().centre().plus(off);
    return new TearShot(zone, point, point.plus(way), VANES);
  }

  private static Sample scan(
      SheetCode code,
      Behind behind,
      List<TearShot> tears,
      Map<String, String> ticks,
      long seed,
      boolean colour,
      double skew) {
    Scene sheet = Studio.scene(code, behind, Studio.PLAIN, List.of(), ticks, seed);
    TearScene scene = new TearScene(sheet, tears, List.of(), List.of(), List.of(), List.of());
    FlatbedScan scanner =
        new FlatbedScan(
            DPI, colour, 0, skew, sheet.scale(), 0.5, 1.0, 1.03, 0.0006, 12, sheet.seed());
    Scene.Ready ready = scene.make(Studio.PIXELS_PER_MM);
    byte[] file = ScanFile.jpeg(scanner.scan(ready.page(), ready.backdrop()), QUALITY, DPI);
    return new Sample(file, scene.truth(DPI, colour, true));
  }
}
