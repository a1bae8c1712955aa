package sheaf.samples;

import java.util.List;
import java.util.SplittableRandom;
import sheaf.core.reading.PrintScale;
import sheaf.samples.scan.Lighting;
import sheaf.samples.scan.PhonePhoto;
import sheaf.samples.scan.Pose;
import sheaf.samples.scan.ScanFile;
import sheaf.samples.scene.Behind;
import sheaf.samples.scene.Scene;

/**
 * Phone photos of pair sheets in mixed settings: a seed gives a photo.
 *
 * <p>8 to 12 megapixels; up to 30 degrees of tilt; upright, on its side or upside down, half of
 * them by the file's stated orientation; on foam, wood, backing or black; uneven light, a third
 * with a shadow's edge; the paper stands off the board by up to 4 mm.
 */
public final class PhotoMix {

  /** What lies behind, each as often as it is named. */
  static final List<Behind> BEHIND =
      List.of(Behind.FOAM, Behind.FOAM, Behind.WOOD, Behind.BACKING, Behind.BACKING, Behind.BLACK);

  private static final int[] ORIENTATION = {1, 1, 1, 3, 6, 6, 8};

  /** Pixels a millimetre of the page before it is photographed: a little finer than the photo. */
  static final double FINE = 300 / 25.4;

  static final int QUALITY = 85;

  private PhotoMix() {}

  /** Makes the photo of a seed. */
  public static Sample make(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Scene drawn = new SceneMix(random).scene(BEHIND);
    boolean board = drawn.behind() == Behind.FOAM || drawn.behind() == Behind.WOOD;
    Scene scene = board ? drawn.with(drawn.decoys().pinned()) : drawn;
    PhonePhoto camera = camera(scene.scale(), random);
    Scene.Ready ready = scene.make(FINE);
    byte[] file =
        ScanFile.photo(camera.take(ready.page(), ready.backdrop()), QUALITY, camera.orientation());
    return new Sample(file, scene.truth(ready.shots(), 0, true, false, "read"));
  }

  /** A phone and how it is held. */
  static PhonePhoto camera(PrintScale scale, SplittableRandom random) {
    int orientation = ORIENTATION[random.nextInt(ORIENTATION.length)];
    boolean twelve = random.nextBoolean();
    int longer = twelve ? 4000 : 3264;
    int shorter = twelve ? 3000 : 2448;
    boolean sideways = orientation == 6 || orientation == 8 || random.nextInt(4) == 0;
    Pose pose =
        new Pose(
            random.nextDouble(0, 30),
            random.nextDouble(0, 360),
            random.nextInt(6) == 0 ? random.nextDouble(0, 360) : random.nextGaussian() * 6,
            random.nextDouble(0.75, 0.97),
            random.nextGaussian() * 5,
            random.nextGaussian() * 5);
    return new PhonePhoto(
        sideways ? longer : shorter,
        sideways ? shorter : longer,
        orientation,
        pose,
        random.nextDouble(-0.03, 0.03),
        random.nextInt(3) == 0 ? 0 : random.nextDouble(0.5, 4),
        Lighting.draw(random),
        scale,
        random.nextDouble(0.5, 1.1),
        random.nextDouble(0, 2),
        random.nextDouble(1.5, 4),
        random.nextLong());
  }
}
