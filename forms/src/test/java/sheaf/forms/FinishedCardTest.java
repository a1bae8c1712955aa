package sheaf.forms;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDEmbeddedFilesNameTreeNode;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import sheaf.core.layout.UnitSystem;
import sheaf.core.layout.Variant;
import sheaf.core.page.MmRect;
import sheaf.core.page.Paper;
import sheaf.core.record.BowRecord;
import sheaf.core.result.Verdict;

class FinishedCardTest {

  private static final int DPI = 150;
  private static final LocalDate DAY = LocalDate.of(2026, 3, 9);
  private static final String LINK = "https://records.example/b/0123456789ABCDEFGHJKMNPQRSTVWXYZ";
  private static final String LONG_NAME =
      "Bench and range by the old mill, upper floor, second door on the left, ring twice please";

  private static final byte[] JSON = "{\"a\":1}".getBytes(StandardCharsets.UTF_8);

  private static final BowRecord SHOWN =
      Records.of(
          Jobs.in(UnitSystem.INCHES)
              .soundBenchCard()
              .pair(Variant.SHARED_DOT, 20, 6, 2, 1, 0.3)
              .summary());
  private static final BowRecord NOT_SHOWN =
      Records.of(Jobs.in(UnitSystem.INCHES).pair(Variant.TWO_DOTS, 20, 3, 31, 12, 1).summary());
  private static final BowRecord ONE_ARROW =
      Records.of(Jobs.in(UnitSystem.INCHES).pair(Variant.SHARED_DOT, 20, 1, 10, 3, 1).summary());
  private static final BowRecord NOT_SOUND =
      Records.of(
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
              .summary());
  private static final BowRecord NOTHING = Records.of(Jobs.in(UnitSystem.INCHES).summary());

  static Stream<Arguments> cards() {
    return Records.all().entrySet().stream()
        .flatMap(
            entry ->
                Stream.of(
                    Arguments.of(
                        entry.getKey(), CardForm.CARD, CardPaper.HALF_LETTER, entry.getValue()),
                    Arguments.of(entry.getKey(), CardForm.CARD, CardPaper.A5, entry.getValue()),
                    Arguments.of(
                        entry.getKey(), CardForm.SHOP_COPY, CardPaper.LETTER, entry.getValue()),
                    Arguments.of(
                        entry.getKey(), CardForm.SHOP_COPY, CardPaper.A4, entry.getValue()),
                    Arguments.of(
                        entry.getKey(), CardForm.WALLET_TAG, CardPaper.A4, entry.getValue())));
  }

