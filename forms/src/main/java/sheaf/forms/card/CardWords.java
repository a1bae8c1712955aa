package sheaf.forms.card;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sheaf.core.layout.Ink.Weight;
import sheaf.core.layout.SheetKind;
import sheaf.core.record.BowRecord;
import sheaf.core.record.Change;
import sheaf.core.record.How;
import sheaf.core.record.Inspected;
import sheaf.core.record.Inspected.Finding;
import sheaf.core.record.Measure;
import sheaf.core.record.Taken;
import sheaf.core.record.Trait;
import sheaf.core.record.Visit;
import sheaf.core.result.PairResult;
import sheaf.forms.draw.Typeface;

/** Sentences of a finished card. */
final class CardWords {

  static final String CAUTIONS =
      "Never dry fire. Use a press and a draw board only as their makers say, never with a damaged "
          + "bow. Flex carbon shafts before each shot and discard damaged ones. Broadheads: use a "
          + "head wrench, keep blades covered, shoot only at a target rated for them with a safe "
          + "backstop. Arrow mass at least what the bow maker asks. The bow maker's limits, range "
          + "rules and local law come first.";

  static final String LEGEND =
      "How taken: read, by the machine from paper; unsure, the same but nobody has looked yet; "
          + "typed or confirmed, by a person; unread, it stands on the paper. An empty line: not "
          + "measured.";

  static final String LACKING =
      Typeface.LACKING
          + " stands for a letter that this card's typeface lacks. The record inside this file has "
          + "it.";

