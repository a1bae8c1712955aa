package sheaf.samples;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import sheaf.core.reading.PrintScale;
import sheaf.samples.scan.FlatbedScan;
import sheaf.samples.scan.ScanFile;
import sheaf.samples.scene.Behind;
import sheaf.samples.scene.Scene;

/**
 * Flatbed scans of pair sheets: a seed gives a scan.
 *
 * <p>Half are grey scans; every orientation, up to 5 degrees askew; JPEG quality 60 to 95; one in
 * five does not state its resolution.
 */
public final class FlatbedMix {

  /** Pixels a millimetre of the page before it is scanned. */
  private static final double COARSE = 300 / 25.4;

  private static final double FINE = 600 / 25.4;

  private static final List<Integer> USUAL_DPI = List.of(150, 200, 240, 300, 300, 300, 400, 600);

  private final List<Behind> behinds;
  private final List<Integer> dpis;
  private final Scenes scenes;

  private FlatbedMix(List<Behind> behinds, List<Integer> dpis, Scenes scenes) {
    this.behinds = List.copyOf(behinds);
    this.dpis = List.copyOf(dpis);
    this.scenes = scenes;
  }

  /** Draws a sheet, with something of a list behind it, each as likely as another. */
  interface Scenes {
    Scene draw(SplittableRandom random, List<Behind> behinds);
  }

  /** Three in ten sheets each lie on backing, black and white, one on grey; 150 to 600 dpi. */
  public static Sample make(long seed) {
    return make(seed, FlatbedMix::pairs);
  }

  /** The same of other sheets. */
  static Sample make(long seed, Scenes scenes) {
    List<Behind> behinds = new ArrayList<>(List.of(Behind.GREY));
    for (Behind often : List.of(Behind.BACKING, Behind.BLACK, Behind.WHITE)) {
      behinds.addAll(Collections.nCopies(3, often));
    }
    return new FlatbedMix(behinds, USUAL_DPI, scenes).scan(seed);
  }

  private static Scene pairs(SplittableRandom random, List<Behind> behinds) {
    return new SceneMix(random).scene(behinds);
  }

  /** On backing, at 300 dpi. */
  public static Sample onBacking(long seed) {
    return new FlatbedMix(List.of(Behind.BACKING), List.of(300), FlatbedMix::pairs).scan(seed);
  }

  /** With black or white behind, 150 to 600 dpi. */
  public static Sample onBlackOrWhite(long seed) {
    return new FlatbedMix(List.of(Behind.BLACK, Behind.WHITE), USUAL_DPI, FlatbedMix::pairs)
        .scan(seed);
  }

  /** On backing or black, 200 to 600 dpi, with a pair of holes that overlap. */
  public static Sample overlapping(long seed) {
    return new FlatbedMix(
            List.of(Behind.BACKING, Behind.BLACK),
            List.of(200, 240, 300, 400, 600),
            (random, behinds) -> new SceneMix(random).overlapping(behinds))
        .scan(seed);
  }

  private Sample scan(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Scene scene = scenes.draw(random, behinds);
    FlatbedScan scanner = scanner(scene.scale(), random);
    boolean states = random.nextDouble() < 0.8;
    int quality = random.nextInt(60, 96);
    Scene.Ready ready = scene.make(scanner.dpi() > 300 ? FINE : COARSE);
    byte[] file =
        ScanFile.jpeg(
            scanner.scan(ready.page(), ready.backdrop()), quality, states ? scanner.dpi() : 0);
    return new Sample(
        file, scene.truth(ready.shots(), scanner.dpi(), scanner.colour(), states, "read"));
  }

  private FlatbedScan scanner(PrintScale scale, SplittableRandom random) {
    return new FlatbedScan(
        dpis.get(random.nextInt(dpis.size())),
        random.nextBoolean(),
        random.nextInt(4),
        random.nextDouble(-5, 5),
        scale,
        random.nextDouble(0.35, 0.85),
        random.nextDouble(0.8, 3),
        random.nextDouble(0.9, 1.15),
        random.nextDouble(0, 0.001),
        random.nextInt(0, 40),
        random.nextLong());
  }
}
