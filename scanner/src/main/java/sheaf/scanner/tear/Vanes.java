package sheaf.scanner.tear;

import java.util.List;
import sheaf.core.reading.TearReading;

/** How many vanes an archer's arrows have: all of a sheet's are alike. */
final class Vanes {

  /** Log odds of four vanes over three from which on, either way, the number is told. */
  private static final double CLEAR = 3;

  /** A single tear's say no more than this. */
  private static final double MOST = 3;

  private static final double STAR_WEIGHT = 0.25;

  private Vanes() {}

  /** The number that all tears together tell, or {@link TearReading#UNKNOWN_VANES}. */
  static int of(List<FoundTear> tears) {
    double four = tears.stream().mapToDouble(Vanes::four).sum();
    return Math.abs(four) < CLEAR ? TearReading.UNKNOWN_VANES : four > 0 ? 4 : 3;
  }

  private static double four(FoundTear tear) {
    double odds = tear.choice().fourOdds() - STAR_WEIGHT * tear.star().forThree();
    return Math.max(-MOST, Math.min(MOST, odds));
  }
}
