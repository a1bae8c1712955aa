package sheaf.samples.tune;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.SplittableRandom;
import sheaf.core.group.Group;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmVector;
import sheaf.core.tune.Axis;
import sheaf.core.tune.Move;

/**
 * A bow whose broadheads go somewhere else than its field points, and that answers to its rest in a
 * way that nobody is told. Not immutable: it is moved.
 *
 * <p>All numbers are our own assumptions, in millimetres at 20 yd: the offset begins about 60 mm
 * off sideways and 45 mm upright, one 64th of an inch of rest moves it by 8 mm, from 4 to 16 for
 * nine bows in ten, a fifth of it across, and is set to a fifth of a step; arrows scatter by 6 to
 * 12 mm in each direction.
 */
final class MadeBow {

  private static final double SIDEWAYS_MM = 60;
  private static final double UPRIGHT_MM = 45;
  private static final double ANSWER_MM = 8;
  private static final double ANSWER_LOG_DEVIATION = 0.42;
  private static final double ACROSS = 0.2;
  private static final double SETTING_STEPS = 0.2;
  private static final double STEADIEST_MM = 6;
  private static final double WILDEST_MM = 12;

  private final Random random;
  private final double scatterMm;
  private final MmVector sideways;
  private final MmVector upright;
  private MmVector offset;

  /**
   * A bow.
   *
   * @param seed of all that is random about it
   * @param sign 1 when moving the rest toward the field points brings the heads together, -1 when
   *     it drives them apart
   */
  MadeBow(long seed, int sign) {
    // Random's first draws from neighbouring seeds are alike, so the seed is scattered before.
    this.random = new Random(new SplittableRandom(seed).nextLong());
    this.offset =
        new MmVector(SIDEWAYS_MM * random.nextGaussian(), UPRIGHT_MM * random.nextGaussian());
    this.scatterMm = STEADIEST_MM + (WILDEST_MM - STEADIEST_MM) * random.nextDouble();
    double right = sign * answer();
    double up = sign * answer();
    this.sideways = new MmVector(right, ACROSS * right * random.nextGaussian());
    this.upright = new MmVector(ACROSS * up * random.nextGaussian(), -up);
  }

  private double answer() {
    return ANSWER_MM * Math.exp(ANSWER_LOG_DEVIATION * random.nextGaussian());
  }

  /** Moves the rest; only about as far as was meant. */
  void move(Move move) {
    double steps = move.steps() + SETTING_STEPS * random.nextGaussian();
    MmVector answer = move.lever().axis() == Axis.SIDEWAYS ? sideways : upright;
    offset = new MmVector(offset.dx() + steps * answer.dx(), offset.dy() + steps * answer.dy());
  }

  /** Field points around the spot. */
  Group fieldPoints(int arrows) {
    return shots(arrows, new MmVector(0, 0));
  }

  /** Broadheads around where they go. */
  Group broadheads(int arrows) {
    return shots(arrows, offset);
  }

  private Group shots(int arrows, MmVector middle) {
    List<MmPoint> shots = new ArrayList<>();
    for (int i = 0; i < arrows; i++) {
      shots.add(
          new MmPoint(
              middle.dx() + scatterMm * random.nextGaussian(),
              middle.dy() + scatterMm * random.nextGaussian()));
    }
    return new Group(shots);
  }

  /** How far apart the heads truly are, in millimetres. */
  double apart() {
    return offset.length();
  }
}
