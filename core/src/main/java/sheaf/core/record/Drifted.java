package sheaf.core.record;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import sheaf.core.layout.RestoringOrder;
import sheaf.core.measure.Unit;

/**
 * Something that was not found as it was left a visit before.
 *
 * @param key of the measure
 * @param label what a person calls it
 * @param was as it was left
 * @param is as it was found
 * @param change how much it grew, in the unit that it was left in; negative when it shrank; zero
 *     for a word that is another
 */
public record Drifted(String key, String label, Taken was, Taken is, double change) {

  /**
   * How far a measure may move before it is worth telling.
   *
   * @param value above zero, in {@code unit}
   */
  public record Tolerance(double value, Unit unit) {}

  /** Rounding of converted units must not tell a drift of exactly the tolerance. */
  private static final double ROUNDING = 1e-9;

  /**
   * What moved between two visits, in the order in which to restore it; what has no place in that
   * order comes last, as on the card.
   *
   * @param earlier as the bow was left
   * @param later as it was found
   * @param tolerances by key; a number without one is told whenever it differs
   */
  public static List<Drifted> between(
      Visit earlier, Visit later, Map<String, Tolerance> tolerances) {
    List<Drifted> drifted = new ArrayList<>();
    for (Measure now : later.measures()) {
      Optional<Taken> is = now.found().filter(Taken::isSure);
      Optional<Taken> was = left(earlier, now.key());
      if (is.isPresent() && was.isPresent()) {
        between(now, was.get(), is.get(), Optional.ofNullable(tolerances.get(now.key())))
            .ifPresent(drifted::add);
      }
    }
    drifted.sort(Comparator.comparingInt(one -> RestoringOrder.place(one.key())));
    return drifted;
  }

  /** As it was left; what was found and not written again was left as it was found. */
  private static Optional<Taken> left(Visit visit, String key) {
    return visit.measures().stream()
        .filter(measure -> measure.key().equals(key))
        .findFirst()
        .flatMap(measure -> measure.left().or(measure::found))
        .filter(Taken::isSure);
  }

  private static Optional<Drifted> between(
      Measure measure, Taken was, Taken is, Optional<Tolerance> tolerance) {
    if (was.value().isEmpty() || is.value().isEmpty()) {
      boolean same = was.text().toLowerCase(Locale.ROOT).equals(is.text().toLowerCase(Locale.ROOT));
      return same
          ? Optional.empty()
          : Optional.of(new Drifted(measure.key(), measure.label(), was, is, 0));
    }
    double now =
        was.unit().isPresent()
            ? is.in(was.unit().get()).orElse(Double.NaN)
            : is.value().getAsDouble();
    double change = now - was.value().getAsDouble();
    double most =
        was.unit()
            .flatMap(unit -> tolerance.map(t -> t.unit().convert(t.value(), unit)))
            .orElse(0.0);
    return Math.abs(change) > most + ROUNDING
        ? Optional.of(new Drifted(measure.key(), measure.label(), was, is, change))
        : Optional.empty();
  }
}
