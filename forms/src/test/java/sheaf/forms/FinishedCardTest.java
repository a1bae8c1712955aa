package sheaf.forms;

import static org.assertj.core.api.Assertions.assertThat;
import static sheaf.forms.Cards.NOTHING;
import static sheaf.forms.Cards.NOT_SHOWN;
import static sheaf.forms.Cards.NOT_SOUND;
import static sheaf.forms.Cards.ONE_ARROW;
import static sheaf.forms.Cards.SHOWN;
import static sheaf.forms.Cards.print;

import java.io.IOException;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import sheaf.core.layout.UnitSystem;
import sheaf.core.record.BowRecord;
import sheaf.core.result.Verdict;

/** What a card says. */
class FinishedCardTest {

  @ParameterizedTest(name = "{0}, {1}, {2}")
  @MethodSource("sheaf.forms.CardLooksTest#cards")
  void theVerdictStandsOnTheCardAndOnTheShopCopy(
      String name, CardForm form, CardPaper paper, BowRecord record) throws IOException {
    String text = print(record, form, paper, Shop.NONE).text();

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
    Shop shop =
        new Shop(Optional.of("  Bow \n bench "), Optional.of("Mill Lane 4"), Optional.empty());

    assertThat(print(SHOWN, CardForm.CARD, CardPaper.A5, shop).text())
        .contains("Bow bench Mill Lane 4", "Job " + Jobs.JOB.spoken(), "Printed 9 March 2026");
  }

  @ParameterizedTest
  @CsvSource({
    "\u0141ucznik \u5f13 \u017b\u00f3\u0142\u0107, \u0141ucznik \u25a1 \u017b\u00f3\u0142\u0107",
    "\u0416 \u05d0, \u0416 \u25a1"
  })
  void aLetterThatTheTypefaceLacksIsAnEmptyBoxAndTheCardSaysSo(String name, String printed)
      throws IOException {
    assertThat(print(SHOWN, CardForm.CARD, CardPaper.A5, Shop.named(name)).text())
        .contains("Finished card " + printed + " Job")
        .contains("stands for a letter that this card's typeface lacks");
  }

  @Test
  void aControlCharacterInANameIsABlank() throws IOException {
    assertThat(print(SHOWN, CardForm.CARD, CardPaper.A5, Shop.named("a\u0000b")).text())
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
        .contains("Impact drifts with distance, by 0.04 in right for each yard")
        .contains("Before sheet 3: nocking, moved up, by 2 × 1/64 in");
  }

  @Test
  void theSizeOfAGroupAndTheWayOfTheSightAreTold() throws IOException {
    assertThat(print(Records.all().get("groups")).text())
        .contains("6 arrows at 20 yd: extreme spread")
        .contains("The arrow 2 3/8 in left and 1 3/4 in low of the spot stands out from the others")
        .contains("5 arrows at 20 yd: extreme spread")
        .contains("Not enough arrows to move the sight sideways");
  }

  @Test
  void theShopCopyTellsAsFoundBesideAsLeft() throws IOException {
    assertThat(print(Records.full(), CardForm.SHOP_COPY, CardPaper.A4, Shop.NONE).text())
        .contains("as found how taken as left how taken")
        .contains("Draw length (ATA) 29 6/16 in read 29 6/16 in read");
  }

  @Test
  void aTagSaysHowManyMeasuresItHasNoRoomFor() throws IOException {
    BowRecord many = Records.all().get("seventy measures");

    assertThat(print(many, CardForm.WALLET_TAG, CardPaper.LETTER, Shop.NONE).text())
        .contains("48 more on the card.");
  }
}
