package sheaf.samples.digit;

import java.awt.geom.AffineTransform;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import java.util.stream.IntStream;
import sheaf.scanner.digit.DigitPicture;

/** Pictures to learn from: digits mostly, and what is none. */
final class Lessons {

  /** Share of what is no digit. */
  private static final double RUBBISH = 0.15;

  /** Share of digits in the printed face. */
  private static final double PRINTED = 0.04;

  /** How far pictures are turned, in radians, slanted, and made larger; one standard deviation. */
  private static final double TURN = 0.08;

  private static final double SLANT = 0.1;
  private static final double GROWTH = 0.06;

  /** How far places of a picture are drawn from where they were, in pixels; one deviation. */
  private static final double PULL = 0.7;

  private final DigitSet digits;
  private final long seed;

  Lessons(DigitSet digits, long seed) {
    this.digits = digits;
    this.seed = seed;
  }

  /**
   * A picture and what it shows.
   *
   * @param label the digit, or 10 for none
   */
  record Lesson(DigitPicture picture, int label) {

    /** The same, moved by up to a pixel each way. */
    Lesson moved(RandomGenerator random) {
      return new Lesson(picture.moved(random.nextInt(-1, 2), random.nextInt(-1, 2)), label);
    }

    /** The same, a little turned, slanted, larger or smaller, and drawn here and there. */
    Lesson bent(RandomGenerator random) {
      int side = DigitPicture.SIDE;
      AffineTransform bend = bend(random);
      Pull right = new Pull(random);
      Pull down = new Pull(random);
      float[] dark = new float[picture.dark().length];
      int places = side * side;
      double[] at = new double[2];
      for (int i = 0; i < places; i++) {
        at[0] = i % side + right.at(i % side, i / side);
        at[1] = i / side + down.at(i % side, i / side);
        bend.transform(at, 0, at, 0, 1);
        for (int layer = 0; layer < dark.length; layer += places) {
          dark[layer + i] = sample(layer, at[0], at[1]);
        }
      }
      return new Lesson(new DigitPicture(dark), label);
    }

    private static AffineTransform bend(RandomGenerator random) {
      double middle = (DigitPicture.SIDE - 1) / 2.0;
      AffineTransform bend = new AffineTransform();
      bend.translate(middle + random.nextDouble(-1, 1), middle + random.nextDouble(-1, 1));
      bend.rotate(random.nextGaussian() * TURN);
      bend.shear(random.nextGaussian() * SLANT, 0);
      bend.scale(1 + random.nextGaussian() * GROWTH, 1 + random.nextGaussian() * GROWTH);
      bend.translate(-middle, -middle);
      return bend;
    }

    private float sample(int layer, double x, double y) {
      int side = DigitPicture.SIDE;
      int left = (int) Math.floor(x);
      int top = (int) Math.floor(y);
      if (left < 0 || top < 0 || left >= side - 1 || top >= side - 1) {
        return 0;
      }
      float fx = (float) (x - left);
      float fy = (float) (y - top);
      float[] dark = picture.dark();
      int i = layer + top * side + left;
      return (dark[i] * (1 - fx) + dark[i + 1] * fx) * (1 - fy)
          + (dark[i + side] * (1 - fx) + dark[i + side + 1] * fx) * fy;
    }
  }

  /** How far places are drawn one way, in pixels: at random in a grid, smoothly between. */
  private static final class Pull {

    private static final int KNOTS = 4;

    private final double[] pulls = new double[KNOTS * KNOTS];

    Pull(RandomGenerator random) {
      for (int i = 0; i < pulls.length; i++) {
        pulls[i] = random.nextGaussian() * PULL;
      }
    }

    double at(int x, int y) {
      double step = (DigitPicture.SIDE - 1.0) / (KNOTS - 1);
      int left = Math.min(KNOTS - 2, (int) (x / step));
      int top = Math.min(KNOTS - 2, (int) (y / step));
      double fx = eased(x / step - left);
      double fy = eased(y / step - top);
      int i = top * KNOTS + left;
      return (pulls[i] * (1 - fx) + pulls[i + 1] * fx) * (1 - fy)
          + (pulls[i + KNOTS] * (1 - fx) + pulls[i + KNOTS + 1] * fx) * fy;
    }

    private static double eased(double share) {
      return share * share * (3 - 2 * share);
    }
  }

  /** The first so many, the same in every run. */
  List<Lesson> first(int count) {
    return IntStream.range(0, count).parallel().mapToObj(this::lesson).toList();
  }

  private Lesson lesson(long number) {
    SplittableRandom random = new SplittableRandom(seed + 31 * number);
    while (true) {
      double kind = random.nextDouble();
      int which = (int) (Math.floorMod(number * 7919L, (long) digits.size()));
      int digit = random.nextInt(10);
      PenMark mark =
          kind < RUBBISH
              ? Marks.rubbish(digits, random)
              : kind < RUBBISH + PRINTED
                  ? Marks.printed(digit, random)
                  : Marks.hand(digits.pictures()[which], random);
      int label = kind < RUBBISH ? 10 : kind < RUBBISH + PRINTED ? digit : digits.labels()[which];
      Optional<DigitPicture> seen = BoxPatch.seen(mark, digits, random.nextLong());
      if (seen.isPresent()) {
        return new Lesson(seen.get(), label);
      }
    }
  }
}
