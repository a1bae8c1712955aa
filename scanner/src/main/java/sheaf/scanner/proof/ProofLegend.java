package sheaf.scanner.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import sheaf.core.layout.Field;
import sheaf.core.layout.Layout;
import sheaf.core.reading.FieldReading;
import sheaf.core.reading.Head;
import sheaf.core.reading.Hole;
import sheaf.core.reading.PageReading;
import sheaf.core.reading.Reason;
import sheaf.core.reading.ReasonCode;

/**
 * The words above and below a proof.
 *
 * @param ending how the reading ended
 * @param heading what the sheet is and what was found
 * @param entries the doubts, and what is worth saying
 * @param doubts the same where they have a place on the sheet
 * @param key what the drawn lines mean
 */
record ProofLegend(
    String ending,
    List<String> heading,
    List<Entry> entries,
    List<ProofMark.Doubt> doubts,
    List<String> key) {

  /** From so many doubts of one sort on, they share a number and a line. */
  private static final int MANY = 4;

  /**
   * One line of the legend.
   *
   * @param number that stands on the sheet too; empty for what has no place on it
   * @param text in words
   */
  record Entry(OptionalInt number, String text) {}

  static ProofLegend of(Layout layout, PageReading reading) {
    List<Entry> entries = new ArrayList<>();
    List<ProofMark.Doubt> doubts = new ArrayList<>();
    List<Reason> left = new ArrayList<>(reading.reasons());
    while (!left.isEmpty()) {
      List<Reason> same = together(left);
      left.removeAll(same);
      boolean placed = same.get(0).place().isPresent();
      OptionalInt number =
          placed
              ? OptionalInt.of(
                  doubts.stream().mapToInt(ProofMark.Doubt::number).max().orElse(0) + 1)
              : OptionalInt.empty();
      entries.add(new Entry(number, text(same)));
      same.stream()
          .flatMap(reason -> reason.place().stream())
          .forEach(place -> doubts.add(new ProofMark.Doubt(place, number.getAsInt())));
    }
    String ending = reading.state().label().toUpperCase(Locale.ROOT);
    return new ProofLegend(ending, heading(layout, reading), entries, doubts, key(layout, reading));
  }

  /** The first reason, with all of its sort when they are many. */
  private static List<Reason> together(List<Reason> left) {
    Reason first = left.get(0);
    ReasonCode code = first.code();
    List<Reason> same =
        left.stream()
            .filter(reason -> reason.code() == code && reason.place().isPresent())
            .toList();
    return first.place().isPresent() && same.size() >= MANY ? same : List.of(first);
  }

  private static String text(List<Reason> same) {
    String first = same.get(0).message();
    return same.size() == 1
        ? first
        : first + " The same at %d more places.".formatted(same.size() - 1);
  }

  private static List<String> heading(Layout layout, PageReading reading) {
    List<String> heading = new ArrayList<>();
    Optional<String> name =
        reading
            .sheet()
            .map(
                code ->
                    "%s, sheet %d of job %s"
                        .formatted(layout.title(), code.number(), code.job().spoken()));
    heading.add(name.orElse(layout.title()));
    List<String> found = new ArrayList<>();
    if (layout.target().isPresent()) {
      found.add(holes(reading.holes()));
    }
    long ticks = read(layout, reading, Field.Choice.class);
    long numbers = read(layout, reading, Field.Number.class);
    if (ticks > 0 || numbers == 0) {
      found.add(counted(ticks, "ticked box", "ticked boxes"));
    }
    if (numbers > 0) {
      found.add(counted(numbers, "number", "numbers"));
    }
    heading.add("Found: " + String.join(", ", found));
    return heading;
  }

  /** How many fields of a sort surely say something. */
  private static long read(Layout layout, PageReading reading, Class<? extends Field> sort) {
    return layout.fields().stream()
        .filter(sort::isInstance)
        .flatMap(field -> reading.field(field.key()).stream())
        .filter(said -> said.state() == FieldReading.State.READ && !said.text().isEmpty())
        .count();
  }

  private static String counted(long count, String one, String many) {
    return count == 1 ? "1 " + one : (count == 0 ? "no " : count + " ") + many;
  }

  private static String holes(List<Hole> holes) {
    long field = holes.stream().filter(hole -> hole.head() == Head.FIELD).count();
    long broadhead = holes.stream().filter(hole -> hole.head() == Head.BROADHEAD).count();
    String words =
        counted(field, "field point", "field points")
            + ", "
            + counted(broadhead, "broadhead", "broadheads");
    long unknown = holes.size() - field - broadhead;
    return unknown == 0 ? words : words + ", %d of unknown head".formatted(unknown);
  }

  private static List<String> key(Layout layout, PageReading reading) {
    List<String> key = new ArrayList<>();
    if (!reading.holes().isEmpty()) {
      key.add("Ring and cross: the shaft and its middle. Lines: slits.");
      if (!layout.dots().isEmpty()) {
        key.add("Dotted: to the dot that was aimed at.");
      }
    }
    if (read(layout, reading, Field.Choice.class) > 0) {
      key.add("Frame: this box was read as ticked.");
    }
    if (reading.reasons().stream().anyMatch(reason -> reason.place().isPresent())) {
      key.add("Dashed, with a number: please look.");
    }
    return key;
  }
}
