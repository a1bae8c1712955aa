package sheaf.forms;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.verapdf.core.VeraPDFException;
import org.verapdf.gf.foundry.VeraGreenfieldFoundryProvider;
import org.verapdf.pdfa.Foundries;
import org.verapdf.pdfa.PDFAParser;
import org.verapdf.pdfa.PDFAValidator;
import org.verapdf.pdfa.flavours.PDFAFlavour;
import org.verapdf.pdfa.results.TestAssertion;
import sheaf.core.record.BowRecord;

/** Cards against the two standards, as veraPDF, the validator of the PDF Association, sees them. */
class ArchivalCardTest {

  private static final Shop SHOP =
      new Shop(
          Optional.of("Łuk 弓 & co"), Optional.of("Mill Lane 4"), Optional.of(Logos.png(240, 90)));

  @BeforeAll
  static void validator() {
    VeraGreenfieldFoundryProvider.initialise();
  }

  static Stream<Arguments> records() {
    return Records.all().entrySet().stream().map(e -> Arguments.of(e.getKey(), e.getValue()));
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("records")
  void everyCardIsArchivalAndAccessible(String name, BowRecord record) throws Exception {
    for (CardForm form : CardForm.values()) {
      CardPaper paper = form == CardForm.CARD ? CardPaper.HALF_LETTER : CardPaper.A4;
      Pdf card = Cards.print(record, form, paper, SHOP);

      assertThat(failures(card, PDFAFlavour.PDFA_3_B)).as("PDF/A-3b, " + form).isEmpty();
      assertThat(failures(card, PDFAFlavour.PDFUA_1)).as("PDF/UA-1, " + form).isEmpty();
    }
  }

  private static List<String> failures(Pdf pdf, PDFAFlavour flavour) throws Exception {
    try (PDFAParser parser =
            Foundries.defaultInstance()
                .createParser(new ByteArrayInputStream(pdf.bytes()), flavour);
        PDFAValidator validator = Foundries.defaultInstance().createValidator(flavour, false)) {
      return validator.validate(parser).getTestAssertions().stream()
          .filter(assertion -> assertion.getStatus() == TestAssertion.Status.FAILED)
          .map(assertion -> assertion.getRuleId() + " " + assertion.getMessage())
          .distinct()
          .toList();
    } catch (VeraPDFException e) {
      return List.of(e.toString());
    }
  }
}
