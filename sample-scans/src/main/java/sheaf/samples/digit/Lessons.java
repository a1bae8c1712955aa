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
  private static final double RUBBISH = 0.2;

  /** Share of digits in the printed face. */
  private static final double PRINTED = 0.04;

  /** How far pictures are turned, in radians, slanted, and made larger; one standard deviation. */
  private static final double TURN = 0.07;

  private static final double SLANT = 0.07;
  private static final double GROWTH = 0.05;

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

    /** The same, a little turned, slanted, larger or smaller. */
    Lesson bent(RandomGenerator random) {
      double middle = (DigitPicture.SIDE - 1) / 2.0;
      AffineTransform bend = new AffineTransform();
      bend.translate(middle + random.nextDouble(-1, 1), middle + random.nextDouble(-1, 1));
      bend.rotate(random.nextGaussian() * TURN);
      bend.shear(random.nextGaussian() * SLANT, 0);
      bend.scale(1 + random.nextGaussian() * GROWTH, 1 + random.nextGaussian() * GROWTH);
      bend.translate(-middle, -middle);
      PenMark mark = new PenMark(DigitPicture.SIDE, DigitPicture.SIDE, picture.dark());
      float[] dark = new float[picture.dark().length];
      double[] at = new double[2];
      for (int i = 0; i < dark.length; i++) {
        at[0] = i % DigitPicture.SIDE;
        at[1] = i / DigitPicture.SIDE;
        bend.transform(at, 0, at, 0, 1);
        dark[i] = mark.at(at[0], at[1]);
      }
      return new Lesson(new DigitPicture(dark), label);
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
