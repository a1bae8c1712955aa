package sheaf.desk.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.stream.Stream;
import sheaf.core.answer.FieldPlaces;
import sheaf.core.layout.BowType;
import sheaf.core.layout.Field;
import sheaf.core.layout.Layouts;
import sheaf.core.layout.UnitSystem;
import sheaf.core.layout.Variant;
import sheaf.core.page.Paper;
import sheaf.core.reading.FieldReading;
import sheaf.core.reading.FieldReading.State;
import sheaf.core.reading.FieldReading.Teller;
import sheaf.core.reading.PageReading;
import sheaf.core.result.JobSummary;
import sheaf.desk.outcome.Trouble;
import sheaf.desk.work.SheetsOfJob;

/** The fields of a job that values can be typed in for: those of its cards, and its sheets'. */
final class SettableFields {

  /**
   * One of them.
   *
   * @param name as typed: {@code draw_length_left}, {@code 4:distance}
   * @param sheet whose field it is; empty for one of a card, whichever
   * @param seen what the machine read there, with its unit; empty for nothing
   * @param now what it holds now, and how that is known; empty for nothing
   * @param asked whether the job's bow is asked for it, as far as that is known
   */
  record Settable(
      String name, OptionalInt sheet, Field field, String seen, String now, boolean asked) {}

  private final Map<String, Settable> all = new LinkedHashMap<>();

  SettableFields(SheetsOfJob job) {
    for (int i = 0; i < job.said().sheets().size(); i++) {
      add(job.machine().sheets().get(i), job.said().sheets().get(i));
    }
    Map<String, FieldReading> beside = new LinkedHashMap<>();
    job.said().beside().forEach(said -> beside.put(said.key(), said));
    BowType own = bow(job.said());
    for (BowType bow : BowType.values()) {
      for (Variant side : List.of(bow.front(), bow.back())) {
        Layouts.current(side, Paper.LETTER, UnitSystem.INCHES)
            .fields()
            .forEach(field -> addBlank(field, beside.get(field.key()), bow == own));
      }
    }
  }

  /** What kind of bow the cards are for; a compound where none was read. */
  private static BowType bow(JobSummary job) {
    return job.sheets().stream()
        .map(page -> page.sheet().orElseThrow().layout().variant())
        .flatMap(
            variant ->
                Stream.of(BowType.values())
                    .filter(
                        bow ->
                            List.of(bow.front(), bow.back(), bow.returnFront(), bow.returnBack())
                                .contains(variant)))
        .findFirst()
        .orElse(BowType.COMPOUND);
  }

  private void addBlank(Field field, FieldReading said, boolean asked) {
    String now = said == null ? "" : inWords(said);
    boolean listed = asked || !now.isEmpty();
    Settable blank = new Settable(field.key(), OptionalInt.empty(), field, "", now, listed);
    all.merge(field.key(), blank, (one, other) -> one.asked() ? one : other);
  }

  private void add(PageReading machine, PageReading said) {
    boolean card = said.sheet().orElseThrow().layout().kind().isCard();
    int number = said.sheet().get().number();
    for (Field field : FieldPlaces.fields(said)) {
      String name = card ? field.key() : number + ":" + field.key();
      String seen = machine.field(field.key()).map(SettableFields::words).orElse("");
      String now = said.field(field.key()).map(SettableFields::inWords).orElse("");
      OptionalInt sheet = card ? OptionalInt.empty() : OptionalInt.of(number);
      all.put(name, new Settable(name, sheet, field, seen, now, true));
    }
  }

  private static String words(FieldReading field) {
    return field.text().isEmpty() ? "" : field.words();
  }

  private static String inWords(FieldReading field) {
    if (field.state() == State.BLANK) {
      return "";
    }
    String words = field.text().isEmpty() ? "something" : field.words();
    if (field.teller() != Teller.MACHINE) {
      return words + ", by hand";
    }
    return words + (field.state() == State.CHECK ? ", unsure" : ", read");
  }

  /**
   * The field of a name.
   *
   * @throws Trouble a misuse when there is none, or several
   */
  Settable find(String name) {
    if (all.containsKey(name)) {
      return all.get(name);
    }
    List<String> others = all.keySet().stream().filter(key -> key.endsWith(":" + name)).toList();
    if (others.size() == 1) {
      return all.get(others.get(0));
    }
    throw Trouble.misuse(
        others.isEmpty()
            ? "There is no field '%s'. 'sheaf set JOB' names them all.".formatted(name)
            : "Which sheet's '%s' is meant: %s?".formatted(name, String.join(", ", others)));
  }

  /** A line for each field of the job's sheets, and for each that was typed in. */
  String list() {
    List<String> lines = new ArrayList<>();
    int widest = all.keySet().stream().mapToInt(String::length).max().orElse(0);
    all.values().stream()
        .filter(Settable::asked)
        .forEach(
            one ->
                lines.add(
                    "  " + one.name() + " ".repeat(widest - one.name().length() + 2) + one.now()));
    return String.join("\n", lines.stream().map(String::stripTrailing).toList()) + "\n";
  }
}
