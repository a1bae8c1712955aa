package sheaf.forms;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.OutputStream;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import sheaf.core.layout.UnitSystem;
import sheaf.core.layout.Variant;
import sheaf.core.page.MmRect;
import sheaf.core.result.JobSummary;
import sheaf.core.result.PairResult;
import sheaf.core.result.Verdict;

class FinishedCardTest {

  private static final int DPI = 150;
  private static final LocalDate DAY = LocalDate.of(2026, 3, 9);
  private static final String LINK = "https://records.example/b/0123456789ABCDEFGHJKMNPQRSTVWXYZ";
  private static final String LONG_NAME =
      "Bench and range by the old mill, upper floor, second door on the left, ring twice please";

  private static final JobSummary SHOWN =
      Jobs.in(UnitSystem.INCHES)
          .soundBenchCard()
          .pair(Variant.SHARED_DOT, 20, 6, 2, 1, 0.3)
          .summary();
  private static final JobSummary NOT_SHOWN =
      Jobs.in(UnitSystem.INCHES).pair(Variant.TWO_DOTS, 20, 3, 31, 12, 1).summary();
  private static final JobSummary ONE_ARROW =
      Jobs.in(UnitSystem.INCHES).pair(Variant.SHARED_DOT, 20, 1, 10, 3, 1).summary();
  private static final JobSummary NOT_SOUND =
      Jobs.in(UnitSystem.INCHES)
          .benchCard(
              "inspect_limbs=not sound",
              "inspect_cams=not sound",
              "inspect_strings=not sound",
              "inspect_cables=not sound",
              "inspect_riser=not sound",
              "inspect_arrows=not sound",
              "hand=left")
          .doubtfulPair()
          .doubtfulPair()
          .doubtfulPair()
          .doubtfulPair()
          .summary();
  private static final JobSummary NOTHING = Jobs.in(UnitSystem.INCHES).summary();

