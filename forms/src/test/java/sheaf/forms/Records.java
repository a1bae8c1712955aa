package sheaf.forms;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import sheaf.core.group.Group;
import sheaf.core.group.LineShot;
import sheaf.core.job.JobId;
import sheaf.core.job.SheetCode;
import sheaf.core.layout.Layouts;
import sheaf.core.layout.UnitSystem;
import sheaf.core.layout.Variant;
import sheaf.core.measure.Distance;
import sheaf.core.measure.Unit;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmVector;
import sheaf.core.page.Paper;
import sheaf.core.reading.Head;
import sheaf.core.reading.NotePicture;
import sheaf.core.reading.ReadingState;
import sheaf.core.record.Bow;
import sheaf.core.record.BowRecord;
import sheaf.core.record.Change;
import sheaf.core.record.How;
import sheaf.core.record.Measure;
import sheaf.core.record.RecordOfSheets;
import sheaf.core.record.Taken;
import sheaf.core.record.Tear;
import sheaf.core.record.Visit;
import sheaf.core.result.GroupResult;
import sheaf.core.result.JobSummary;

/** Records made up for tests, as different as they come. */
final class Records {

  static final LocalDate DAY = LocalDate.of(2026, 3, 9);

  private Records() {}

  /** All of them, by what is special about each. */
  static Map<String, BowRecord> all() {
    Map<String, BowRecord> all = new LinkedHashMap<>();
    sheets(all);
    all.put("full", full());
    all.put("full, metric", metric());
    all.put("long", lengthy());
    all.put("one long word", with(full(), "W".repeat(110), List.of("x".repeat(900))));
    all.put("Cyrillic name", with(full(), "Ж. Щ.", List.of("Тетива новая.")));
    all.put("Greek name", with(full(), "Α. Ω.", List.of("Νέα χορδή.")));
    all.put("Polish name", with(full(), "Ł. Ż.", List.of("Zażółć gęślą jaźń.")));
    all.put("name in a script the typeface lacks", with(full(), "弓 太", List.of("弓弦を交換した。")));
    all.put("name from right to left", with(full(), "א. ב.", List.of("קשת")));
    all.put("signs beyond the first plane", with(full(), "😀 R", List.of("🏹🏹🏹")));
    all.put("combining marks", with(full(), "e\u0301 n\u0303", List.of("a\u0300".repeat(30))));
    all.put("marks of markup", with(full(), "<b> & ]]> \"x\"", List.of("<?xpacket end=\"r\"?>")));
    all.put("several visits", severalVisits());
    all.put("every way of taking", everyWay());
    all.put("round hole", tears(new MmVector(1, 0.5)));
    all.put("two tears", tears(new MmVector(-60, -25), new MmVector(2, -9)));
    all.put("line from one distance", line(20, 20, 20));
    all.put("line on the line", line(5, 5, 10, 20));
    all.put("many distances", line(3, 5, 7, 8, 9, 10, 12, 15, 18, 20, 25, 30, 35, 40));
    all.put("seventy measures", manyMeasures());
    all.put("groups", groups());
    all.put("notes by hand", writtenOn());
    return all;
  }

  private static void sheets(Map<String, BowRecord> all) {
    Jobs metric = Jobs.in(UnitSystem.METRIC).soundBenchCard();
    all.put("nothing read", of(Jobs.in(UnitSystem.INCHES).summary()));
    all.put("bench card only", of(Jobs.in(UnitSystem.INCHES).soundBenchCard().summary()));
    all.put("no broadhead", of(Jobs.in(UnitSystem.INCHES).fieldPointsOnly().summary()));
    all.put("metric", of(metric.pair(Variant.TWO_DOTS, 18, 4, -22, 30, 1).summary()));
    all.put("far off", of(metric.pair(Variant.TWO_DOTS, 50, 2, 90, -80, 3).summary()));
    all.put("distance blank", of(metric.pair(Variant.TWO_DOTS, 0, 3, 9, 3, 1).summary()));
    Jobs one = Jobs.in(UnitSystem.INCHES).pair(Variant.SHARED_DOT, 20, 1, 10, 3, 1);
    all.put("one arrow of each", of(one.summary()));
    Jobs shown = Jobs.in(UnitSystem.INCHES).soundBenchCard("draw_length_left=?");
    all.put("shown", of(shown.pair(Variant.SHARED_DOT, 20, 6, 2, 1, 0.3).summary()));
    Jobs unsound = Jobs.in(UnitSystem.INCHES).benchCard("inspect_limbs=not sound", "hand=left");
    all.put("not sound, and doubts", of(unsound.doubtfulPair().doubtfulPair().summary()));
  }

