package sheaf.core.reading;

import sheaf.core.page.MmVector;

/**
 * How large a sheet came out of the printer.
 *
 * @param x true millimetres on paper for each millimetre as designed, across; 1 is right
 * @param y the same, down
 */
public record PrintScale(double x, double y) {

  /** A sheet printed at its true size, or one whose size cannot be known. */
  public static final PrintScale TRUE_SIZE = new PrintScale(1, 1);

  /** Both directions taken together. */
  public double mean() {
    return (x + y) / 2;
  }

  /** A move on the page as designed, in true millimetres on paper. */
  public MmVector onPaper(MmVector designed) {
    return new MmVector(designed.dx() * x, designed.dy() * y);
  }
}
