package sheaf.core.reading;

import java.util.Optional;
import java.util.OptionalDouble;
import sheaf.core.measure.Unit;

/**
 * What one field of a sheet said.
 *
 * @param key the field's name in JSON
 * @param state whether it is sure
 * @param text what was ticked or written; empty for a blank and for what only a person can read
 * @param value the text as a number, where it is one
 * @param unit of the value, where it has one
 * @param confidence 0 to 1
 * @param teller who says so
 */
public record FieldReading(
    String key,
    State state,
    String text,
    OptionalDouble value,
    Optional<Unit> unit,
    double confidence,
    Teller teller) {

  /** What the machine read. */
  public FieldReading(
      String key,
      State state,
      String text,
      OptionalDouble value,
      Optional<Unit> unit,
      double confidence) {
    this(key, state, text, value, unit, confidence, Teller.MACHINE);
  }

  /** Who says what a field holds. */
  public enum Teller {
    /** It was read by the machine. */
    MACHINE,
    /** A person looked at what is written. */
    LOOKED,
    /** A person typed it in. */
    TYPED
  }

  /** How sure a field is. */
  public enum State {
    /** Filled in and sure. */
    READ,
    /** Filled in, but a person must look. */
    CHECK,
    /** Left empty: not measured, never a zero. */
    BLANK
  }

  /** The text with its unit, {@code 29 6/16 in}. */
  public String words() {
    return text + unit.map(u -> " " + u.symbol()).orElse("");
  }

  /** Whether the field surely says exactly this. */
  public boolean says(String answer) {
    return state == State.READ && text.equals(answer);
  }
}