  private static final DateTimeFormatter DATE =
      DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.ENGLISH);

  /** Longer lists of sheets are cut short, so that a card always has room for them. */
  private static final int MOST_NUMBERS = 12;

  private CardWords() {}

  static String date(LocalDate day) {
    return DATE.format(day);
  }

  /** Whose bow, which bow, by whom and when: a line each. */
  static List<String> about(BowRecord record, LocalDate printed) {
    Visit visit = record.last();
    List<String> lines = new ArrayList<>();
    record.bow().words().ifPresent(lines::add);
    visit.customer().ifPresent(name -> lines.add("Bow of " + name));
    visit.technician().ifPresent(name -> lines.add("Work by " + name));
    visit.day().ifPresent(day -> lines.add("Visit " + date(day)));
    lines.add("Printed " + date(printed));
    return lines;
  }

  /** The text with every number kept on one line with its fraction and its unit. */
  static String bound(String text) {
    return text.replaceAll("(?<=\\d) (?=\\d+/\\d|(?:yd|mm?|in)\\b|%)", "\u00a0");
  }

  /** Which sheet a result comes from. */
  static String about(PairResult pair) {
    return "From sheet %d of this job, a pair sheet with %s."
        .formatted(pair.sheet().number(), pair.sheet().layout().variant().label());
  }

  /** An answer with its unit. */
  static String value(Taken taken) {
    return bound(taken.words().orElse("on paper"));
  }

  /** What is to be said of sheets that nobody has confirmed; empty when every sheet is sure. */
  static Optional<String> doubts(Visit visit) {
    List<Integer> doubtful = visit.doubtfulSheets();
    if (doubtful.isEmpty()) {
      return Optional.empty();
    }
    String which = doubtful.size() == 1 ? "Sheet %s has" : "Sheets %s have";
    return Optional.of(
        which.formatted(list(doubtful))
            + " doubts: not confirmed. A person must still look at the scan.");
  }

  /** The parts because of which nobody may shoot. */
  static String notSound(Visit visit) {
    return "Not found sound at the inspection: "
        + visit.notSound().stream().map(Inspected::label).collect(Collectors.joining("; "))
        + ".";
  }

  /** Which sheets the card is made from. */
  static String sheets(Visit visit) {
    List<Integer> cards = numbers(visit, SheetKind.BENCH_CARD);
    List<Integer> pairs = numbers(visit, SheetKind.PAIR);
    List<String> parts = new ArrayList<>();
    if (!cards.isEmpty()) {
      parts.add("bench card no. " + list(cards));
    }
    if (!pairs.isEmpty()) {
      parts.add((pairs.size() == 1 ? "pair sheet no. " : "pair sheets no. ") + list(pairs));
    }
    for (SheetKind kind : List.of(SheetKind.LINE, SheetKind.GROUP, SheetKind.SIGHT_IN)) {
      List<Integer> numbers = numbers(visit, kind);
      if (!numbers.isEmpty()) {
        String sheets = numbers.size() == 1 ? " sheet no. " : " sheets no. ";
        parts.add(kind.label() + sheets + list(numbers));
      }
    }
    return "Sheets read: " + (parts.isEmpty() ? "none" : String.join("; ", parts)) + ".";
  }

  private static List<Integer> numbers(Visit visit, SheetKind kind) {
    return visit.sheets().stream()
        .filter(sheet -> sheet.code().layout().kind() == kind)
        .map(sheet -> sheet.code().number())
        .toList();
  }

  private static String list(List<Integer> numbers) {
    String first =
        numbers.stream().limit(MOST_NUMBERS).map(String::valueOf).collect(Collectors.joining(", "));
    int more = numbers.size() - MOST_NUMBERS;
    return more > 0 ? first + " and " + more + " more" : first;
  }

  /** Hand, release and inspection in a sentence each. */
  static String setUp(BowRecord record) {
    Visit visit = record.last();
    List<String> parts = new ArrayList<>();
    for (Trait trait : record.bow().traits()) {
      String doubt = trait.answer().how() == How.DOUBTFUL ? " (unsure)" : "";
      parts.add(sentence(trait.label()) + ": " + value(trait.answer()) + doubt + ".");
    }
    List<String> sound = inspected(visit, Finding.SOUND);
    List<String> blank = inspected(visit, Finding.BLANK);
    if (blank.size() == visit.inspection().size()) {
      parts.add("Inspection: blank.");
    } else if (sound.size() == visit.inspection().size()) {
      parts.add("Inspection: every part found sound.");
    } else {
      if (!sound.isEmpty()) {
        parts.add("Found sound: " + String.join("; ", sound) + ".");
      }
      if (!blank.isEmpty()) {
        parts.add("Not inspected: " + String.join("; ", blank) + ".");
      }
    }
    return String.join(" ", parts);
  }

  private static String sentence(String label) {
    return label.substring(0, 1).toUpperCase(Locale.ROOT) + label.substring(1);
  }

  private static List<String> inspected(Visit visit, Finding finding) {
    return visit.inspection().stream()
        .filter(part -> part.finding() == finding)
        .map(Inspected::label)
        .toList();
  }

  /** A change as one line of the story. */
  static String change(Change change) {
    return bound(change.words());
  }

  /** Whether the typeface lacks a letter of anything that people wrote. */
  static boolean lacksLetters(BowRecord record, CardHead head, Typeface typeface) {
    Visit visit = record.last();
    Stream<String> names =
        Stream.of(
                head.shop(),
                head.contact(),
                record.bow().words(),
                visit.customer(),
                visit.technician())
            .flatMap(Optional::stream);
    return Stream.of(names, visit.notes().stream(), visit.measures().stream().map(Measure::label))
        .flatMap(texts -> texts)
        .anyMatch(text -> typeface.lacksLettersOf(text, Weight.REGULAR));
  }

  /** The sections that have nothing in them, so that a blank is seen as one; empty without any. */
  static Optional<String> blank(Visit visit) {
    List<String> blank = new ArrayList<>();
    if (visit.tears().isEmpty()) {
      blank.add("tears through paper");
    }
    if (visit.line().isEmpty()) {
      blank.add("line sheet");
    }
    if (visit.changes().isEmpty()) {
      blank.add("changes");
    }
    if (visit.notes().isEmpty() && visit.written().isEmpty()) {
      blank.add("notes");
    }
    return blank.isEmpty()
        ? Optional.empty()
        : Optional.of("Blank, as nothing is on record: " + String.join(", ", blank) + ".");
  }
}
