package sheaf.forms;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import sheaf.core.page.MmRect;
import sheaf.core.record.BowRecord;
import sheaf.core.record.Change;
import sheaf.core.record.Measure;
import sheaf.core.record.Visit;

/** Where everything ends up on a card. */
class CardLooksTest {

  private static final int DPI = 60;

  private static final Shop LENGTHY =
      new Shop(
          Optional.of("Bench and range by the old mill, upper floor, second door on"),
          Optional.of(
              "Mill Lane 4, second door on the left, ring twice please; bench@mill.example"),
          Optional.of(Logos.png(300, 200)));

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
    Pdf card = Cards.print(record, form, paper, LENGTHY);
    MmRect inside = new MmRect(0, 0, paper.width(), paper.height()).grow(-6);

    for (int page = 0; page < pages(card); page++) {
      List<Pdf.Letter> letters = card.letters(page);
      assertThat(letters).allMatch(letter -> inside.contains(letter.box()));
      assertThat(letters).allMatch(letter -> letter.size() >= 6.99);
      assertThat(SheetWordsTest.overlapping(letters)).isEmpty();
      assertThat(card.lineWidths(page)).allMatch(mm -> mm >= 0.249);
    }
  }

  @ParameterizedTest
  @EnumSource
  void aLongNameIsToldInFull(CardPaper paper) throws IOException {
    assertThat(Cards.print(Cards.SHOWN, CardForm.CARD, paper, LENGTHY).text())
        .contains(LENGTHY.name().orElseThrow(), LENGTHY.contact().orElseThrow());
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
  void aFewMoreLinesThanAPageAreFittedInRatherThanSpilledOntoASecond() throws IOException {
    Visit visit = Cards.NOT_SHOWN.last();
    List<Change> two = Records.full().last().changes().subList(0, 2);
    BowRecord record =
        new BowRecord(Cards.NOT_SHOWN.bow(), List.of(new VisitLike(visit).changes(two).visit()));

    Pdf card = Cards.print(record);

    assertThat(pages(card)).isEqualTo(1);
    assertThat(visit.measures()).allMatch(measure -> measure.left().isEmpty());
    assertThat(card.text())
        .contains(visit.measures().stream().map(Measure::label).toList())
        .contains("An empty line: not measured.");
    assertThat(card.lineWidths(0).stream().filter(mm -> Math.abs(mm - 0.25) < 0.001))
        .hasSizeGreaterThanOrEqualTo(visit.measures().size());
  }

  @ParameterizedTest(name = "{0}, {1}, {2}")
  @MethodSource("fullest")
  void nothingIsDrawnInTheOuter6Millimetres(
      String name, CardForm form, CardPaper paper, BowRecord record) throws IOException {
    Pdf card = Cards.print(record, form, paper, LENGTHY);
    int margin = (int) (6 / 25.4 * DPI);

    for (int page = 0; page < pages(card); page++) {
      BufferedImage picture = card.grey(page, DPI);
      int inked = 0;
      for (int y = 0; y < picture.getHeight(); y++) {
        boolean across = y < margin || y >= picture.getHeight() - margin;
        for (int x = 0; x < picture.getWidth(); x++) {
          if (across || x < margin || x >= picture.getWidth() - margin) {
            inked += picture.getRaster().getSample(x, y, 0) == 255 ? 0 : 1;
          }
        }
      }
      assertThat(inked).isZero();
    }
  }

  static Stream<Arguments> fullest() {
    return cards().filter(card -> List.of("full", "long").contains(card.get()[0]));
  }

  private static int pages(Pdf card) throws IOException {
    try (PDDocument document = card.open()) {
      return document.getNumberOfPages();
    }
  }

  private static PDRectangle box(CardPaper paper) throws IOException {
    try (PDDocument document = Cards.print(Cards.SHOWN, CardForm.CARD, paper, Shop.NONE).open()) {
      return document.getPage(0).getMediaBox();
    }
  }
}
