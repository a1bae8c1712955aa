package sheaf.core.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import sheaf.core.job.JobId;
import sheaf.core.job.SheetCode;
import sheaf.core.layout.LayoutId;
import sheaf.core.layout.UnitSystem;
import sheaf.core.layout.Variant;
import sheaf.core.measure.Unit;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmVector;
import sheaf.core.page.Paper;
import sheaf.core.reading.FieldReading;
import sheaf.core.reading.FieldReading.State;
import sheaf.core.reading.PageReading;
import sheaf.core.reading.PrintScale;
import sheaf.core.reading.Reason;
import sheaf.core.reading.ReasonCode;
import sheaf.core.reading.TearReading;
import sheaf.core.record.Inspected.Finding;
import sheaf.core.result.JobSummary;

class RecordOfSheetsTest {

  private static final JobId JOB = JobId.random(new SplittableRandom(5));
  private static final LocalDate DAY = LocalDate.of(2026, 3, 9);

  private final List<PageReading> pages = new ArrayList<>();

  @Test
  void withoutPapersEveryMeasureOfABenchCardIsBlank() {
    Visit visit = visit();

    assertThat(visit.measures()).extracting(Measure::key).contains("draw_length", "cam_stops");
    assertThat(visit.measures())
        .allMatch(measure -> measure.found().isEmpty() && measure.left().isEmpty());
    assertThat(visit.inspection()).hasSize(6).allMatch(p -> p.finding() == Finding.BLANK);
    assertThat(visit.tears()).isEmpty();
    assertThat(visit.day()).contains(DAY);
  }

  @Test
  void eachAnswerSaysHowItWasTaken() {
    card(
        1,
        answer("draw_length_found", State.READ, "29 6/16", Unit.INCH),
        answer("draw_length_left", State.CHECK, "29 8/16", Unit.INCH),
        answer("brace_height_left", State.CHECK, "", Unit.INCH),
        answer("axle_to_axle_left", State.BLANK, "", Unit.INCH));

    Measure draw = measure("draw_length");
    assertThat(draw.found()).contains(taken("29 6/16", How.READ));
    assertThat(draw.left()).contains(taken("29 8/16", How.DOUBTFUL));
    assertThat(measure("brace_height").left().orElseThrow().how()).isEqualTo(How.WRITTEN);
    assertThat(measure("brace_height").left().orElseThrow().words()).isEmpty();
    assertThat(measure("axle_to_axle").left()).isEmpty();
  }

  @Test
  void ofTwoBenchCardsTheLaterCountsWhereItSaysAnything() {
    card(1, word("cam_stops_left", "both"), word("hand", "right"));
    card(2, word("cam_stops_left", "top"), answer("hand", State.BLANK, "", Unit.INCH));

    assertThat(measure("cam_stops").left().orElseThrow().text()).isEqualTo("top");
    assertThat(record().bow().traits())
        .containsExactly(new Trait("hand", "hand", Taken.word("right", How.READ)));
  }

  @Test
  void aPartThatIsNotSurelySoundForbidsShooting() {
    card(
        1,
        word("inspect_limbs", "sound"),
        word("inspect_cams", "not sound"),
        answer("inspect_riser", State.CHECK, "sound", Unit.INCH));

    assertThat(visit().notSound()).extracting(Inspected::key).containsExactly("cams", "riser");
  }

  @Test
  void theStoryIsWhatWasTickedAsChangedBeforeEachSheet() {
    pair(2, word("changed", "nothing"));
    pair(
        3,
        word("changed", "rest"),
        word("changed_way", "left"),
        answer("changed_by", State.CHECK, "", Unit.INCH),
        word("changed_unit", "1/64 in"));
    pair(4, word("changed", "yoke"), word("changed_by", "2"), word("changed_unit", "turns"));

    assertThat(visit().changes())
        .containsExactly(
            new Change(
                3,
                Taken.word("rest", How.READ),
                Optional.of(Taken.word("left", How.READ)),
                Optional.of(Taken.word("", How.WRITTEN))),
            new Change(
                4,
                Taken.word("yoke", How.READ),
                Optional.empty(),
                Optional.of(Taken.word("2 turns", How.READ))));
  }

  @Test
  void sheetsWithDoubtsAreNamed() {
    pair(2);
    pages.add(
        page(3, Variant.TWO_DOTS, List.of(Reason.of(ReasonCode.HOLE_UNSURE, "unsure")), List.of()));

    assertThat(visit().sheets()).hasSize(2);
    assertThat(visit().doubtfulSheets()).containsExactly(3);
  }

