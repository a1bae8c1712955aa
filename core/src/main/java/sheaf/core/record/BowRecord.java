package sheaf.core.record;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import sheaf.core.measure.Unit;

/**
 * All that is known of a bow.
 *
 * <p>It holds no secret: the key behind the customer's link is not part of it.
 *
 * @param bow which bow
 * @param visits at least one, the earliest first, each with a job of its own
 */
public record BowRecord(Bow bow, List<Visit> visits) {

  /** The most characters of a name or of a bow's words. */
  public static final int LONGEST_NAME = 120;

  /** The most characters of what a measure, a part or a trait is called. */
  public static final int LONGEST_LABEL = 80;

  /** The most characters of an answer. */
  public static final int LONGEST_ANSWER = 60;

  /** The most characters of one note. */
  public static final int LONGEST_NOTE = 2000;

  /** Copies the list; throws when there is no visit, or two of one job. */
  public BowRecord {
    visits = List.copyOf(visits);
    if (visits.isEmpty()) {
      throw new IllegalArgumentException("a record needs at least one visit");
    }
    if (visits.stream().map(Visit::job).distinct().count() < visits.size()) {
      throw new IllegalArgumentException("two visits of a record have one job");
    }
  }

  /** The visit that the bow was last left by. */
  public Visit last() {
    return visits.get(visits.size() - 1);
  }

  /**
   * What was surely measured of the bow or its arrow: as it was last left, else as it was found.
   *
   * @param key of a measure without its column, or of a trait: {@code peak_weight}
   * @param unit that the number is wanted in
   */
  public OptionalDouble measured(String key, Unit unit) {
    return last().measures().stream()
        .filter(measure -> measure.key().equals(key))
        .flatMap(measure -> Stream.of(measure.left(), measure.found()))
        .flatMap(Optional::stream)
        .filter(Taken::isSure)
        .findFirst()
        .or(() -> trait(key))
        .map(taken -> taken.in(unit))
        .orElse(OptionalDouble.empty());
  }

  /** What was surely said of a trait. */
  public Optional<Taken> trait(String key) {
    return bow.traits().stream()
        .filter(trait -> trait.key().equals(key))
        .map(Trait::answer)
        .filter(Taken::isSure)
        .findFirst();
  }

  /** A name without stray blanks and control characters; blank counts as empty. */
  static Optional<String> name(Optional<String> typed) {
    return typed
        .map(text -> text.replaceAll("[\\s\\p{Cntrl}]+", " ").strip())
        .filter(text -> !text.isEmpty())
        .map(text -> checked(text, LONGEST_NAME));
  }

  /** A note without stray blanks and control characters. */
  static String note(String typed) {
    return checked(typed.replaceAll("[\\s\\p{Cntrl}]+", " ").strip(), LONGEST_NOTE);
  }

  /** Throws when a text is empty or too long. */
  static String checked(String text, int longest) {
    if (text.isEmpty() || text.length() > longest) {
      throw new IllegalArgumentException(
          "a text must have 1 to " + longest + " characters, not " + text.length());
    }
    return text;
  }
}
