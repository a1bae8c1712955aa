package sheaf.samples.digit;

import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import org.opencv.core.CvType;
import org.opencv.core.Mat;
import org.opencv.core.MatOfByte;
import org.opencv.core.MatOfInt;
import org.opencv.core.Size;
import org.opencv.imgcodecs.Imgcodecs;
import org.opencv.imgproc.Imgproc;
import sheaf.core.page.MmRect;
import sheaf.scanner.digit.DigitPicture;
import sheaf.scanner.opencv.Mats;
import sheaf.scanner.sheet.FlatSheet;

/**
 * A small piece of a flattened sheet with one digit box in its middle, made far faster than a whole
 * sheet is printed and scanned.
 */
final class BoxPatch {

  /** A digit box and the room around it, in millimetres. */
  private static final MmRect BOX = new MmRect(2, 2, 6.5, 8.5);

  private static final int WIDTH = (int) (10.5 * FlatSheet.PIXELS_PER_MM);
  private static final int HEIGHT = (int) (12.5 * FlatSheet.PIXELS_PER_MM);

  /** Width of a printed line, in millimetres. */
  private static final double LINE = 0.3;

  private static final List<String> WORDS = List.of(".", ".", "/", "lb", "gr", "mm", "t");

  /** Normal deviates, drawn once: noise is most of what random numbers are needed for. */
  private static final float[] NOISE = noise();

  private final RandomGenerator random;
  private final float[] light = new float[WIDTH * HEIGHT];

  private BoxPatch(RandomGenerator random) {
    this.random = random;
  }

  private static float[] noise() {
    SplittableRandom random = new SplittableRandom(1);
    float[] noise = new float[1 << 18];
    for (int i = 0; i < noise.length; i++) {
      noise[i] = (float) random.nextGaussian();
    }
    return noise;
  }

  /**
   * What a reader gets to see of a mark in a box; empty when it takes the box for blank.
   *
   * @param neighbours what may stand in the boxes beside it
   */
  static Optional<DigitPicture> seen(PenMark mark, DigitSet neighbours, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    BoxPatch patch = new BoxPatch(random);
    patch.print();
    double ink =
        random.nextInt(5) == 0 ? random.nextDouble(0.3, 0.55) : random.nextDouble(0.5, 0.9);
    patch.write(Hand.in(BOX, mark, random), ink);
    if (random.nextInt(3) == 0) {
      patch.word();
    }
    for (int side = -1; side <= 1; side += 2) {
      if (random.nextDouble() < 0.6) {
        byte[] other = neighbours.pictures()[random.nextInt(neighbours.size())];
        MmRect beside = new MmRect(BOX.x() + side * BOX.width(), BOX.y(), 6.5, 8.5);
        patch.write(Hand.in(beside, Marks.hand(other, random), random), ink);
      }
    }
    try (Mats mats = new Mats()) {
      Mat grey = patch.scan(mats);
      return DigitPicture.of(new FlatSheet(grey, Optional.empty(), 10), BOX);
    }
  }

  /** A point or the beginning of a unit, as printed on either side of a box. */
  private void word() {
    double size = random.nextDouble(0.5, 3.2);
    double x = random.nextBoolean() ? BOX.x() - 0.4 - size : BOX.right() + 0.5;
    double y = BOX.centre().y() + 1.6 - size;
    String text = WORDS.get(random.nextInt(WORDS.size()));
    write(Hand.over(new MmRect(x, y, size, size), Marks.words(text)), 0.85);
  }

