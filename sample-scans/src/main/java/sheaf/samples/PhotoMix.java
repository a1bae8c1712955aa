package sheaf.samples;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import sheaf.core.page.Paper;
import sheaf.core.reading.PrintScale;
import sheaf.samples.scan.Bend;
import sheaf.samples.scan.Lens;
import sheaf.samples.scan.Lighting;
import sheaf.samples.scan.PaperShape;
import sheaf.samples.scan.PhonePhoto;
import sheaf.samples.scan.Pose;
import sheaf.samples.scan.ScanFile;
import sheaf.samples.scene.Behind;
import sheaf.samples.scene.Scene;

/**
 * Phone photos of pair sheets in mixed settings: a seed gives a photo.
 *
 * <p>12 megapixels; up to 40 degrees of tilt in any direction; upright, on its side or upside down,
 * a third by the file's stated orientation; lenses bent by up to 1.5 % at the picture's edge; paper
 * curled, arched, wavy, with a lifted or folded corner; uneven light, hard and soft shadows, flash;
 * on the backing, foam, wood, black, white or before the sky; blur by focus and by hand, noise,
 * sharpening, JPEG quality 70 to 95.
 */
public final class PhotoMix {

  /** What is behind, as often as it is in the list. */
  static final List<Behind> BEHIND =
      List.of(
          Behind.BACKING,
          Behind.BACKING,
          Behind.BACKING,
          Behind.BACKING,
          Behind.BACKING,
          Behind.FOAM,
          Behind.FOAM,
          Behind.FOAM,
          Behind.FOAM,
          Behind.WOOD,
          Behind.WOOD,
          Behind.BLACK,
          Behind.BLACK,
          Behind.WHITE,
          Behind.SKY);

  private static final int[] ORIENTATION = {1, 1, 1, 3, 6, 6, 8};

  /** Pixels a millimetre of the page before it is photographed: a little finer than the photo. */
  static final double FINE = 300 / 25.4;

  private static final int LONGER = 4000;
  private static final int SHORTER = 3000;

  private PhotoMix() {}

  /**
   * A photo before it is taken.
   *
   * @param scene in front of the camera
   * @param camera that takes it
   * @param quality of the JPEG file
   */
  public record Shoot(Scene scene, PhonePhoto camera, int quality) {

    /** Takes it. */
    public Sample take() {
      Scene.Ready ready = scene.make(FINE);
      byte[] file =
          ScanFile.photo(
              camera.take(ready.page(), ready.backdrop()), quality, camera.orientation());
      return new Sample(file, scene.truth(ready.shots(), 0, true, false, "read"));
    }
  }

  /** Makes the photo of a seed. */
  public static Sample make(long seed) {
    return draw(seed).take();
  }

  /** What the photo of a seed is to be. */
  public static Shoot draw(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Scene drawn = new SceneMix(random).scene(BEHIND);
    boolean board = drawn.behind() == Behind.FOAM || drawn.behind() == Behind.WOOD;
    Scene scene = board ? drawn.with(drawn.decoys().pinned()) : drawn;
    PhonePhoto camera = camera(scene, board, random);
    return new Shoot(scene, camera, quality(random));
  }

  /** A phone, how it is held, and how the paper is bent: pinned to a board, or lying loose. */
  static PhonePhoto camera(Scene scene, boolean board, SplittableRandom random) {
    Paper size = scene.code().layout().paper();
    PaperShape paper = board ? pinned(size, random) : loose(size, random);
    return camera(scene.scale(), paper, random);
  }

  /** Of the JPEG file. */
  static int quality(SplittableRandom random) {
    return random.nextInt(70, 96);
  }

  /** Held at its corners: arched up to 8 mm off the board, or wavy. */
  private static PaperShape pinned(Paper size, SplittableRandom random) {
    List<Bend> bends = new ArrayList<>();
    boolean across = random.nextBoolean();
    if (random.nextInt(4) > 0) {
      double length = across ? size.width() : size.height();
      bends.add(Bend.arch(across ? 0 : 90, length, random.nextDouble(0.5, 8)));
    }
    if (random.nextInt(3) == 0) {
      bends.add(waves(random));
    }
    return new PaperShape(bends, Optional.empty());
  }

