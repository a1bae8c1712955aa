package sheaf.core.tune;

import sheaf.core.page.MmVector;

/** Along which way a part is moved. */
public enum Axis {
  /** To the left or right. */
  SIDEWAYS("right", "left"),
  /** Up or down. */
  UPRIGHT("up", "down");

  private final String plus;
  private final String minus;

  Axis(String plus, String minus) {
    this.plus = plus;
    this.minus = minus;
  }

  /** The word for a move of this sign: right and up are positive. */
  public String word(double amount) {
    return amount < 0 ? minus : plus;
  }

  /** The other one. */
  Axis other() {
    return this == SIDEWAYS ? UPRIGHT : SIDEWAYS;
  }

  /** How far a way on paper leads along this axis, in millimetres: right and up are positive. */
  double along(MmVector way) {
    return this == SIDEWAYS ? way.dx() : -way.dy();
  }
}