  static BowRecord of(JobSummary job) {
    return RecordOfSheets.of(job, Optional.of(DAY));
  }

  /** A wide note and a high one, as pictures. */
  private static BowRecord writtenOn() {
    BowRecord record = full();
    List<NotePicture> notes = List.of(note(600, 120), note(90, 700));
    Visit visit = new VisitLike(record.last()).written(notes).visit();
    return new BowRecord(record.bow(), List.of(visit));
  }

  private static NotePicture note(int width, int height) {
    String png = Base64.getEncoder().encodeToString(Logos.png(width, height).file());
    return new NotePicture(width / 6.0, height / 6.0, png);
  }

  private static BowRecord sheetsIn(UnitSystem units) {
    return of(
        Jobs.in(units)
            .soundBenchCard()
            .pair(Variant.TWO_DOTS, 20, 3, 31, 12, 1)
            .pair(Variant.TWO_DOTS, 20, 6, 4, 3, 0.6)
            .summary());
  }

  static BowRecord full() {
    return filled(sheetsIn(UnitSystem.INCHES), "29 6/16", 29.375, Unit.INCH, Unit.YARD);
  }

  private static BowRecord metric() {
    return filled(sheetsIn(UnitSystem.METRIC), "746.1", 746.1, Unit.MILLIMETRE, Unit.METRE);
  }

  private static BowRecord filled(
      BowRecord record, String text, double value, Unit unit, Unit distance) {
    Visit visit = record.last();
    How[] ways = {How.READ, How.CONFIRMED, How.TYPED};
    List<Measure> measures = new ArrayList<>();
    for (Measure measure : visit.measures()) {
      Taken taken = Taken.number(text, value, unit, ways[measures.size() % ways.length]);
      measures.add(
          new Measure(measure.key(), measure.label(), Optional.of(taken), Optional.of(taken)));
    }
    Visit full =
        new VisitLike(visit)
            .customer(Optional.of("R. K."))
            .technician(Optional.of("T. M."))
            .measures(measures)
            .changes(changes(3))
            .tears(
                List.of(
                    new Tear(2, 1, new MmVector(-28, -17)),
                    new Tear(2, 2, new MmVector(-14, -9)),
                    new Tear(2, 3, new MmVector(3, -4))))
            .line(shots(distance, 3, 5, 10, 15, 20, 30))
            .notes(List.of("Peep tied in anew.", "New servings on both cables."))
            .visit();
    return new BowRecord(
        new Bow(Optional.of("32 in compound, black riser"), record.bow().traits()), List.of(full));
  }

