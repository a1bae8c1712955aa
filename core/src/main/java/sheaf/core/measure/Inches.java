package sheaf.core.measure;

import java.util.Locale;

/** Lengths in millimetres, written in inches for people. */
public final class Inches {

  private static final long SIXTEENTHS = 16;

  private Inches() {}

  /**
   * To the nearest sixteenth of an inch, the fraction reduced: {@code 1 3/16 in}, {@code -1/2 in},
   * {@code 0 in}. Halves of a sixteenth go away from zero.
   *
   * @param mm in millimetres, either sign
   * @throws IllegalArgumentException when not finite
   */
  public static String nearestSixteenth(double mm) {
    long sixteenths = Math.round(Math.abs(inches(mm)) * SIXTEENTHS);
    String sign = mm < 0 && sixteenths > 0 ? "-" : "";
    return sign + mixedNumber(sixteenths) + " in";
  }

  /**
   * To the nearest hundredth of an inch: {@code 1.19 in}. Halves of a hundredth go away from zero,
   * and there is no negative zero.
   *
   * @param mm in millimetres, either sign
   * @throws IllegalArgumentException when not finite
   */
  public static String decimal(double mm) {
    long hundredths = Math.round(Math.abs(inches(mm)) * 100);
    String sign = mm < 0 && hundredths > 0 ? "-" : "";
    return String.format(Locale.ROOT, "%s%d.%02d in", sign, hundredths / 100, hundredths % 100);
  }

  private static double inches(double mm) {
    return Unit.MILLIMETRE.convert(mm, Unit.INCH);
  }

  private static String mixedNumber(long sixteenths) {
    long whole = sixteenths / SIXTEENTHS;
    long rest = sixteenths % SIXTEENTHS;
    if (rest == 0) {
      return Long.toString(whole);
    }
    long divisor = Long.lowestOneBit(rest);
    String fraction = rest / divisor + "/" + SIXTEENTHS / divisor;
    return whole == 0 ? fraction : whole + " " + fraction;
  }
}
