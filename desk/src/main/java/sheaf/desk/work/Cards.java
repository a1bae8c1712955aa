package sheaf.desk.work;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import sheaf.core.page.Paper;
import sheaf.core.record.BowRecord;
import sheaf.core.record.Visit;
import sheaf.desk.json.RecordJson;
import sheaf.desk.profile.ShopProfile;
import sheaf.desk.store.StoredJob;
import sheaf.forms.CardDetails;
import sheaf.forms.CardForm;
import sheaf.forms.CardPaper;
import sheaf.forms.FinishedCard;

/** Finished cards as the shop profile wants them. */
public final class Cards {

  private Cards() {}

  /** The paper of a form in a printer that holds a page. */
  public static CardPaper paper(CardForm form, Paper page) {
    boolean letter = page.small() == Paper.LETTER;
    if (form == CardForm.CARD) {
      return letter ? CardPaper.HALF_LETTER : CardPaper.A5;
    }
    return letter ? CardPaper.LETTER : CardPaper.A4;
  }

  /** A card as a PDF. */
  public static byte[] pdf(
      BowRecord record, StoredJob job, CardForm form, ShopProfile profile, LocalDate printed) {
    CardDetails details =
        new CardDetails(
            form,
            paper(form, profile.paper()),
            printed,
            profile.shop(),
            profile.recordAddress().map(to -> to.link(job.key())));
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try {
      FinishedCard.write(record, details, RecordJson.line(record).getBytes(UTF_8), out);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return out.toByteArray();
  }

  /**
   * A record without anything that tells a person: no customer, no technician, nothing written
   * freely.
   */
  public static BowRecord withoutPeople(BowRecord record) {
    List<Visit> visits = record.visits().stream().map(Cards::withoutPeople).toList();
    return new BowRecord(record.bow(), visits);
  }

  private static Visit withoutPeople(Visit visit) {
    return new Visit(
        visit.job(),
        visit.day(),
        Optional.empty(),
        Optional.empty(),
        visit.sheets(),
        visit.inspection(),
        visit.measures(),
        visit.changes(),
        visit.tears(),
        visit.line(),
        visit.pairs(),
        visit.groups(),
        List.of());
  }
}
