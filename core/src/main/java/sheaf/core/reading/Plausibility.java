package sheaf.core.reading;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import sheaf.core.measure.Unit;

/**
 * Values that bear each other out: what is measured of one bow hangs together.
 *
 * @param keys of the values, without a column's ending
 * @param units that the rule reckons in
 * @param holds whether values go together, in the keys' order
 * @param chance that a rule holds although one of its values was misread
 * @param says what does not go together, for a person
 */
record Plausibility(
    List<String> keys, List<Unit> units, Predicate<double[]> holds, double chance, String says) {

  /** ATA draw length is the true one and 1 3/4 in (ASTM F1880). */
  private static final double ATA = 1.75;

  /** What gr (ft/s)² must be divided by to give ft lbf: 2 x 7000 x 32.17405 ft/s². */
  private static final double GRAIN_ENERGY = 450_436.68;

  private static final double INCHES_PER_FOOT = 12;

  /** Every rule that a bench card's front and back are held against. */
  static final List<Plausibility> RULES =
      List.of(
          new Plausibility(
              List.of("draw_length", "bow_plus_loop"),
              List.of(Unit.INCH, Unit.INCH),
              v -> within(v[1] - (v[0] - ATA), 0, 1.5),
              0.15,
              "bow plus loop is draw length less 1 3/4 in, and the loop"),
          new Plausibility(
              List.of("peak_weight", "holding_weight"),
              List.of(Unit.POUND_FORCE, Unit.POUND_FORCE),
              v -> within(1 - v[1] / v[0], 0.5, 0.97),
              0.5,
              "holding weight is a tenth to a half of peak weight"),
          new Plausibility(
              List.of("draw_length", "brace_height", "peak_weight", "arrow_mass", "speed"),
              List.of(Unit.INCH, Unit.INCH, Unit.POUND_FORCE, Unit.GRAIN, Unit.FEET_PER_SECOND),
              v -> within(shareOfEnergy(v), 0.3, 1),
              0.5,
              "the arrow's energy must come out of draw weight and draw length"),
          new Plausibility(
              List.of("arrow_length", "balance_point"),
              List.of(Unit.INCH, Unit.INCH),
              v -> within(v[1] / v[0], 0.45, 0.85),
              0.4,
              "an arrow balances before its middle, and inside its length"));

  private static boolean within(double value, double least, double most) {
    return value >= least && value <= most;
  }

  /** The arrow's energy as a share of what peak weight would store over the whole stroke. */
  private static double shareOfEnergy(double[] v) {
    double stroke = (v[0] - ATA - v[1]) / INCHES_PER_FOOT;
    return v[3] * v[4] * v[4] / GRAIN_ENERGY / (v[2] * stroke);
  }

  /**
   * Whether the values of a column go together; empty when one of them is missing.
   *
   * @param column an ending of keys, such as {@code _found}; empty for values asked for once
   */
  Optional<Boolean> holds(Map<String, FieldReading> readings, String column) {
    double[] values = new double[keys.size()];
    for (int i = 0; i < values.length; i++) {
      FieldReading reading = readings.get(keys.get(i) + column);
      if (reading == null || reading.value().isEmpty() || reading.unit().isEmpty()) {
        return Optional.empty();
      }
      values[i] = reading.unit().get().convert(reading.value().getAsDouble(), units.get(i));
    }
    return Optional.of(holds.test(values));
  }

  /** How sure a value is once the rule was found to hold (Bayes). */
  double confirmed(double confidence) {
    return confidence / (confidence + (1 - confidence) * chance);
  }
}
