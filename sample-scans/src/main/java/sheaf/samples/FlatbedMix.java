package sheaf.samples;

import java.util.List;
import java.util.SplittableRandom;
import sheaf.core.reading.PrintScale;
import sheaf.samples.scan.FlatbedScan;
import sheaf.samples.scan.ScanFile;
import sheaf.samples.scene.Behind;
import sheaf.samples.scene.Scene;

/**
 * Flatbed scans of pair sheets in mixed settings: a seed gives a scan.
 *
 * <p>Three in ten sheets each lie on backing, black and white, one on grey; 150 to 600 dpi; half
 * are grey scans; every orientation, up to 5 degrees askew; JPEG quality 60 to 95; one in five does
 * not state its resolution.
 */
public final class FlatbedMix {

  /** What lies behind, each as often as it is named. */
  static final List<Behind> BEHIND =
      List.of(
          Behind.BACKING,
          Behind.BACKING,
          Behind.BACKING,
          Behind.BLACK,
          Behind.BLACK,
          Behind.BLACK,
          Behind.WHITE,
          Behind.WHITE,
          Behind.WHITE,
          Behind.GREY);

  private static final int[] DPI = {150, 200, 240, 300, 300, 300, 400, 600};

  /** Pixels a millimetre of the page before it is scanned. */
  static final double COARSE = 300 / 25.4;

  static final double FINE = 600 / 25.4;

  private FlatbedMix() {}

  /** Makes the scan of a seed. */
  public static Sample make(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Scene scene = new SceneMix(random).scene(BEHIND);
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

  /** A scanner and how the sheet lies in it. */
  static FlatbedScan scanner(PrintScale scale, SplittableRandom random) {
    return new FlatbedScan(
        DPI[random.nextInt(DPI.length)],
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
