package sheaf.forms;

import java.io.IOException;
import java.io.OutputStream;
import java.util.Optional;
import sheaf.core.record.BowRecord;
import sheaf.forms.card.CardHead;
import sheaf.forms.card.CardPages;
import sheaf.forms.card.WalletTag;
import sheaf.forms.draw.ArchivalDocument;
import sheaf.forms.draw.EmbeddedFile;

/**
 * The card that a customer keeps: what the tune came to, and what restores the bow.
 *
 * <p>It conforms to PDF/A-3b and PDF/UA-1 and carries the record that it was made from, so that the
 * record can be restored from the card alone.
 */
public final class FinishedCard {

  private static final String RECORD = "sheaf-record.json";

  private FinishedCard() {}

  /**
   * Writes a PDF of one page, or of more where the record has much to say.
   *
   * @param json the record for programs, which the card carries inside
   * @throws IllegalArgumentException when the record link is too long for a code, about 150
   *     characters
   */
  public static void write(BowRecord record, CardDetails details, byte[] json, OutputStream out)
      throws IOException {
    String job = record.last().job().spoken();
    EmbeddedFile inside =
        new EmbeddedFile(RECORD, "application/json", "The record of the bow of job " + job, json);
    String title = details.form().title() + ", job " + job;
    Shop shop = details.shop();
    CardHead head =
        new CardHead(
            details.form().title(),
            shop.name(),
            shop.contact(),
            shop.logo().isPresent() ? Optional.of(shop.logo().get().picture()) : Optional.empty(),
            details.printed(),
            details.recordLink().orElse(record.last().job().text()),
            details.recordLink().isPresent() ? "Your record" : "Job id");
    try (ArchivalDocument document = new ArchivalDocument(title, details.printed(), inside)) {
      CardPaper paper = details.paper();
      if (details.form() == CardForm.WALLET_TAG) {
        WalletTag.draw(document, record, head, paper.width(), paper.height());
      } else {
        boolean asFound = details.form() == CardForm.SHOP_COPY;
        new CardPages(document, paper.width(), paper.height(), asFound).draw(record, head);
      }
      document.write(out);
    }
  }

  /**
   * The record that a card carries.
   *
   * @param pdf a file that may be a card
   * @return what {@link #write} was given, unless the file is no card or is damaged
   */
  public static CarriedRecord carried(byte[] pdf) {
    return CarriedRecord.of(pdf, RECORD);
  }
}
