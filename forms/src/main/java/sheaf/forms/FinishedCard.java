package sheaf.forms;

import java.io.IOException;
import java.io.OutputStream;
import sheaf.core.result.JobSummary;
import sheaf.forms.card.CardHead;
import sheaf.forms.card.CardPage;
import sheaf.forms.draw.Document;

/** The card that a customer keeps: what the tune came to, and what restores the bow. */
public final class FinishedCard {

  private FinishedCard() {}

  /**
   * Writes a PDF of one page.
   *
   * @throws IllegalArgumentException when the record link is too long for a code, about 150
   *     characters
   */
  public static void write(JobSummary job, CardDetails details, OutputStream out)
      throws IOException {
    CardHead head =
        new CardHead(
            job.job(),
            details.shop(),
            details.printed(),
            details.recordLink().orElse(job.job().text()),
            details.recordLink().isPresent() ? "Your record" : "Job id");
    CardPaper paper = details.paper();
    String title = "Finished card, job " + job.job().spoken();
    try (Document document = new Document(title, job + " " + details)) {
      document.draw(
          document.page(paper.width(), paper.height()),
          pen -> new CardPage(pen, paper.width(), paper.height()).draw(job, head));
      document.write(out);
    }
  }
}
