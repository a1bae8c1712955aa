package sheaf.core.record;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import sheaf.core.group.Group;
import sheaf.core.group.LineShot;
import sheaf.core.group.Offset;
import sheaf.core.layout.Field;
import sheaf.core.layout.Layout;
import sheaf.core.layout.Layouts;
import sheaf.core.layout.UnitSystem;
import sheaf.core.layout.Variant;
import sheaf.core.layout.Zone;
import sheaf.core.measure.Unit;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmVector;
import sheaf.core.page.Paper;
import sheaf.core.reading.FieldReading;
import sheaf.core.reading.FieldReading.State;
import sheaf.core.reading.PageReading;
import sheaf.core.reading.TearReading;
import sheaf.core.record.Inspected.Finding;
import sheaf.core.result.GroupResult;
import sheaf.core.result.JobSummary;
import sheaf.core.result.LineResult;
import sheaf.core.result.PairResult;

/**
 * A record made from a job's papers: one visit. What the papers do not say is blank, and what is
 * written by hand and not read in yet is told as such.
 */
public final class RecordOfSheets {

  private static final String FOUND = "_found";
  private static final String LEFT = "_left";
  private static final String INSPECT = "inspect_";

  /** The pair sheet's answer when nothing was altered before it. */
  private static final String NOTHING = "nothing";

  private RecordOfSheets() {}

  /**
   * The record of one job.
   *
   * @param job what its papers say
   * @param day of the visit, where it is known
   */
  public static BowRecord of(JobSummary job, Optional<LocalDate> day) {
    Map<Field, FieldReading> fields = benchCards(job);
    Visit visit =
        new Visit(
            job.job(),
            day,
            Optional.empty(),
            Optional.empty(),
            sheets(job),
            inspection(fields),
            measures(fields),
            changes(job),
            tears(job),
            line(job),
            job.pairs().stream().map(RecordOfSheets::rounded).toList(),
            job.groups().stream().map(RecordOfSheets::rounded).toList(),
            List.of(),
            job.sheets().stream().flatMap(page -> page.note().stream()).toList());
    return new BowRecord(new Bow(Optional.empty(), traits(fields)), List.of(visit));
  }

  private static List<SheetRead> sheets(JobSummary job) {
    return job.sheets().stream()
        .map(page -> new SheetRead(page.sheet().orElseThrow(), page.state()))
        .toList();
  }

  /**
   * What each field of the job's bench cards says, in the order of the card; of two cards the later
   * counts where it says anything. Without a card, the fields of one that is all blank.
   */
  private static Map<Field, FieldReading> benchCards(JobSummary job) {
    Map<String, Field> fields = new LinkedHashMap<>();
    Map<String, FieldReading> answers = new LinkedHashMap<>();
    for (PageReading page : job.sheets()) {
      for (Field field : benchCard(page).map(Layout::fields).orElse(List.of())) {
        fields.put(field.key(), field);
        page.field(field.key())
            .filter(answer -> answer.state() != State.BLANK || !answers.containsKey(field.key()))
            .ifPresent(answer -> answers.put(field.key(), answer));
      }
    }
    if (fields.isEmpty()) {
      blankCard(Variant.FRONT, job).forEach(field -> fields.put(field.key(), field));
    }
    addBeside(job, fields, answers);
    Map<Field, FieldReading> all = new LinkedHashMap<>();
    fields.forEach((key, field) -> all.put(field, answers.getOrDefault(key, blank(key))));
    return all;
  }

  /** What was typed in and stands on no card that was read: after all others. */
  private static void addBeside(
      JobSummary job, Map<String, Field> fields, Map<String, FieldReading> answers) {
    for (FieldReading said : job.beside()) {
      Stream.of(Variant.FRONT, Variant.BACK)
          .flatMap(side -> blankCard(side, job).stream())
          .filter(field -> field.key().equals(said.key()))
          .findFirst()
          .ifPresent(
              field -> {
                fields.putIfAbsent(field.key(), field);
                answers.put(field.key(), said);
              });
    }
  }

