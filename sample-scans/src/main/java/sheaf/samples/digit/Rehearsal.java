package sheaf.samples.digit;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import sheaf.samples.digit.Lessons.Lesson;

/** Remembers lessons, and gives old ones again, moved a little: they are dear to make. */
final class Rehearsal {

  /** As many are remembered as a few minutes of learning bring. */
  private static final int REMEMBERED = 60_000;

  private final List<Lesson> remembered = new ArrayList<>();
  private final SplittableRandom random;
  private int oldest;

  Rehearsal(long seed) {
    random = new SplittableRandom(seed);
  }

  /** The new ones, and old ones until there are so many. */
  List<Lesson> fill(List<Lesson> fresh, int count) {
    List<Lesson> batch = new ArrayList<>(fresh);
    fresh.forEach(this::remember);
    while (batch.size() < count) {
      Lesson old = remembered.get(random.nextInt(remembered.size()));
      batch.add(old.moved(random.nextInt(-1, 2), random.nextInt(-1, 2)));
    }
    return batch;
  }

  private void remember(Lesson lesson) {
    if (remembered.size() < REMEMBERED) {
      remembered.add(lesson);
    } else {
      remembered.set(oldest, lesson);
      oldest = (oldest + 1) % REMEMBERED;
    }
  }
}