  private static List<Change> changes(int count) {
    List<Change> changes = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      changes.add(
          new Change(
              i + 2,
              Taken.word(i % 2 == 0 ? "rest" : "nocking", How.READ),
              Optional.of(Taken.word(i % 2 == 0 ? "left" : "up", How.READ)),
              i % 3 == 2
                  ? Optional.of(Taken.word("", How.WRITTEN))
                  : Optional.of(Taken.word("2 × 1/64 in", How.CONFIRMED))));
    }
    return changes;
  }

  private static List<LineShot> shots(Unit unit, double... distances) {
    List<LineShot> shots = new ArrayList<>();
    for (double distance : distances) {
      shots.add(new LineShot(new Distance(distance, unit), 1.1 * distance - 4 + distance % 3));
    }
    return shots;
  }

  private static BowRecord lengthy() {
    List<String> notes =
        IntStream.range(0, 30)
            .mapToObj(
                i ->
                    "Note " + i + ": " + "the rest was set anew and shot again. ".repeat(i % 4 + 1))
            .toList();
    BowRecord named =
        with(
            full(),
            "The society of archers by the old mill and its guests, care of the secretary",
            notes);
    return new BowRecord(
        named.bow(), List.of(new VisitLike(named.last()).changes(changes(25)).visit()));
  }

  private static BowRecord with(BowRecord record, String customer, List<String> notes) {
    Visit named = new VisitLike(record.last()).customer(Optional.of(customer)).notes(notes).visit();
    return new BowRecord(record.bow(), List.of(named));
  }

  private static BowRecord severalVisits() {
    Visit first = full().last();
    Visit later = sheetsIn(UnitSystem.INCHES).last();
    JobId job = JobId.random(new SplittableRandom(6));
    Visit second =
        new Visit(
            job,
            Optional.of(DAY.plusYears(1)),
            first.customer(),
            Optional.empty(),
            List.of(),
            later.inspection(),
            later.measures(),
            List.of(),
            List.of(),
            List.of(),
            later.pairs(),
            List.of(),
            List.of());
    return new BowRecord(full().bow(), List.of(first, second));
  }

  private static BowRecord everyWay() {
    Taken[] ways = {
      Taken.number("29 6/16", 29.375, Unit.INCH, How.READ),
      Taken.number("12 3/16", 12.1875, Unit.INCH, How.DOUBTFUL),
      Taken.word("", How.WRITTEN),
      Taken.number("61.5", 61.5, Unit.POUND_FORCE, How.TYPED),
      Taken.number("1.25", 1.25, Unit.TURN, How.CONFIRMED)
    };
    List<Measure> measures = new ArrayList<>();
    for (int i = 0; i < 12; i++) {
      Optional<Taken> left = i < 5 ? Optional.of(ways[i]) : Optional.empty();
      Optional<Taken> found = i < 5 ? Optional.empty() : Optional.of(ways[i % 5]);
      measures.add(new Measure("measure_" + i, "Measure " + i, found, left));
    }
    return measured(measures);
  }

  private static BowRecord manyMeasures() {
    List<Measure> measures = new ArrayList<>();
    for (int i = 0; i < 70; i++) {
      Taken taken = Taken.number("4" + i, 40 + i, Unit.MILLIMETRE, How.TYPED);
      String label = i % 9 == 0 ? "A measure whose name is rather long, number " : "Sight mark ";
      measures.add(new Measure("mark_" + i, label + i, Optional.empty(), Optional.of(taken)));
    }
    return measured(measures);
  }

  private static BowRecord measured(List<Measure> measures) {
    Visit visit =
        new VisitLike(full().last())
            .day(Optional.empty())
            .customer(Optional.empty())
            .measures(measures)
            .tears(List.of())
            .pairs(List.of())
            .visit();
    return new BowRecord(full().bow(), List.of(visit));
  }

  private static BowRecord tears(MmVector... ways) {
    List<Tear> tears = new ArrayList<>();
    for (MmVector way : ways) {
      tears.add(new Tear(3, tears.size() + 1, way));
    }
    return shot(tears, List.of());
  }

  private static BowRecord groups() {
    Visit visit = full().last();
    List<GroupResult> groups =
        List.of(
            group(visit, 7, Variant.GROUP_GRID, UnitSystem.INCHES, Head.FIELD, 5),
            group(visit, 8, Variant.SIGHT_GRID, UnitSystem.METRIC, Head.BROADHEAD, 4));
    return new BowRecord(full().bow(), List.of(new VisitLike(visit).groups(groups).visit()));
  }

  private static GroupResult group(
      Visit visit, int number, Variant variant, UnitSystem units, Head head, int size) {
    List<MmPoint> shots = new ArrayList<>();
    for (int i = 0; i < size; i++) {
      shots.add(new MmPoint(30 + 9 * Math.cos(2.5 * i), 12 - 7 * Math.sin(2.5 * i)));
    }
    shots.add(new MmPoint(-60, 45));
    return new GroupResult(
        new SheetCode(visit.job(), number, Layouts.current(variant, Paper.LETTER, units).id()),
        ReadingState.READ,
        Optional.of(new Distance(20, Unit.YARD)),
        head,
        Optional.of(new Group(shots)),
        6.3);
  }

  private static BowRecord line(double... yards) {
    return shot(List.of(), shots(Unit.YARD, yards));
  }

  private static BowRecord shot(List<Tear> tears, List<LineShot> line) {
    Visit visit =
        new VisitLike(full().last())
            .changes(List.of())
            .tears(tears)
            .line(line)
            .pairs(List.of())
            .notes(List.of())
            .visit();
    return new BowRecord(full().bow(), List.of(visit));
  }
}