  private static List<Field> blankCard(Variant side, JobSummary job) {
    return Layouts.current(side, Paper.LETTER, units(job)).fields();
  }

  private static Optional<Layout> benchCard(PageReading page) {
    return page.sheet()
        .filter(sheet -> sheet.layout().kind().isCard())
        .flatMap(sheet -> Layouts.find(sheet.layout()));
  }

  private static UnitSystem units(JobSummary job) {
    return job.sheets().stream()
        .map(page -> page.sheet().orElseThrow().layout().units())
        .findFirst()
        .orElse(UnitSystem.INCHES);
  }

  private static FieldReading blank(String key) {
    return new FieldReading(key, State.BLANK, "", OptionalDouble.empty(), Optional.empty(), 1);
  }

  private static List<Inspected> inspection(Map<Field, FieldReading> fields) {
    List<Inspected> parts = new ArrayList<>();
    fields.forEach(
        (field, answer) -> {
          if (field.key().startsWith(INSPECT)) {
            String part = field.key().substring(INSPECT.length());
            parts.add(new Inspected(part, field.label(), finding(answer)));
          }
        });
    return parts;
  }

  private static Finding finding(FieldReading answer) {
    if (answer.state() == State.BLANK) {
      return Finding.BLANK;
    }
    if (answer.says("sound")) {
      return Finding.SOUND;
    }
    return answer.says("not sound") ? Finding.NOT_SOUND : Finding.DOUBTFUL;
  }

  private static List<Measure> measures(Map<Field, FieldReading> fields) {
    Map<String, Measure> measures = new LinkedHashMap<>();
    fields.forEach(
        (field, answer) -> {
          if (field.key().endsWith(FOUND)) {
            Measure measure = measure(field, FOUND, " as found", measures);
            measures.put(
                measure.key(),
                new Measure(measure.key(), measure.label(), taken(answer), measure.left()));
          } else if (field.key().endsWith(LEFT)) {
            Measure measure = measure(field, LEFT, " as left", measures);
            measures.put(
                measure.key(),
                new Measure(measure.key(), measure.label(), measure.found(), taken(answer)));
          }
        });
    return List.copyOf(measures.values());
  }

  private static Measure measure(
      Field field, String column, String words, Map<String, Measure> known) {
    String key = field.key().substring(0, field.key().length() - column.length());
    return known.getOrDefault(key, Measure.blank(key, field.label().replace(words, "")));
  }

  private static List<Trait> traits(Map<Field, FieldReading> fields) {
    List<Trait> traits = new ArrayList<>();
    fields.forEach(
        (field, answer) -> {
          String key = field.key();
          if (!key.endsWith(FOUND) && !key.endsWith(LEFT) && !key.startsWith(INSPECT)) {
            taken(answer).ifPresent(said -> traits.add(new Trait(key, field.label(), said)));
          }
        });
    return traits;
  }

  /**
   * The tears of a job's tear sheets, in the order in which they were shot; corrected for the print
   * scale where it is known, and told to 0.01 mm.
   */
  public static List<Tear> tears(JobSummary job) {
    List<Tear> tears = new ArrayList<>();
    for (PageReading page : job.sheets()) {
      int sheet = page.sheet().orElseThrow().number();
      for (TearReading tear : page.tears()) {
        MmVector way = tear.pointToTail(page.printScale());
        tears.add(
            new Tear(sheet, tear.zone(), new MmVector(hundredth(way.dx()), hundredth(way.dy()))));
      }
    }
    return tears;
  }

  /** Of a sheet as a whole, and of a tear sheet's zones in the order in which they were shot. */
  private static List<Change> changes(JobSummary job) {
    List<Change> changes = new ArrayList<>();
    for (PageReading page : job.sheets()) {
      change(page, "").ifPresent(changes::add);
      zones(page).forEach(zone -> change(page, "_" + zone.number()).ifPresent(changes::add));
    }
    return changes;
  }

