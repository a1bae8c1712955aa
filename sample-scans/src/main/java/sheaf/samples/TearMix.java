package sheaf.samples;

import java.util.List;
import java.util.SplittableRandom;
import sheaf.samples.scan.FlatbedScan;
import sheaf.samples.scan.PhonePhoto;
import sheaf.samples.scan.ScanFile;
import sheaf.samples.scene.Behind;
import sheaf.samples.scene.Scene;
import sheaf.samples.tear.TearScene;
import sheaf.samples.tear.TearSceneMix;

/**
 * Pictures of tear sheets in mixed settings: a seed gives a picture. Scanners, phones and what lies
 * behind the sheet are those of {@link FlatbedMix} and {@link PhotoMix}.
 */
public final class TearMix {

  private static final List<Behind> BEHIND =
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

  private static final int ZONES = 4;

  /** Finer pictures look the same once they are flattened, and take long to make. */
  private static final List<Integer> COARSE_DPI = List.of(150, 200, 240, 300, 300);

  private TearMix() {}

  /** Makes the flatbed scan of a seed. */
  public static Sample make(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    return scan(new TearSceneMix(random).scene(BEHIND), FlatbedMix.USUAL_DPI, random);
  }

  /** Makes the flatbed scan of a seed for learning: most zones are shot at, and none is fine. */
  public static Sample toLearnFrom(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    return scan(new TearSceneMix(random).scene(BEHIND, ZONES), COARSE_DPI, random);
  }

  private static Sample scan(TearScene scene, List<Integer> dpis, SplittableRandom random) {
    FlatbedScan scanner = FlatbedMix.scanner(dpis, scene.sheet().scale(), random);
    boolean states = random.nextDouble() < 0.8;
    int quality = random.nextInt(60, 96);
    Scene.Ready ready = scene.make(scanner.dpi() > 300 ? FlatbedMix.FINE : FlatbedMix.COARSE);
    byte[] file =
        ScanFile.jpeg(
            scanner.scan(ready.page(), ready.backdrop()), quality, states ? scanner.dpi() : 0);
    return new Sample(file, scene.truth(scanner.dpi(), scanner.colour(), states));
  }

  /** Makes the phone photo of a seed. */
  public static Sample photo(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    TearScene drawn = new TearSceneMix(random).scene(PhotoMix.BEHIND);
    Behind behind = drawn.sheet().behind();
    boolean board = behind == Behind.FOAM || behind == Behind.WOOD;
    TearScene scene = board ? drawn.pinned() : drawn;
    PhonePhoto camera = PhotoMix.camera(scene.sheet(), board, random);
    int quality = PhotoMix.quality(random);
    Scene.Ready ready = scene.make(PhotoMix.FINE);
    byte[] file =
        ScanFile.photo(camera.take(ready.page(), ready.backdrop()), quality, camera.orientation());
    return new Sample(file, scene.truth(0, true, false));
  }
}