  @Test
  void anAnswerWithoutTextIsOnlyOneThatWasNotReadInYet() {
    assertThatThrownBy(() -> Taken.word("", How.READ))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("has no text");
    assertThatThrownBy(() -> Taken.word("29", How.WRITTEN))
        .isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void aRecordHasAVisitAndNoTwoOfOneJob() {
    BowRecord record = record();

    assertThatThrownBy(() -> new BowRecord(record.bow(), List.of()))
        .hasMessageContaining("at least one visit");
    assertThatThrownBy(() -> new BowRecord(record.bow(), List.of(visit(), visit())))
        .hasMessageContaining("one job");
  }

  @Test
  void namesAreTidiedAndABlankNameIsNone() {
    assertThat(new Bow(Optional.of(" 32 in\n compound\u0000 "), List.of()).words())
        .contains("32 in compound");
    assertThat(new Bow(Optional.of(" \t"), List.of()).words()).isEmpty();
    assertThatThrownBy(() -> new Bow(Optional.of("x".repeat(121)), List.of()))
        .hasMessageContaining("1 to 120 characters");
  }

  private BowRecord record() {
    return RecordOfSheets.of(JobSummary.of(JOB, pages), Optional.of(DAY));
  }

  private Visit visit() {
    return record().last();
  }

  private Measure measure(String key) {
    return visit().measures().stream().filter(m -> m.key().equals(key)).findFirst().orElseThrow();
  }

  @Test
  void tearsAreToldInTrueMillimetresInTheOrderInWhichTheyWereShot() {
    tearSheet(4, new PrintScale(0.9, 0.8), tear(1, 30, -40), tear(3, 0, 0));

    assertThat(RecordOfSheets.tears(JobSummary.of(JOB, pages)))
        .containsExactly(new Tear(4, 1, new MmVector(27, -32)), new Tear(4, 3, new MmVector(0, 0)));
    assertThat(record().last().tears()).hasSize(2);
  }

  @Test
  void whatWasChangedBeforeEachShotAtATearSheetIsAChangeOfItsOwn() {
    pages.add(
        page(
            4,
            Variant.FOUR_ZONES,
            List.of(),
            List.of(
                word("changed_1", "nothing"),
                word("changed_2", "rest"),
                word("changed_way_2", "left"),
                word("changed_3", "nocking"))));

    assertThat(record().last().changes())
        .extracting(change -> change.beforeSheet() + " " + change.what().text())
        .containsExactly("4 rest", "4 nocking");
    assertThat(record().last().changes().get(0).way().orElseThrow().text()).isEqualTo("left");
  }

  private void tearSheet(int number, PrintScale scale, TearReading... tears) {
    LayoutId layout = new LayoutId(Variant.FOUR_ZONES, Paper.LETTER, UnitSystem.INCHES, 1);
    pages.add(
        new PageReading(
            "tears.jpg",
            List.of(),
            Optional.of(new SheetCode(JOB, number, layout)),
            OptionalDouble.empty(),
            Optional.of(scale),
            List.of(),
            List.of(tears),
            List.of(),
            OptionalDouble.empty()));
  }

  private static TearReading tear(int zone, double right, double down) {
    MmPoint point = new MmPoint(60, 70);
    return new TearReading(zone, point, 1, point.plus(new MmVector(right, down)), 1, 3, 1);
  }

  private void card(int number, FieldReading... fields) {
    pages.add(page(number, Variant.FRONT, List.of(), List.of(fields)));
  }

  private void pair(int number, FieldReading... fields) {
    pages.add(page(number, Variant.TWO_DOTS, List.of(), List.of(fields)));
  }

  private static PageReading page(
      int number, Variant variant, List<Reason> reasons, List<FieldReading> fields) {
    LayoutId layout = new LayoutId(variant, Paper.LETTER, UnitSystem.INCHES, 1);
    return new PageReading(
        "scan.jpg",
        reasons,
        Optional.of(new SheetCode(JOB, number, layout)),
        OptionalDouble.empty(),
        Optional.empty(),
        List.of(),
        fields);
  }

  private static FieldReading answer(String key, State state, String text, Unit unit) {
    return new FieldReading(key, state, text, OptionalDouble.empty(), Optional.of(unit), 1);
  }

  private static FieldReading word(String key, String text) {
    return new FieldReading(key, State.READ, text, OptionalDouble.empty(), Optional.empty(), 1);
  }

  private static Taken taken(String text, How how) {
    return new Taken(text, OptionalDouble.empty(), Optional.of(Unit.INCH), how);
  }
}
