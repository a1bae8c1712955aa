package sheaf.samples.digit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import sheaf.scanner.digit.DigitPicture;

/** Pictures to learn from, one after another without end: digits mostly, and what is none. */
final class Lessons {

  /** Share of what is no digit. */
  private static final double RUBBISH = 0.2;

  /** Share of digits in the printed face. */
  private static final double PRINTED = 0.04;

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

    /** The same, moved by so many pixels. */
    Lesson moved(int right, int down) {
      return new Lesson(picture.moved(right, down), label);
    }
  }

  /** So many new ones, the same in every run. */
  List<Lesson> some(int count, long number) {
    List<Lesson> some = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      some.add(lesson(number * count + i));
    }
    return some;
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