  /** Paper, its shading, and the lines of this box, those beside it and those between rows. */
  private void print() {
    double paper = random.nextDouble(200, 252);
    double tilt = random.nextGaussian() * 8;
    double print = random.nextDouble(0.55, 0.75);
    double dx = random.nextGaussian() * 0.08;
    double dy = random.nextGaussian() * 0.08;
    boolean left = random.nextInt(3) > 0;
    boolean right = random.nextInt(3) > 0;
    double apart = random.nextInt(4) > 0 ? random.nextDouble(0.7, 1.7) : HEIGHT;
    for (int y = 0; y < HEIGHT; y++) {
      for (int x = 0; x < WIDTH; x++) {
        double mmX = (x + 0.5) / FlatSheet.PIXELS_PER_MM - dx;
        double mmY = (y + 0.5) / FlatSheet.PIXELS_PER_MM - dy;
        double across = Math.min(off(mmX, BOX.x()), off(mmX, BOX.right()));
        double down = Math.min(off(mmY, BOX.y()), off(mmY, BOX.bottom()));
        boolean high = mmY > BOX.y() - LINE / 2 && mmY < BOX.bottom() + LINE / 2;
        boolean wide =
            (left || mmX > BOX.x() - LINE / 2) && (right || mmX < BOX.right() + LINE / 2);
        double beyond = Math.max(BOX.y() - mmY, mmY - BOX.bottom());
        double rows = Math.min(off(beyond, apart), off(beyond, 2 * apart));
        double away = Math.min(rows, Math.min(high ? across : LINE, wide ? down : LINE));
        double covered = Math.max(0, Math.min(1, 0.5 + (LINE / 2 - away) * 10));
        double tone = paper + tilt * (x - WIDTH / 2.0) / WIDTH;
        light[y * WIDTH + x] = (float) (tone * (1 - covered * (1 - print)));
      }
    }
  }

  private static double off(double at, double line) {
    return Math.abs(at - line);
  }

  private void write(Hand hand, double ink) {
    boolean pencil = random.nextInt(4) == 0;
    for (int y = 0; y < HEIGHT; y++) {
      for (int x = 0; x < WIDTH; x++) {
        double cover =
            hand.at((x + 0.5) / FlatSheet.PIXELS_PER_MM, (y + 0.5) / FlatSheet.PIXELS_PER_MM);
        if (cover > 0) {
          double grain = pencil ? random.nextDouble(0.6, 1) : random.nextDouble(0.9, 1);
          light[y * WIDTH + x] *= (float) (1 - cover * ink * grain);
        }
      }
    }
  }

  private Mat scan(Mats mats) {
    for (int i = random.nextInt(6) == 0 ? random.nextInt(1, 8) : 0; i > 0; i--) {
      speck();
    }
    Mat sharp = mats.own(new Mat(HEIGHT, WIDTH, CvType.CV_32F));
    sharp.put(0, 0, light);
    Mat blurred = mats.mat();
    double blur = 0.45 + random.nextDouble() * random.nextDouble() * 1.5;
    Imgproc.GaussianBlur(sharp, blurred, new Size(0, 0), blur);
    blurred.get(0, 0, light);
    double noise = 0.8 + 4 * random.nextDouble() * random.nextDouble();
    byte[] seen = new byte[light.length];
    int grain = random.nextInt(NOISE.length - seen.length);
    for (int i = 0; i < seen.length; i++) {
      double tone = light[i] + noise * NOISE[grain + i];
      seen[i] = (byte) (int) Math.max(0, Math.min(255, Math.round(tone)));
    }
    Mat grey = mats.own(new Mat(HEIGHT, WIDTH, CvType.CV_8U));
    grey.put(0, 0, seen);
    return random.nextInt(3) > 0 ? compressed(grey, mats) : grey;
  }

  private void speck() {
    int x = random.nextInt(WIDTH - 4);
    int y = random.nextInt(HEIGHT - 4);
    int size = random.nextInt(1, 4);
    for (int i = 0; i < size * size; i++) {
      light[(y + i / size) * WIDTH + x + i % size] *= (float) random.nextDouble(0.4, 0.9);
    }
  }

  private Mat compressed(Mat grey, Mats mats) {
    MatOfByte file = mats.own(new MatOfByte());
    MatOfInt quality =
        mats.own(new MatOfInt(Imgcodecs.IMWRITE_JPEG_QUALITY, random.nextInt(60, 96)));
    Imgcodecs.imencode(".jpg", grey, file, quality);
    return mats.own(Imgcodecs.imdecode(file, Imgcodecs.IMREAD_GRAYSCALE));
  }
}
