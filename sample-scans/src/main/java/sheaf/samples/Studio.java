package sheaf.samples;

import java.awt.Color;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.random.RandomGenerator;
import java.util.stream.Stream;
import sheaf.core.job.JobId;
import sheaf.core.job.SheetCode;
import sheaf.core.layout.Layout;
import sheaf.core.layout.Layouts;
import sheaf.core.layout.UnitSystem;
import sheaf.core.layout.Variant;
import sheaf.core.page.MmVector;
import sheaf.core.page.Paper;
import sheaf.core.reading.PrintScale;
import sheaf.samples.scan.FlatbedScan;
import sheaf.samples.scan.Lens;
import sheaf.samples.scan.Lighting;
import sheaf.samples.scan.PaperShape;
import sheaf.samples.scan.PhonePhoto;
import sheaf.samples.scan.Pose;
import sheaf.samples.scan.ScanFile;
import sheaf.samples.scene.Arrow;
import sheaf.samples.scene.Behind;
import sheaf.samples.scene.Decoys;
import sheaf.samples.scene.PaperLook;
import sheaf.samples.scene.Scene;

/** What the committed samples are made with. */
final class Studio {

  static final double PIXELS_PER_MM = 300 / 25.4;
  static final PaperLook PLAIN = new PaperLook(new Color(250, 249, 246), 0.6, 0, 22);
  static final PaperLook SMOOTH = new PaperLook(new Color(249, 249, 247), 0.3, 0, 24);
  static final PaperLook CREAM = new PaperLook(new Color(247, 243, 233), 0.9, 0, 30);
  static final PaperLook BENT = new PaperLook(new Color(248, 247, 243), 0.8, 2, 26);

  /** About where an archer's group sits when the sight is set. */
  static final MmVector AT_DOT = new MmVector(2, -1);

  private Studio() {}

  /** A sheet of the job that a number stands for: inches on letter, metric on A4. */
  static SheetCode code(long job, int number, Variant variant, Paper paper) {
    UnitSystem units = paper == Paper.LETTER ? UnitSystem.INCHES : UnitSystem.METRIC;
    JobId id = JobId.random(new SplittableRandom(job));
    return new SheetCode(id, number, Layouts.current(variant, paper, units).id());
  }

  /** Distance and arrows ticked. */
  static Map<String, String> ticks(String distance, int field, int broadhead) {
    Map<String, String> ticks = new TreeMap<>();
    ticks.put("distance", distance);
    ticks.put("arrows_field", String.valueOf(field));
    ticks.put("arrows_broadhead", String.valueOf(broadhead));
    return ticks;
  }

  /** The arrows of some volleys. */
  static List<Arrow> shots(SheetCode code, long seed, Volley... volleys) {
    Layout layout = Layouts.find(code.layout()).orElseThrow();
    RandomGenerator random = new SplittableRandom(seed);
    return Stream.of(volleys).flatMap(v -> v.shoot(layout, random).stream()).toList();
  }

  /** A clean sheet, printed at its true size. */
  static Scene scene(
      SheetCode code,
      Behind behind,
      PaperLook look,
      List<Arrow> arrows,
      Map<String, String> ticks,
      long seed) {
    return new Scene(
        code,
        behind,
        behind == Behind.WHITE ? 0.93 : 0.98,
        look,
        6.2,
        arrows,
        ticks,
        Decoys.NONE,
        PrintScale.TRUE_SIZE,
        seed);
  }

  /**
   * Scans it as JPEG.
   *
   * @param turns quarter turns clockwise
   * @param skew in degrees
   */
  static Sample flatbed(
      Scene scene, int dpi, boolean colour, int turns, double skew, String expected) {
    FlatbedScan scanner =
        new FlatbedScan(
            dpi, colour, turns, skew, scene.scale(), 0.5, 1.0, 1.03, 0.0006, 12, scene.seed());
    Scene.Ready ready = scene.make(PIXELS_PER_MM);
    byte[] file = ScanFile.jpeg(scanner.scan(ready.page(), ready.backdrop()), 80, dpi);
    return new Sample(file, scene.truth(ready.shots(), dpi, colour, true, expected));
  }

  /** Photographs it. */
  static Sample photo(Scene scene, PhonePhoto camera, int quality, String expected) {
    Scene.Ready ready = scene.make(PIXELS_PER_MM);
    byte[] file =
        ScanFile.photo(camera.take(ready.page(), ready.backdrop()), quality, camera.orientation());
    return new Sample(file, scene.truth(ready.shots(), 0, true, false, expected));
  }

  /** A phone of eight megapixels. */
  static PhonePhoto camera(
      int orientation, Pose pose, Lighting lighting, PaperShape paper, long seed) {
    boolean sideways = orientation == 6 || orientation == 8;
    return new PhonePhoto(
        sideways ? 3264 : 2448,
        sideways ? 2448 : 3264,
        orientation,
        pose,
        new Lens(0.75, 0.015, 0),
        paper,
        lighting,
        PrintScale.TRUE_SIZE,
        0.8,
        0.5,
        1.2,
        0.3,
        seed);
  }
}