  @ParameterizedTest(name = "{0}, {1}, {2}")
  @MethodSource("cards")
  void everyWordStaysOnTheCardAndClearOfTheOthers(
      String name, CardForm form, CardPaper paper, BowRecord record) throws IOException {
    CardDetails details =
        new CardDetails(form, paper, DAY, Optional.of(LONG_NAME), Optional.of(LINK));
    Pdf card = Pdf.of(out -> FinishedCard.write(record, details, JSON, out));
    MmRect inside = new MmRect(0, 0, paper.width(), paper.height()).grow(-6);

    for (int page = 0; page < pages(card); page++) {
      List<Pdf.Letter> letters = card.letters(page);
      assertThat(letters).allMatch(letter -> inside.contains(letter.box()));
      assertThat(letters).allMatch(letter -> letter.size() >= 6.99);
      assertThat(SheetWordsTest.overlapping(letters)).isEmpty();
      assertThat(card.lineWidths(page)).allMatch(mm -> mm >= 0.249);
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

  @ParameterizedTest(name = "{0}, {1}, {2}")
  @MethodSource("cards")
  void theVerdictStandsOnTheCardAndOnTheShopCopy(
      String name, CardForm form, CardPaper paper, BowRecord record) throws IOException {
    CardDetails details = new CardDetails(form, paper, DAY, Optional.empty(), Optional.empty());
    String text = Pdf.of(out -> FinishedCard.write(record, details, JSON, out)).text();

    if (form != CardForm.WALLET_TAG) {
      assertThat(text)
          .contains(
              record
                  .last()
                  .pairAsLeft()
                  .map(Verdict::of)
                  .orElse("Where broadheads hit is not known yet."));
    }
  }

  @Test
  void aCardSaysWhoWhenAndWhichJob() throws IOException {
    CardDetails details =
        new CardDetails(
            CardForm.CARD, CardPaper.A5, DAY, Optional.of("  Bow \n bench "), Optional.empty());

    assertThat(Pdf.of(out -> FinishedCard.write(SHOWN, details, JSON, out)).text())
        .contains("Bow bench", "Job " + Jobs.JOB.spoken(), "Printed 9 March 2026");
  }

  @ParameterizedTest
  @EnumSource
  void aLongNameIsToldInFull(CardPaper paper) throws IOException {
    CardDetails details =
        new CardDetails(CardForm.CARD, paper, DAY, Optional.of(LONG_NAME), Optional.empty());

    assertThat(Pdf.of(out -> FinishedCard.write(SHOWN, details, JSON, out)).text())
        .contains(LONG_NAME);
  }

  @ParameterizedTest
  @CsvSource({
    "\u0141ucznik \u5f13 \u017b\u00f3\u0142\u0107, \u0141ucznik \u25a1 \u017b\u00f3\u0142\u0107",
    "\u0416 \u05d0, \u0416 \u25a1"
  })
  void aLetterThatTheTypefaceLacksIsAnEmptyBoxAndTheCardSaysSo(String name, String printed)
      throws IOException {
    CardDetails details =
        new CardDetails(CardForm.CARD, CardPaper.A5, DAY, Optional.of(name), Optional.empty());

    assertThat(Pdf.of(out -> FinishedCard.write(SHOWN, details, JSON, out)).text())
        .contains("Finished card " + printed + " Job")
        .contains("stands for a letter that this card's typeface lacks");
  }

  @Test
  void aControlCharacterInANameIsABlank() throws IOException {
    CardDetails details =
        new CardDetails(
            CardForm.CARD, CardPaper.A5, DAY, Optional.of("a\u0000b"), Optional.empty());

    assertThat(Pdf.of(out -> FinishedCard.write(SHOWN, details, JSON, out)).text())
        .contains("Finished card a b Job")
        .doesNotContain("typeface lacks");
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
        .contains("Inspection: blank.")
        .contains(
            "Blank, as nothing is on record: tears through paper, line sheet, changes, notes.");
  }

  @Test
  void aMeasureIsToldMarkedAsNotReadInOrLeftBlank() throws IOException {
    BowRecord job =
        Records.of(
            Jobs.in(UnitSystem.INCHES)
                .benchCard("cam_stops_left=top", "draw_length_left=?", "hand=left")
                .summary());

    assertThat(print(job).text())
        .contains("Draw length (ATA) on paper unread")
        .contains("Cam stop to touch first top read")
        .contains("Hand: left.")
        .contains("An empty line: not measured.");
  }

  @Test
  void anOffsetIsToldInMillimetresInchesAndMinutes() throws IOException {
    // The centres lie hypot(30.33, 13.67) mm apart; one inch is 25.4 mm, and at 20 yd = 18288 mm
    // a minute of angle, 1/60 degree, spans 5.3198 mm.
    double mm = NOT_SHOWN.last().pairAsLeft().orElseThrow().offset().orElseThrow().shift().length();

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
            CardForm.CARD,
            CardPaper.A5,
            DAY,
            Optional.empty(),
            Optional.of(LINK + "secret".repeat(60)));

    assertThatThrownBy(
            () -> FinishedCard.write(SHOWN, details, JSON, OutputStream.nullOutputStream()))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("characters")
        .hasMessageNotContaining("secret");
  }

  @Test
  void theKeyNumbersAreInACodeThatAnyPhoneShows() throws IOException {
    // Read by ZXing, a reader that phones use.
    Pdf card = print(Records.full(), CardPaper.A5, Optional.of(LINK));
    MmRect left = new MmRect(CardPaper.A5.width() - 69, 0, 31, 38);

    assertThat(Pdf.code(card.grey(0, 200), 200, left).orElseThrow())
        .startsWith("Job " + Jobs.JOB.spoken() + " as left\n2026-03-09\n")
        .contains("Draw length (ATA) 29 6/16 in\n")
        .doesNotContain("R. K.", "records.example");
  }

  @Test
  void aBlankIsALineAndNeverAZero() throws IOException {
    assertThat(print(NOTHING).text()).doesNotContain(" 0 ").contains("Draw length (ATA) Bow plus");
  }

  @Test
  void thirtyNotesAreAllThere() throws IOException {
    BowRecord lengthy = Records.all().get("long");
    String text = print(lengthy).text();

    assertThat(lengthy.last().notes()).hasSize(30).allMatch(text::contains);
  }

  @Test
  void bothTearsTheDriftAndEveryChangeAreTold() throws IOException {
    assertThat(print(Records.full()).text())
        .contains("First tear Sheet 2, zone 1. Tail 33 mm = 1.29 in toward 10 o'clock")
        .contains("28 mm left, 17 mm high", "Last tear Sheet 2, zone 3.")
        .contains("Drift 1.2 mm right for each metre of distance")
        .contains("Before sheet 3: nocking, moved up, by 2 × 1/64 in");
  }

  @Test
  void theShopCopyTellsAsFoundBesideAsLeft() throws IOException {
    CardDetails details =
        new CardDetails(CardForm.SHOP_COPY, CardPaper.A4, DAY, Optional.empty(), Optional.empty());

    assertThat(Pdf.of(out -> FinishedCard.write(Records.full(), details, JSON, out)).text())
        .contains("as found how taken as left how taken")
        .contains("Draw length (ATA) 29 6/16 in read 29 6/16 in read");
  }

  @Test
  void aTagSaysHowManyMeasuresItHasNoRoomFor() throws IOException {
    CardDetails details =
        new CardDetails(
            CardForm.WALLET_TAG, CardPaper.LETTER, DAY, Optional.empty(), Optional.empty());
    BowRecord many = Records.all().get("seventy measures");

    assertThat(Pdf.of(out -> FinishedCard.write(many, details, JSON, out)).text())
        .contains("48 more on the card.");
  }

  @Nested
  class TheRecordInside {

    @Test
    void isGivenBack() {
      assertThat(carried(print(SHOWN).bytes()))
          .isInstanceOfSatisfying(
              CarriedRecord.Whole.class, whole -> assertThat(whole.json()).isEqualTo(JSON));
    }

    @Test
    void isNotTrustedWhenItWasChanged() throws IOException {
      byte[] tampered;
      try (PDDocument document = print(SHOWN).open();
          ByteArrayOutputStream out = new ByteArrayOutputStream()) {
        PDEmbeddedFilesNameTreeNode files =
            document.getDocumentCatalog().getNames().getEmbeddedFiles();
        try (OutputStream content =
            files
                .getNames()
                .values()
                .iterator()
                .next()
                .getEmbeddedFile()
                .createOutputStream(COSName.FLATE_DECODE)) {
          content.write("{\"a\":2}".getBytes(StandardCharsets.UTF_8));
        }
        document.save(out);
        tampered = out.toByteArray();
      }

      assertThat(why(tampered)).contains("damaged or changed after it was printed");
    }

    @Test
    void isMissedWhenItWasTakenOut() throws IOException {
      byte[] stripped;
      try (PDDocument document = print(SHOWN).open();
          ByteArrayOutputStream out = new ByteArrayOutputStream()) {
        document.getDocumentCatalog().setNames(null);
        document.save(out);
        stripped = out.toByteArray();
      }

      assertThat(why(stripped)).contains("has lost the record that it carried");
    }

    @Test
    void isNotSoughtInAForeignFile() {
      byte[] sheet = Pdf.of(out -> Backing.write(Paper.A4, 1, out)).bytes();

      assertThat(why(sheet)).contains("no finished card of ours");
      assertThat(why(new byte[] {1, 2, 3})).contains("no PDF that can be opened");
      assertThat(why(new byte[0])).contains("no PDF that can be opened");
    }

    @Test
    void isNotSoughtInHalfACard() {
      byte[] card = print(SHOWN).bytes();

      assertThat(carried(Arrays.copyOf(card, card.length / 2)))
          .isInstanceOf(CarriedRecord.None.class);
    }

    private static CarriedRecord carried(byte[] pdf) {
      return FinishedCard.carried(pdf);
    }

    private static String why(byte[] pdf) {
      return ((CarriedRecord.None) carried(pdf)).why();
    }
  }

  private static int pages(Pdf card) throws IOException {
    try (PDDocument document = card.open()) {
      return document.getNumberOfPages();
    }
  }

  private static PDRectangle box(CardPaper paper) throws IOException {
    try (PDDocument document = print(SHOWN, paper, Optional.empty()).open()) {
      return document.getPage(0).getMediaBox();
    }
  }

  private static Optional<String> code(Pdf card, CardPaper paper) throws IOException {
    MmRect corner = new MmRect(paper.width() - 38.5, 0, 38.5, 38);
    return Pdf.code(card.grey(0, DPI), DPI, corner);
  }

  private static Pdf print(BowRecord job) {
    return print(job, CardPaper.HALF_LETTER, Optional.empty());
  }

  private static Pdf print(BowRecord job, CardPaper paper, Optional<String> link) {
    CardDetails details =
        new CardDetails(CardForm.CARD, paper, DAY, Optional.of("Bow bench"), link);
    return Pdf.of(out -> FinishedCard.write(job, details, JSON, out));
  }
}
