package sheaf.forms;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import sheaf.core.page.MmRect;

/** The shop's logo on a card. */
class CardLogoTest {

  private static final int DPI = 150;

  static Stream<Arguments> logosOnCards() {
    return Stream.of(
            Logos.png(800, 80), Logos.png(400, 200), Logos.png(300, 300), Logos.png(90, 900))
        .flatMap(
            logo ->
                Stream.of(CardForm.values())
                    .flatMap(
                        form ->
                            (form == CardForm.CARD
                                    ? Stream.of(CardPaper.HALF_LETTER, CardPaper.A5)
                                    : Stream.of(CardPaper.LETTER, CardPaper.A4))
                                .map(paper -> Arguments.of(logo, form, paper))));
  }

  @ParameterizedTest(name = "{0}, {1}, {2}")
  @MethodSource("logosOnCards")
  void aLogoKeepsItsShapeAndStaysClearOfTheWords(Logo logo, CardForm form, CardPaper paper)
      throws IOException {
    Pdf card = Cards.print(Records.full(), form, paper, with(logo));
    MmRect place = card.pictures(0).get(0);

    assertThat(card.pictures(0)).hasSize(1);
    assertThat(place.width() / place.height())
        .isEqualTo((double) logo.widthPx() / logo.heightPx(), within(0.01));
    assertThat(new MmRect(0, 0, paper.width(), paper.height()).grow(-6).contains(place)).isTrue();
    assertThat(card.letters(0)).noneMatch(letter -> letter.box().overlaps(place));
    assertThat(Math.max(place.width(), place.height())).isGreaterThan(8);
  }

  @ParameterizedTest
  @EnumSource
  void aLogoIsToldToThoseWhoDoNotSeeIt(CardForm form) throws IOException {
    Pdf card = Cards.print(Cards.SHOWN, form, CardPaper.A4, with(Logos.png(300, 300)));
    try (PDDocument document = card.open()) {
      assertThat(figures(document.getDocumentCatalog().getStructureTreeRoot()))
          .contains("logo of Bow bench");
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8})
  void aJpegIsTurnedAsItsCameraSays(int orientation) throws IOException {
    BufferedImage upright = Logos.drawn(400, 240, BufferedImage.TYPE_INT_RGB);
    Logo logo = Logos.jpeg(stored(upright, orientation), orientation);

    Pdf card = Cards.print(Cards.SHOWN, CardForm.SHOP_COPY, CardPaper.A4, with(logo));
    MmRect place = card.pictures(0).get(0);
    BufferedImage page = card.colour(0, DPI);

    assertThat(place.width() / place.height()).isEqualTo(400.0 / 240, within(0.01));
    assertThat(tone(page, place, 0.1, 0.1)).isEqualTo("blue");
    assertThat(tone(page, place, 0.9, 0.1)).isEqualTo("white");
    assertThat(tone(page, place, 0.1, 0.9)).isEqualTo("white");
    assertThat(tone(page, place, 0.5, 0.08)).isEqualTo("red");
  }

  @Test
  void aGreyLogoIsAsDarkAsItIsStored() throws IOException {
    BufferedImage grey = new BufferedImage(300, 300, BufferedImage.TYPE_BYTE_GRAY);
    for (int i = 0; i < 300 * 300; i++) {
      grey.getRaster().setSample(i % 300, i / 300, 0, 128);
    }

    Pdf card =
        Cards.print(Cards.SHOWN, CardForm.SHOP_COPY, CardPaper.A4, with(Logos.jpeg(grey, 1)));
    MmRect place = card.pictures(0).get(0);

    assertThat(rgb(card.colour(0, DPI), place, 0.5, 0.5) & 0xFF).isBetween(126, 130);
  }

  @Test
  void aLogoOfMorePixelsThanPrintShowsMakesNoLargeCard() {
    Logo large = Logos.png(4000, 3000);

    assertThat(Cards.print(Cards.SHOWN, CardForm.CARD, CardPaper.A5, with(large)).bytes())
        .hasSizeLessThan(150_000);
  }

  private static Shop with(Logo logo) {
    return new Shop(Optional.of("Bow bench"), Optional.of("Mill Lane 4"), Optional.of(logo));
  }

  /**
   * The pixels as a camera stores them, by where the tag says that stored row 0 and column 0 are in
   * the upright picture (CIPA DC-008, 4.6.5.1.6): for 6, at its right and at its top.
   */
  private static BufferedImage stored(BufferedImage upright, int orientation) {
    int width = upright.getWidth();
    int height = upright.getHeight();
    boolean turned = orientation >= 5;
    BufferedImage stored =
        new BufferedImage(turned ? height : width, turned ? width : height, upright.getType());
    for (int row = 0; row < stored.getHeight(); row++) {
      for (int column = 0; column < stored.getWidth(); column++) {
        int rgb =
            switch (orientation) {
              case 1 -> upright.getRGB(column, row);
              case 2 -> upright.getRGB(width - 1 - column, row);
              case 3 -> upright.getRGB(width - 1 - column, height - 1 - row);
              case 4 -> upright.getRGB(column, height - 1 - row);
              case 5 -> upright.getRGB(row, column);
              case 6 -> upright.getRGB(width - 1 - row, column);
              case 7 -> upright.getRGB(width - 1 - row, height - 1 - column);
              default -> upright.getRGB(row, height - 1 - column);
            };
        stored.setRGB(column, row, rgb);
      }
    }
    return stored;
  }

  private static int rgb(BufferedImage page, MmRect place, double across, double down) {
    double perMm = DPI / 25.4;
    return page.getRGB(
        (int) ((place.x() + across * place.width()) * perMm),
        (int) ((place.y() + down * place.height()) * perMm));
  }

  private static String tone(BufferedImage page, MmRect place, double across, double down) {
    int rgb = rgb(page, place, across, down);
    boolean red = (rgb >> 16 & 0xFF) > 128;
    boolean green = (rgb >> 8 & 0xFF) > 128;
    boolean blue = (rgb & 0xFF) > 128;
    return red && green && blue ? "white" : red && !green ? "red" : blue ? "blue" : "other";
  }

  private static List<String> figures(PDStructureNode node) {
    return node.getKids().stream()
        .filter(PDStructureElement.class::isInstance)
        .map(PDStructureElement.class::cast)
        .flatMap(
            part ->
                part.getStructureType().equals("Figure")
                    ? Stream.of(part.getAlternateDescription())
                    : figures(part).stream())
        .toList();
  }
}
