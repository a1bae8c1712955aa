package sheaf.core.layout;

import java.util.List;
import java.util.Optional;
import sheaf.core.measure.Unit;

/**
 * Something a card asks for.
 *
 * <p>Where a card has a column as found and one as left, the column's name is added to the key.
 */
sealed interface CardRow {

  /** In JSON. */
  String key();

  /** In bold. */
  String label();

  /** What a person calls it where the hint does not stand beside it. */
  default String spoken() {
    return label();
  }

  /** How it is measured or meant; may be empty. */
  String hint();

  /** A number in boxes. */
  record Measure(String key, String label, String hint, Optional<Unit> unit, NumberForm form)
      implements CardRow {}

  /** One of a few short words. */
  record Pick(String key, String label, String spoken, String hint, List<String> words)
      implements CardRow {}

  /**
   * A length in the units of the sheet.
   *
   * @param inchDigits digits before the sixteenths; millimetres take one more, and tenths
   */
  static Measure length(UnitSystem units, String key, String label, String hint, int inchDigits) {
    return units == UnitSystem.INCHES
        ? new Measure(key, label, hint, Optional.of(Unit.INCH), NumberForm.sixteenths(inchDigits))
        : new Measure(
            key,
            label,
            hint,
            Optional.of(Unit.MILLIMETRE),
            NumberForm.decimal(inchDigits + 1, 1, "mm"));
  }

  /** A force in pounds, which the trade uses everywhere. */
  static Measure weight(String key, String label, String hint, int whole, int decimals) {
    NumberForm form = NumberForm.decimal(whole, decimals, "lb");
    return new Measure(key, label, hint, Optional.of(Unit.POUND_FORCE), form);
  }

  /** A mass in grains, which the trade uses everywhere. */
  static Measure grains(String key, String label, String hint) {
    NumberForm form = NumberForm.decimal(3, 0, "gr");
    return new Measure(key, label, hint, Optional.of(Unit.GRAIN), form);
  }

  /** Turns of a screw, to a hundredth. */
  static Measure turns(String key, String label, String hint) {
    NumberForm form = NumberForm.decimal(1, 2, "turns");
    return new Measure(key, label, hint, Optional.of(Unit.TURN), form);
  }

  /** A number without a unit, such as a mark on a scale. */
  static Measure plain(String key, String label, String hint, int whole, int decimals) {
    NumberForm form = NumberForm.decimal(whole, decimals, "");
    return new Measure(key, label, hint, Optional.empty(), form);
  }

  /** What a chronograph shows. */
  static Measure speed(UnitSystem units, String hint) {
    boolean inches = units == UnitSystem.INCHES;
    Unit unit = inches ? Unit.FEET_PER_SECOND : Unit.METRES_PER_SECOND;
    NumberForm form = NumberForm.decimal(inches ? 3 : 2, inches ? 0 : 1, unit.symbol());
    return new Measure("speed", "Speed", hint, Optional.of(unit), form);
  }
}
