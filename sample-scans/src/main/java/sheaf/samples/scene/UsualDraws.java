package sheaf.samples.scene;

import java.util.random.RandomGenerator;
import sheaf.core.reading.PrintScale;

/** What all mixes of sheets draw alike. */
public final class UsualDraws {

  private UsualDraws() {}

  /** A shaft's diameter in true millimetres: four in five are usual ones, the others 5 to 9.5. */
  public static double shaft(RandomGenerator random) {
    return random.nextDouble() < 0.8 ? random.nextDouble(5.5, 7.5) : random.nextDouble(5, 9.5);
  }

  /** Two in three sheets are printed at their true size. */
  public static PrintScale printScale(RandomGenerator random) {
    if (random.nextInt(3) > 0) {
      return PrintScale.TRUE_SIZE;
    }
    double down = random.nextDouble(0.94, 1.03);
    return new PrintScale(down * (1 + random.nextDouble(-0.004, 0.004)), down);
  }

  /**
   * How light what lies behind is, 1 for as it should be: less light reaches a white lid through a
   * hole than falls on the paper.
   */
  public static double behindTone(Behind behind, RandomGenerator random) {
    return behind == Behind.WHITE ? random.nextDouble(0.87, 0.97) : random.nextDouble(0.93, 1.0);
  }
}
