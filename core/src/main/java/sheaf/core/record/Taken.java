package sheaf.core.record;

import java.util.Optional;
import java.util.OptionalDouble;
import sheaf.core.measure.Unit;

/**
 * An answer and how it was taken: a number with its unit, or a word.
 *
 * @param text as people write it, without the unit: {@code 29 6/16}; at most {@value
 *     BowRecord#LONGEST_ANSWER} characters, and empty only for {@link How#WRITTEN}
 * @param value the text as a number in {@code unit}, finite, where it is one
 * @param unit of the value, where it has one
 * @param how it came to be known
 */
public record Taken(String text, OptionalDouble value, Optional<Unit> unit, How how) {

  /** Throws when the text is missing, too long or too much, or the value is not finite. */
  public Taken {
    if (text.isEmpty() != (how == How.WRITTEN)) {
      throw new IllegalArgumentException(
          "only what is not read in yet has no text: '" + text + "', " + how.label());
    }
    if (text.length() > BowRecord.LONGEST_ANSWER) {
      throw new IllegalArgumentException(
          "an answer must have at most " + BowRecord.LONGEST_ANSWER + " characters");
    }
    if (!Double.isFinite(value.orElse(0))) {
      throw new IllegalArgumentException("a value must be finite: " + value);
    }
  }

  /** A word, or a number whose unit needs no saying. */
  public static Taken word(String text, How how) {
    return new Taken(text, OptionalDouble.empty(), Optional.empty(), how);
  }

  /** A number with its unit. */
  public static Taken number(String text, double value, Unit unit, How how) {
    return new Taken(text, OptionalDouble.of(value), Optional.of(unit), how);
  }

  /** The text with its unit, {@code 29 6/16 in}; empty when it has not been read in yet. */
  public Optional<String> words() {
    return text.isEmpty()
        ? Optional.empty()
        : Optional.of(text + unit.map(u -> " " + u.symbol()).orElse(""));
  }

  /** Whether nobody needs to look at it before it is counted with. */
  public boolean isSure() {
    return how != How.DOUBTFUL && how != How.WRITTEN;
  }

  /** The number in a unit; empty when it is none, or measures something else. */
  public OptionalDouble in(Unit other) {
    boolean fits =
        value.isPresent() && unit.filter(u -> u.dimension() == other.dimension()).isPresent();
    return fits
        ? OptionalDouble.of(unit.get().convert(value.getAsDouble(), other))
        : OptionalDouble.empty();
  }
}