  static Stream<Arguments> jobs() {
    Jobs metric = Jobs.in(UnitSystem.METRIC).soundBenchCard();
    return Stream.of(
        Arguments.of("shown", SHOWN),
        Arguments.of("not shown", NOT_SHOWN),
        Arguments.of("one arrow of each", ONE_ARROW),
        Arguments.of("not sound, and doubts", NOT_SOUND),
        Arguments.of("nothing read", NOTHING),
        Arguments.of("bench card only", Jobs.in(UnitSystem.INCHES).soundBenchCard().summary()),
        Arguments.of("no broadhead", Jobs.in(UnitSystem.INCHES).fieldPointsOnly().summary()),
        Arguments.of("metric", metric.pair(Variant.TWO_DOTS, 18, 4, -22, 30, 1).summary()),
        Arguments.of("far off", metric.pair(Variant.TWO_DOTS, 50, 2, 90, -80, 3).summary()),
        Arguments.of("distance blank", metric.pair(Variant.TWO_DOTS, 0, 3, 9, 3, 1).summary()));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("jobs")
  void everyWordStaysOnTheCardAndClearOfTheOthers(String name, JobSummary job) throws IOException {
    for (CardPaper paper : CardPaper.values()) {
      CardDetails details = new CardDetails(paper, DAY, Optional.of(LONG_NAME), Optional.of(LINK));
      List<Pdf.Letter> letters = Pdf.of(out -> FinishedCard.write(job, details, out)).letters(0);
      MmRect inside = new MmRect(0, 0, paper.width(), paper.height()).grow(-6);

      assertThat(letters).allMatch(letter -> inside.contains(letter.box()));
      assertThat(letters).allMatch(letter -> letter.size() >= 6.99);
      assertThat(SheetWordsTest.overlapping(letters)).isEmpty();
    }
  }

  @Test
  void theCodeOpensTheRecordAndTheLinkIsNowhereInTheWords() throws IOException {
    Pdf card = print(NOT_SOUND, CardPaper.A5, Optional.of(LINK));

    assertThat(code(card, CardPaper.A5)).contains(LINK);
    assertThat(card.text()).contains("Your record").doesNotContain("records.example");
  }

  @Test
  void withoutARecordLinkTheCodeSaysTheJob() throws IOException {
    Pdf card = print(SHOWN);

    assertThat(code(card, CardPaper.HALF_LETTER)).contains(Jobs.JOB.text());
    assertThat(card.text()).contains("Job id");
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("jobs")
  void theVerdictStandsOnTheCard(String name, JobSummary job) throws IOException {
    String text = print(job).text();

    Optional<PairResult> last = job.pairs().stream().reduce((a, b) -> b);
    assertThat(text)
        .contains(last.map(Verdict::of).orElse("Where broadheads hit is not known yet."));
  }

  @Test
  void aCardSaysWhoWhenAndWhichJob() throws IOException {
    CardDetails details =
        new CardDetails(CardPaper.A5, DAY, Optional.of("  Bow \n bench "), Optional.empty());

    assertThat(Pdf.of(out -> FinishedCard.write(SHOWN, details, out)).text())
        .contains("Bow bench", "Job " + Jobs.JOB.spoken(), "Printed 9 March 2026");
  }

  @ParameterizedTest
  @EnumSource
  void aLongNameIsToldInFull(CardPaper paper) throws IOException {
    CardDetails details = new CardDetails(paper, DAY, Optional.of(LONG_NAME), Optional.empty());

    assertThat(Pdf.of(out -> FinishedCard.write(SHOWN, details, out)).text()).contains(LONG_NAME);
  }

  @ParameterizedTest
  @CsvSource({
    "\u0141ucznik \u5f13 \u017b\u00f3\u0142\u0107, \u0141ucznik ? \u017b\u00f3\u0142\u0107",
    "a\u0000b, a b"
  })
  void whatTheTypefaceLacksIsPrintedAsAQuestionMark(String name, String printed)
      throws IOException {
    CardDetails details = new CardDetails(CardPaper.A5, DAY, Optional.of(name), Optional.empty());

    assertThat(Pdf.of(out -> FinishedCard.write(SHOWN, details, out)).text())
        .contains("Finished card " + printed + " Job");
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("jobs")
  void noLineIsThinnerThanAQuarterOfAMillimetre(String name, JobSummary job) throws IOException {
    assertThat(print(job).lineWidths(0)).isNotEmpty().allMatch(mm -> mm >= 0.249);
  }

  @Test
  void anUnsoundBowMustNotBeShot() throws IOException {
    assertThat(print(NOT_SOUND).text())
        .contains("DO NOT SHOOT", "limbs; cams; string, servings; cables; riser; arrows, flexed");
    assertThat(print(SHOWN).text()).doesNotContain("DO NOT SHOOT").contains("found sound");
  }

  @Test
  void doubtsAreSaidInWords() throws IOException {
    assertThat(print(NOT_SOUND).text()).contains("Sheets 2, 3, 4, 5 have doubts: not confirmed.");
    assertThat(print(SHOWN).text()).doesNotContain("doubts");
  }

  @Test
  void withOneArrowOfEachHeadTheRegionIsUnknown() throws IOException {
    assertThat(print(ONE_ARROW).text())
        .contains("unknown: one arrow per head", "not enough arrows to say")
        .doesNotContain("95 % region");
  }

  @Test
  void withoutAPairSheetTheCardSaysWhatIsMissing() throws IOException {
    assertThat(print(NOTHING).text())
        .contains("No pair sheet of this job has been read in.")
        .contains("No bench card has been read in");
  }

  @Test
  void aMeasureIsToldMarkedAsNotReadInOrLeftBlank() throws IOException {
    JobSummary job =
        Jobs.in(UnitSystem.INCHES)
            .benchCard("cam_stops_left=top", "draw_length_left=?", "hand=left")
            .summary();

    assertThat(print(job).text())
        .contains("Draw length (ATA) not read in yet")
        .contains("Cam stop to touch first top")
        .contains("Hand: left.")
        .contains("An empty line: not measured.");
  }

  @Test
  void anOffsetIsToldInMillimetresInchesAndMinutes() throws IOException {
    // The centres lie hypot(30.33, 13.67) mm apart; one inch is 25.4 mm, and at 20 yd = 18288 mm
    // a minute of angle, 1/60 degree, spans 5.3198 mm.
    double mm = NOT_SHOWN.asLeft().orElseThrow().offset().orElseThrow().shift().length();

    assertThat(print(NOT_SHOWN).text())
        .contains("%.1f mm = %.2f in".formatted(mm, mm / 25.4))
        .contains("%.1f MOA at 20 yd".formatted(mm / 5.3198));
  }

  @Test
  void aCardIsHalfItsOfficesPaper() throws IOException {
    // ISO 216: A5 is 148 mm by 210 mm. ANSI/ASME Y14.1: size A is 8.5 in by 11 in.
    assertThat(box(CardPaper.A5).getWidth()).isEqualTo(419.528f, within(0.01f));
    assertThat(box(CardPaper.A5).getHeight()).isEqualTo(595.276f, within(0.01f));
    assertThat(box(CardPaper.HALF_LETTER).getWidth()).isEqualTo(396, within(0.01f));
    assertThat(box(CardPaper.HALF_LETTER).getHeight()).isEqualTo(612, within(0.01f));
  }

  @Test
  void theSameCardHasTheSameBytes() {
    assertThat(print(SHOWN).bytes()).isEqualTo(print(SHOWN).bytes());
  }

  @Test
  void aLinkTooLongForTheCodeIsRefusedWithoutRepeatingIt() {
    CardDetails details =
        new CardDetails(
            CardPaper.A5, DAY, Optional.empty(), Optional.of(LINK + "secret".repeat(60)));

    assertThatThrownBy(() -> FinishedCard.write(SHOWN, details, OutputStream.nullOutputStream()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("characters")
        .hasMessageNotContaining("secret");
  }

  private static PDRectangle box(CardPaper paper) throws IOException {
    try (PDDocument document = print(SHOWN, paper, Optional.empty()).open()) {
      return document.getPage(0).getMediaBox();
    }
  }

  private static Optional<String> code(Pdf card, CardPaper paper) throws IOException {
    MmRect corner = new MmRect(paper.width() - 45, 0, 45, 38);
    return Pdf.code(card.grey(0, DPI), DPI, corner);
  }

  private static Pdf print(JobSummary job) {
    return print(job, CardPaper.HALF_LETTER, Optional.empty());
  }

  private static Pdf print(JobSummary job, CardPaper paper, Optional<String> link) {
    CardDetails details = new CardDetails(paper, DAY, Optional.of("Bow bench"), link);
    return Pdf.of(out -> FinishedCard.write(job, details, out));
  }
}
