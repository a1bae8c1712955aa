package sheaf.desk;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import sheaf.core.group.Group;
import sheaf.core.group.LineShot;
import sheaf.core.group.Offset;
import sheaf.core.job.JobId;
import sheaf.core.job.SheetCode;
import sheaf.core.layout.Layout;
import sheaf.core.layout.Layouts;
import sheaf.core.layout.UnitSystem;
import sheaf.core.layout.Variant;
import sheaf.core.measure.Distance;
import sheaf.core.measure.Unit;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmVector;
import sheaf.core.page.Paper;
import sheaf.core.reading.Head;
import sheaf.core.reading.ReadingState;
import sheaf.core.record.Bow;
import sheaf.core.record.BowRecord;
import sheaf.core.record.Change;
import sheaf.core.record.How;
import sheaf.core.record.Inspected;
import sheaf.core.record.Inspected.Finding;
import sheaf.core.record.Measure;
import sheaf.core.record.SheetRead;
import sheaf.core.record.Taken;
import sheaf.core.record.Tear;
import sheaf.core.record.Trait;
import sheaf.core.record.Visit;
import sheaf.core.result.GroupResult;
import sheaf.core.result.PairResult;

/** Records of every kind, for properties that hold for all. */
public final class BowRecords {

  private BowRecords() {}

  /** Any record of one to three visits. */
  public static Arbitrary<BowRecord> any() {
    return Combinators.combine(
            text(60).optional(),
            traits(),
            visit(0),
            visit(1),
            visit(2),
            Arbitraries.integers().between(1, 3))
        .as(
            (words, traits, a, b, c, count) ->
                new BowRecord(new Bow(words, traits), List.of(a, b, c).subList(0, count)));
  }

  private static Arbitrary<List<Trait>> traits() {
    return taken().map(answer -> new Trait("hand", "hand", answer)).list().ofMaxSize(2);
  }

  /** Each of its visits must have a job of its own. */
  private static Arbitrary<Visit> visit(int number) {
    JobId job =
        List.of(Pages.JOB, Pages.OTHER_JOB, JobId.parse("00000000011").orElseThrow()).get(number);
    return Combinators.combine(
            who(), papers(job), measures(), changes(), shots(job), pairs(job), notes())
        .as(
            (who, papers, measures, changes, shots, pairs, notes) ->
                new Visit(
                    job,
                    who.day(),
                    who.customer(),
                    who.technician(),
                    papers.sheets(),
                    papers.inspection(),
                    measures,
                    changes,
                    shots.tears(),
                    shots.line(),
                    pairs,
                    shots.groups(),
                    notes));
  }

  private record Who(
      Optional<LocalDate> day, Optional<String> customer, Optional<String> technician) {}

  private record Papers(List<SheetRead> sheets, List<Inspected> inspection) {}

  private record Shots(List<Tear> tears, List<LineShot> line, List<GroupResult> groups) {}

  private static Arbitrary<Who> who() {
    Arbitrary<LocalDate> day =
        Arbitraries.integers().between(0, 20_000).map(days -> LocalDate.ofEpochDay(days));
    return Combinators.combine(day.optional(), text(100).optional(), text(9).optional())
        .as(Who::new);
  }

  private static Arbitrary<Papers> papers(JobId job) {
    Arbitrary<ReadingState> state = Arbitraries.of(ReadingState.READ, ReadingState.CHECK);
    Arbitrary<List<SheetRead>> sheets =
        state
            .list()
            .ofMaxSize(4)
            .map(
                states ->
                    IntStream.range(0, states.size())
                        .mapToObj(i -> new SheetRead(code(job, i + 1), states.get(i)))
                        .toList());
    Arbitrary<List<Inspected>> parts =
        Arbitraries.of(Finding.class)
            .map(f -> new Inspected("limbs", "limbs", f))
            .list()
            .ofMaxSize(6);
    return Combinators.combine(sheets, parts).as(Papers::new);
  }

  private static SheetCode code(JobId job, int number) {
    return new SheetCode(
        job, number, Layouts.current(Variant.TWO_DOTS, Paper.A4, UnitSystem.METRIC).id());
  }

