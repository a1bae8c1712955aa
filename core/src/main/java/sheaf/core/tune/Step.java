package sheaf.core.tune;

import java.math.BigDecimal;
import java.util.Arrays;
import java.util.Optional;
import sheaf.core.layout.UnitSystem;

/**
 * The steps that a change is counted in, as sheets offer them.
 *
 * <p>How much one step moves broadheads from field points at 20 yd before anything is known of the
 * bow is our own assumption, wide on purpose: a sixty-fourth of an inch of rest turns an arrow of
 * 28 in by about 10 mm at 20 yd, and some half of that is common between the heads.
 */
public enum Step {
  /** A sixty-fourth of an inch. */
  SIXTY_FOURTH("1/64 in", 8, 2, 16),
  /** A tenth of a millimetre. */
  TENTH_MM("0.1 mm", 2, 8, 64),
  /** A whole turn of a yoke's leg or a screw. */
  TURN("turns", 25, 0.5, 2),
  /** A click of a rest or plunger. */
  CLICK("clicks", 4, 4, 16);

  private final String label;
  private final double usualMm;
  private final double small;
  private final double most;

  Step(String label, double usualMm, double small, double most) {
    this.label = label;
    this.usualMm = usualMm;
    this.small = small;
    this.most = most;
  }

  /** What lengths are told in on sheets with these units. */
  static Step of(UnitSystem units) {
    return units == UnitSystem.INCHES ? SIXTY_FOURTH : TENTH_MM;
  }

  /** The step that an amount's words end with, such as {@code 2 × 1/64 in}. */
  static Optional<Step> endingIn(String words) {
    return Arrays.stream(values()).filter(step -> words.endsWith(step.label)).findFirst();
  }

  /** As on sheets. */
  public String label() {
    return label;
  }

  /**
   * One standard deviation of what a step is taken to do along its own axis before anything is
   * known, in millimetres at 20 yd; its mean is zero, since even the direction is not known.
   */
  double usualMm() {
    return usualMm;
  }

  /** Steps of the usual small move: 1/32 in, half a turn (common practice, no published source). */
  double small() {
    return small;
  }

  /** The most steps to move at a time: 1/4 in, two turns; our own limit. */
  double most() {
    return most;
  }

  /** The smallest part of a step that can be set: half a turn, else one step. */
  double finest() {
    return this == TURN ? 0.5 : 1;
  }

  /** An amount for people, without its sign: {@code 3/64 in}, {@code 0.8 mm}, {@code 1 turn}. */
  public String words(double amount) {
    double steps = Math.abs(amount);
    return switch (this) {
      case SIXTY_FOURTH -> sixtyFourths(Math.round(steps));
      case TENTH_MM -> number(Math.round(steps) / 10.0) + " mm";
      case TURN -> steps == 0.5 ? "half a turn" : number(steps) + (steps == 1 ? " turn" : " turns");
      case CLICK -> number(steps) + (steps == 1 ? " click" : " clicks");
    };
  }

  private static String sixtyFourths(long parts) {
    long divisor = Math.min(Long.lowestOneBit(Math.max(parts, 1)), 64);
    long top = parts / divisor;
    long bottom = 64 / divisor;
    return bottom == 1 ? top + " in" : top + "/" + bottom + " in";
  }

  private static String number(double value) {
    return BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
  }
}
