package sheaf.forms;

import static org.assertj.core.api.Assertions.assertThat;
import static sheaf.forms.Cards.SHOWN;
import static sheaf.forms.Cards.print;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDEmbeddedFilesNameTreeNode;
import org.junit.jupiter.api.Test;
import sheaf.core.page.Paper;

/** A card as what is kept: the same bytes each time, and the record inside. */
class CardArchiveTest {

  @Test
  void theSameCardHasTheSameBytes() {
    assertThat(print(SHOWN).bytes()).isEqualTo(print(SHOWN).bytes());
  }

  @Test
  void theRecordInsideIsGivenBack() {
    assertThat(carried(print(SHOWN).bytes()))
        .isInstanceOfSatisfying(
            CarriedRecord.Whole.class, whole -> assertThat(whole.json()).isEqualTo(Cards.json()));
  }

  @Test
  void theRecordInsideIsNotTrustedWhenItWasChanged() throws IOException {
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
  void theRecordInsideIsMissedWhenItWasTakenOut() throws IOException {
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
  void theRecordInsideIsNotSoughtInAForeignFile() {
    byte[] sheet = Pdf.of(out -> Backing.write(Paper.A4, 1, out)).bytes();

    assertThat(why(sheet)).contains("no finished card of ours");
    assertThat(why(new byte[] {1, 2, 3})).contains("no PDF that can be opened");
    assertThat(why(new byte[0])).contains("no PDF that can be opened");
  }

  @Test
  void theRecordInsideIsNotSoughtInHalfACard() {
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
