package sheaf.core.answer;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import sheaf.core.layout.Field;
import sheaf.core.measure.Unit;
import sheaf.core.reading.FieldReading.Teller;
import sheaf.core.reading.UsualRange;

/**
 * A value as a person types it for a field: {@code 29 3/8 in}, {@code 746 mm}, {@code 59.9 lb},
 * {@code right}; nothing for a field in which nothing is written.
 */
public final class TypedValue {

  /** A sign, then a decimal, a fraction, or a whole number with a fraction; then a unit. */
  private static final Pattern NUMBER =
      Pattern.compile(
          "(-?)(?:(\\d{1,6}(?:[.,]\\d{1,6})?)|(?:(\\d{1,6})[ -])?(\\d{1,3})/(\\d{1,3}))\\s*(\\D*)");

  private TypedValue() {}

  /** What is wrong with what was typed. */
  public static final class NotUnderstoodException extends Exception {
    private static final long serialVersionUID = 1L;

    NotUnderstoodException(String sentence) {
      super(sentence);
    }
  }

  /** Which values are taken. */
  public enum Range {
    /** Those that are usual for the measure. */
    USUAL,
    /** Any: a person insists. */
    ANY
  }

  /**
   * Understands what was typed.
   *
   * @param typed the value, with or without its unit
   * @param seen what the machine had read there, with its unit; empty for nothing
   * @throws NotUnderstoodException with a sentence about it, without the field's name
   */
  public static Said.Value of(Field field, String typed, Range range, Teller teller, String seen)
      throws NotUnderstoodException {
    String text = typed.strip().replaceAll("\\s+", " ");
    if (text.isEmpty()) {
      return new Said.Value(
          field.key(), "", OptionalDouble.empty(), Optional.empty(), teller, seen);
    }
    if (field instanceof Field.Choice choice) {
      return choice(choice, text, teller, seen);
    }
    return number((Field.Number) field, text, range, teller, seen);
  }

  private static Said.Value choice(Field.Choice field, String text, Teller teller, String seen)
      throws NotUnderstoodException {
    String bare =
        field
            .unit()
            .map(unit -> text.replaceFirst("(?i) ?" + Pattern.quote(unit.symbol()) + "$", ""))
            .orElse(text);
    String option =
        field.options().stream()
            .map(Field.Option::value)
            .filter(value -> value.equalsIgnoreCase(bare))
            .findFirst()
            .orElseThrow(() -> new NotUnderstoodException(offered(field, text)));
    OptionalDouble value =
        option.matches("\\d+")
            ? OptionalDouble.of(Double.parseDouble(option))
            : OptionalDouble.empty();
    return new Said.Value(field.key(), option, value, field.unit(), teller, seen);
  }

  private static String offered(Field.Choice field, String text) {
    return "is one of %s, not '%s'"
        .formatted(
            String.join(", ", field.options().stream().map(Field.Option::value).toList()), text);
  }

  private static Said.Value number(
      Field.Number field, String text, Range range, Teller teller, String seen)
      throws NotUnderstoodException {
    Matcher parts = NUMBER.matcher(text);
    if (!parts.matches()) {
      throw new NotUnderstoodException(
          "is a number such as " + example(field) + ", not '" + text + "'");
    }
    double value = value(parts, text);
    Optional<Unit> unit = unit(field, parts.group(6).strip());
    if (range == Range.USUAL) {
      checkUsual(field, value, unit, text);
    }
    String bare = text.substring(0, parts.start(6)).strip().replace(',', '.');
    return new Said.Value(field.key(), bare, OptionalDouble.of(value), unit, teller, seen);
  }

  private static double value(Matcher parts, String text) throws NotUnderstoodException {
    int sign = parts.group(1).isEmpty() ? 1 : -1;
    if (parts.group(2) != null) {
      return sign * Double.parseDouble(parts.group(2).replace(',', '.'));
    }
    int whole = parts.group(3) == null ? 0 : Integer.parseInt(parts.group(3));
    int above = Integer.parseInt(parts.group(4));
    int below = Integer.parseInt(parts.group(5));
    if (below == 0 || above >= below) {
      throw new NotUnderstoodException("has no proper fraction in '" + text + "'");
    }
    return sign * (whole + above / (double) below);
  }

  private static Optional<Unit> unit(Field.Number field, String symbol)
      throws NotUnderstoodException {
    if (symbol.isEmpty()) {
      return field.unit();
    }
    if (field.unit().isEmpty()) {
      throw new NotUnderstoodException("takes a number without a unit, not '" + symbol + "'");
    }
    Unit own = field.unit().get();
    return Optional.of(
        Unit.ofSymbol(symbol.toLowerCase(Locale.ROOT))
            .or(() -> Unit.ofSymbol(symbol))
            .filter(unit -> unit.dimension() == own.dimension())
            .orElseThrow(
                () ->
                    new NotUnderstoodException(
                        "is told in " + units(own) + ", not '" + symbol + "'")));
  }

  private static String units(Unit own) {
    StringBuilder units = new StringBuilder(own.symbol());
    for (Unit unit : Unit.values()) {
      if (unit != own && unit.dimension() == own.dimension()) {
        units.append(" or ").append(unit.symbol());
      }
    }
    return units.toString();
  }

  private static void checkUsual(Field.Number field, double value, Optional<Unit> unit, String text)
      throws NotUnderstoodException {
    Optional<UsualRange> usual = UsualRange.of(field.key());
    boolean holds =
        usual.isEmpty() || unit.isEmpty() ? value >= 0 : usual.get().holds(value, unit.get());
    if (!holds) {
      throw new NotUnderstoodException(
          "is usually %s, not '%s': mistyped?"
              .formatted(usual.map(UsualRange::words).orElse("not below zero"), text));
    }
  }

  private static String example(Field.Number field) {
    return field
        .unit()
        .map(unit -> unit == Unit.INCH ? "29 3/8 in" : "59.9 " + unit.symbol())
        .orElse("12");
  }
}