  /** Lying loose: curled about any axis, its edges 0 to 15 mm up; some with a corner up or over. */
  private static PaperShape loose(Paper size, SplittableRandom random) {
    List<Bend> bends = new ArrayList<>();
    double half = size.height() / 2;
    int kind = random.nextInt(6);
    // From a roll or a bag paper curls along its sides more often than askew.
    double askew = random.nextInt(3) == 0 ? random.nextDouble(0, 360) : random.nextGaussian() * 8;
    double direction = 90 * random.nextInt(4) + askew;
    if (kind < 2) {
      double reach = reach(size, direction);
      bends.add(Bend.curl(direction, random.nextGaussian() * 15, reach, random.nextDouble(2, 15)));
    } else if (kind == 2) {
      double reach = reach(size, direction);
      bends.add(
          Bend.lifted(
              direction, random.nextDouble(-0.3, 0.4) * reach, reach, random.nextDouble(3, 15)));
    } else if (kind == 3) {
      boolean across = random.nextBoolean();
      bends.add(
          Bend.arch(
              across ? 0 : 90, across ? size.width() : size.height(), random.nextDouble(2, 12)));
    } else if (kind == 4) {
      bends.add(Bend.curl(direction, 0, half, random.nextDouble(0, 4)));
    }
    if (random.nextInt(5) == 0) {
      bends.add(waves(random));
    }
    if (random.nextInt(6) == 0) {
      bends.add(corner(size, random));
    }
    Optional<PaperShape.DogEar> ear =
        random.nextInt(12) == 0
            ? Optional.of(
                new PaperShape.DogEar(
                    random.nextBoolean(),
                    random.nextBoolean(),
                    random.nextDouble(8, 35),
                    random.nextDouble(8, 35)))
            : Optional.empty();
    return new PaperShape(bends, ear);
  }

  private static double reach(Paper size, double direction) {
    double angle = Math.toRadians(direction);
    return (size.width() * Math.abs(Math.cos(angle)) + size.height() * Math.abs(Math.sin(angle)))
        / 2;
  }

  private static Bend waves(SplittableRandom random) {
    return Bend.waves(
        random.nextDouble(0, 180),
        random.nextDouble(70, 160),
        random.nextDouble(0.2, 1.2),
        random.nextDouble(2 * Math.PI));
  }

  private static Bend corner(Paper size, SplittableRandom random) {
    double diagonal = Math.toDegrees(Math.atan2(size.height(), size.width()));
    double toward = (random.nextBoolean() ? diagonal : -diagonal) + random.nextGaussian() * 8;
    double direction = random.nextBoolean() ? toward : toward + 180;
    double reach = reach(size, direction);
    return Bend.lifted(
        direction, reach - random.nextDouble(40, 90), reach, random.nextDouble(4, 16));
  }

  private static PhonePhoto camera(PrintScale scale, PaperShape paper, SplittableRandom random) {
    int orientation = ORIENTATION[random.nextInt(ORIENTATION.length)];
    boolean sideways = orientation == 6 || orientation == 8 || random.nextInt(4) == 0;
    boolean lying = sideways && orientation != 6 && orientation != 8;
    // Whoever takes a picture turns the phone as the sheet lies; few do not.
    boolean against = random.nextInt(16) == 0;
    double roll =
        (lying != against ? 90 : 0)
            + 180 * random.nextInt(2)
            + (random.nextInt(8) == 0 ? random.nextDouble(-45, 45) : random.nextGaussian() * 6);
    Pose pose =
        new Pose(
            random.nextDouble(0, 40),
            random.nextDouble(0, 360),
            roll,
            random.nextDouble(0.75, 0.97),
            random.nextGaussian() * 5,
            random.nextGaussian() * 5);
    double focal =
        random.nextInt(6) == 0 ? random.nextDouble(1.2, 1.7) : random.nextDouble(0.64, 0.8);
    return new PhonePhoto(
        sideways ? LONGER : SHORTER,
        sideways ? SHORTER : LONGER,
        orientation,
        pose,
        new Lens(focal, random.nextDouble(-0.025, 0.025), random.nextDouble(-0.02, 0.02)),
        paper,
        Lighting.draw(random),
        scale,
        random.nextDouble(0.5, 1.5),
        random.nextDouble(0, 3),
        random.nextDouble(1.5, 5),
        random.nextInt(3) == 0 ? 0 : random.nextDouble(0.2, 0.8),
        random.nextLong());
  }
}
