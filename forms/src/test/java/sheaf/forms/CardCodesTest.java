package sheaf.forms;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static sheaf.forms.Cards.LINK;

import java.io.IOException;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import sheaf.core.page.MmRect;

/** Both codes of a card: what a phone reads from it, and what stays a secret. */
class CardCodesTest {

  private static final int DPI = 150;

  @Test
  void theCodeOpensTheRecordAndTheLinkIsNowhereInTheWords() throws IOException {
    Pdf card = Cards.printLinked(Cards.NOT_SOUND, CardPaper.A5, LINK);

    assertThat(code(card, CardPaper.A5)).contains(LINK);
    assertThat(card.text()).contains("Your record").doesNotContain("records.example");
  }

  @Test
  void withoutARecordLinkTheCodeSaysTheJob() throws IOException {
    Pdf card = Cards.print(Cards.SHOWN);

    assertThat(code(card, CardPaper.HALF_LETTER)).contains(Jobs.JOB.text());
    assertThat(card.text()).contains("Job id");
  }

  @Test
  void aLinkTooLongForTheCodeIsRefusedWithoutRepeatingIt() {
    String link = LINK + "secret".repeat(60);

    assertThatThrownBy(() -> Cards.printLinked(Cards.SHOWN, CardPaper.A5, link))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("characters")
        .hasMessageNotContaining("secret");
  }

  @Test
  void theKeyNumbersAreInACodeThatAnyPhoneShows() throws IOException {
    // Read by ZXing, a reader that phones use.
    Pdf card = Cards.printLinked(Records.full(), CardPaper.A5, LINK);
    MmRect left = new MmRect(CardPaper.A5.width() - 69, 0, 31, 38);

    assertThat(Pdf.code(card.grey(0, 200), 200, left).orElseThrow())
        .startsWith("Job " + Jobs.JOB.spoken() + " as left\n2026-03-09\n")
        .contains("Draw length (ATA) 29 6/16 in\n")
        .doesNotContain("R. K.", "records.example");
  }

  private static Optional<String> code(Pdf card, CardPaper paper) throws IOException {
    MmRect corner = new MmRect(paper.width() - 38.5, 0, 38.5, 38);
    return Pdf.code(card.grey(0, DPI), DPI, corner);
  }
}