  private static Arbitrary<List<Measure>> measures() {
    return Combinators.combine(text(30), taken().optional(), taken().optional())
        .as((label, found, left) -> new Measure("draw_length", label, found, left))
        .list()
        .ofMaxSize(5);
  }

  private static Arbitrary<Taken> taken() {
    return Combinators.combine(
            text(12),
            Arbitraries.doubles().between(-1e6, 1e6).ofScale(6).optional(),
            Arbitraries.of(Unit.class).optional(),
            Arbitraries.of(How.class))
        .as(
            (text, value, unit, how) ->
                new Taken(
                    how == How.WRITTEN ? "" : text,
                    value.map(OptionalDouble::of).orElse(OptionalDouble.empty()),
                    unit,
                    how));
  }

  private static Arbitrary<List<Change>> changes() {
    return Combinators.combine(
            Arbitraries.integers().between(1, 999), taken(), taken().optional(), taken().optional())
        .as(Change::new)
        .list()
        .ofMaxSize(4);
  }

  private static Arbitrary<Double> mm() {
    return Arbitraries.doubles().between(-200, 200).ofScale(2);
  }

  private static Arbitrary<Distance> distance() {
    return Combinators.combine(
            Arbitraries.doubles().between(1, 100).ofScale(1), Arbitraries.of(Unit.YARD, Unit.METRE))
        .as(Distance::new);
  }

  private static Arbitrary<Shots> shots(JobId job) {
    Arbitrary<List<Tear>> tears =
        Combinators.combine(Arbitraries.integers().between(1, 9), mm(), mm())
            .as((sheet, x, y) -> new Tear(sheet, 2, new MmVector(x, y)))
            .list()
            .ofMaxSize(4);
    Arbitrary<List<LineShot>> line =
        Combinators.combine(distance(), mm()).as(LineShot::new).list().ofMaxSize(8);
    Layout grid = Layouts.current(Variant.SIGHT_GRID, Paper.LETTER, UnitSystem.INCHES);
    Arbitrary<List<GroupResult>> groups =
        Combinators.combine(
                distance().optional(), Arbitraries.of(Head.class), group(), state(), mm())
            .as(
                (from, head, shots, state, shaft) ->
                    new GroupResult(
                        new SheetCode(job, 6, grid.id()),
                        state,
                        from,
                        head,
                        shots,
                        Math.abs(shaft)))
            .list()
            .ofMaxSize(2);
    return Combinators.combine(tears, line, groups).as(Shots::new);
  }

  private static Arbitrary<ReadingState> state() {
    return Arbitraries.of(ReadingState.READ, ReadingState.CHECK);
  }

  private static Arbitrary<Optional<Group>> group() {
    return Combinators.combine(mm(), mm())
        .as(MmPoint::new)
        .list()
        .ofMaxSize(5)
        .map(BowRecords::group);
  }

  private static Arbitrary<List<PairResult>> pairs(JobId job) {
    return Combinators.combine(
            group(),
            group(),
            distance().optional(),
            Arbitraries.of(ReadingState.READ, ReadingState.CHECK))
        .as(
            (field, broadhead, distance, state) ->
                new PairResult(
                    code(job, 3),
                    state,
                    distance,
                    field,
                    broadhead,
                    5.97,
                    field.flatMap(f -> broadhead.map(b -> Offset.between(f, b)))))
        .list()
        .ofMaxSize(2);
  }

  private static Optional<Group> group(List<MmPoint> shots) {
    return shots.isEmpty() ? Optional.empty() : Optional.of(new Group(shots));
  }

  private static Arbitrary<List<String>> notes() {
    return text(300).list().ofMaxSize(5);
  }

  /** Words in any script, that survive tidying: with letters, and no stray blanks. */
  private static Arbitrary<String> text(int longest) {
    return Arbitraries.strings()
        .withChars("abc \"\\/<>&éßЖΩ弓א\u00d7")
        .withChars('\u0301')
        .ofMinLength(1)
        .ofMaxLength(longest)
        .map(text -> text.replaceAll("\\s+", " ").strip())
        .filter(text -> !text.isEmpty());
  }
}
