package sheaf.desk.json;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers with no more digits than they mean. */
final class Round {

  private Round() {}

  /**
   * To 0.01: lengths in millimetres, which is a tenth of what a hole's centre can be known to,
   * pixels for each millimetre, and angles.
   */
  static double hundredth(double number) {
    return to(2, number);
  }

  /** To 0.001: confidences, and lengths in inches. */
  static double thousandth(double number) {
    return to(3, number);
  }

  /** To a hundredth of a per cent: print scales. */
  static double scale(double scale) {
    return to(4, scale);
  }

  /** To 0.000001: written values, so that sixty-fourths of an inch stay exact. */
  static double value(double value) {
    return to(6, value);
  }

  private static double to(int places, double number) {
    return BigDecimal.valueOf(number).setScale(places, RoundingMode.HALF_EVEN).doubleValue();
  }
}
