package sheaf.core.reading;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Map;
import java.util.Optional;
import sheaf.core.measure.Unit;

/**
 * Between what a measure of a bow or arrow lies, so wide that one beyond it is a slip of the pen or
 * was misread. Common practice, no published source, but for axle to axle: the World Archery
 * coach's manual for compound bows names 30 to 48 in as usual.
 *
 * @param least in the unit
 * @param most in the unit
 */
public record UsualRange(double least, double most, Unit unit) {

  private static final Map<String, UsualRange> RANGES =
      Map.ofEntries(
          Map.entry("draw_length", inches(15, 36)),
          Map.entry("bow_plus_loop", inches(13, 36)),
          Map.entry("axle_to_axle", inches(6, 60)),
          Map.entry("brace_height", inches(3, 20)),
          Map.entry("peak_weight", pounds(8, 100)),
          Map.entry("holding_weight", pounds(1, 60)),
          Map.entry("draw_weight", pounds(8, 300)),
          Map.entry("peep_height", inches(1, 15)),
          Map.entry("centre_shot", inches(0, 3)),
          Map.entry("nocking_height", inches(0, 3)),
          Map.entry("loop_length", inches(0, 2)),
          Map.entry("rest_drop", inches(0, 8)),
          Map.entry("tiller_top", inches(1, 20)),
          Map.entry("tiller_bottom", inches(1, 20)),
          Map.entry("power_stroke", inches(5, 25)),
          Map.entry("peep_size", inches(1 / 64.0, 0.75)),
          Map.entry("arrow_length", inches(12, 36)),
          Map.entry("balance_point", inches(6, 36)),
          Map.entry("shaft_diameter", inches(0.13, 0.46)),
          Map.entry("arrow_mass", new UsualRange(120, 999, Unit.GRAIN)),
          Map.entry("point_mass", new UsualRange(20, 400, Unit.GRAIN)),
          Map.entry("insert_mass", new UsualRange(0, 300, Unit.GRAIN)),
          Map.entry("speed", new UsualRange(80, 600, Unit.FEET_PER_SECOND)));

  private static UsualRange inches(double least, double most) {
    return new UsualRange(least, most, Unit.INCH);
  }

  private static UsualRange pounds(double least, double most) {
    return new UsualRange(least, most, Unit.POUND_FORCE);
  }

  /** That of a field; empty for one that may have any value. */
  public static Optional<UsualRange> of(String key) {
    return Optional.ofNullable(RANGES.get(key.replaceFirst("_(found|left)$", "")));
  }

  /** Whether a value in some unit lies in it. */
  public boolean holds(double value, Unit in) {
    double same = in.convert(value, unit);
    return same >= least && same <= most;
  }

  /** Both ends with the unit: {@code 15 to 36 in}. */
  public String words() {
    return plain(least) + " to " + plain(most) + " " + unit.symbol();
  }

  private static String plain(double number) {
    return new BigDecimal(number, new MathContext(3)).stripTrailingZeros().toPlainString();
  }
}