  private static List<Zone> zones(PageReading page) {
    return Layouts.find(page.sheet().orElseThrow().layout()).map(Layout::zones).orElse(List.of());
  }

  /** What the fields whose keys end so say of a change; empty when nothing was changed. */
  private static Optional<Change> change(PageReading page, String ending) {
    int sheet = page.sheet().orElseThrow().number();
    return taken(page, "changed" + ending)
        .filter(what -> !what.text().equals(NOTHING))
        .map(
            what ->
                new Change(sheet, what, taken(page, "changed_way" + ending), amount(page, ending)));
  }

  /** The number with the unit that is ticked beside it, once the number has been read in. */
  private static Optional<Taken> amount(PageReading page, String ending) {
    Optional<String> unit = taken(page, "changed_unit" + ending).flatMap(Taken::words);
    return taken(page, "changed_by" + ending)
        .map(number -> number.text().isEmpty() ? number : inUnits(number, unit));
  }

  /** {@code 2 turns}, but {@code 2 × 1/64 in}. */
  private static Taken inUnits(Taken number, Optional<String> unit) {
    String words = unit.map(u -> (Character.isDigit(u.charAt(0)) ? " × " : " ") + u).orElse("");
    return new Taken(number.text() + words, number.value(), number.unit(), number.how());
  }

  private static Optional<Taken> taken(PageReading page, String key) {
    return page.field(key).flatMap(RecordOfSheets::taken);
  }

  private static Optional<Taken> taken(FieldReading answer) {
    if (answer.state() == State.BLANK) {
      return Optional.empty();
    }
    Optional<Unit> unit = answer.text().isEmpty() ? Optional.empty() : answer.unit();
    return Optional.of(new Taken(answer.text(), answer.value(), unit, how(answer)));
  }

  private static How how(FieldReading answer) {
    if (answer.text().isEmpty()) {
      return How.WRITTEN;
    }
    if (answer.state() == State.CHECK) {
      return How.DOUBTFUL;
    }
    return switch (answer.teller()) {
      case MACHINE -> How.READ;
      case LOOKED -> How.CONFIRMED;
      case TYPED -> How.TYPED;
    };
  }

  /** The last line sheet that tells a drift shows how the bow was left. */
  private static List<LineShot> line(JobSummary job) {
    return job.lines().stream()
        .filter(line -> line.drift().isPresent())
        .reduce((earlier, later) -> later)
        .map(LineResult::shots)
        .orElse(List.of())
        .stream()
        .map(shot -> new LineShot(shot.distance(), hundredth(shot.rightMm())))
        .toList();
  }

  /** A hole's centre is not known better than to 0.1 mm, so 0.01 mm loses nothing. */
  private static PairResult rounded(PairResult pair) {
    Optional<Group> field = pair.field().map(RecordOfSheets::rounded);
    Optional<Group> broadhead = pair.broadhead().map(RecordOfSheets::rounded);
    return new PairResult(
        pair.sheet(),
        pair.state(),
        pair.distance(),
        field,
        broadhead,
        hundredth(pair.shaftDiameter()),
        field.flatMap(f -> broadhead.map(b -> Offset.between(f, b))));
  }

  private static GroupResult rounded(GroupResult group) {
    return new GroupResult(
        group.sheet(),
        group.state(),
        group.distance(),
        group.head(),
        group.shots().map(RecordOfSheets::rounded),
        hundredth(group.shaftDiameter()));
  }

  private static Group rounded(Group group) {
    return new Group(
        group.shots().stream()
            .map(shot -> new MmPoint(hundredth(shot.x()), hundredth(shot.y())))
            .toList());
  }

  private static double hundredth(double mm) {
    return Math.round(mm * 100) / 100.0;
  }
}
