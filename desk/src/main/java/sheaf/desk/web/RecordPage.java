package sheaf.desk.web;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import sheaf.core.job.JobId;
import sheaf.core.job.RecordKey;
import sheaf.core.record.BowRecord;
import sheaf.desk.profile.ShopProfile;
import sheaf.desk.store.Store;
import sheaf.desk.store.StoredJob;
import sheaf.desk.web.http.AttemptLimit;
import sheaf.desk.web.http.Refusal;
import sheaf.desk.web.http.Reply;
import sheaf.desk.web.http.Request;
import sheaf.desk.work.Cards;
import sheaf.forms.CardForm;

/** The customer's record behind its secret address: read only, and without anybody's name. */
final class RecordPage {

  private final Works works;
  private final Look look;
  private final Stores stores;
  private final AttemptLimit guesses;

  RecordPage(Works works, Look look, Stores stores, AttemptLimit guesses) {
    this.works = works;
    this.look = look;
    this.stores = stores;
    this.guesses = guesses;
  }

  /** The page's address ends in a slash, so that the card lies beside it wherever it is put. */
  Reply slash(Request request) {
    open(request);
    return Reply.seeOther("/r/" + request.part("key") + "/");
  }

  Reply show(Request request) {
    StoredJob job = open(request);
    return secret(Reply.html(200, html(job, works.profile().get(), look, "")));
  }

  /**
   * The page of a record.
   *
   * @param digest of what it is made from, for those who publish it; empty for none
   */
  static String html(StoredJob job, ShopProfile profile, Look look, String digest) {
    BowRecord record = Cards.withoutPeople(job.record());
    Map<String, Object> told = new HashMap<>();
    told.put("record", record);
    told.put("shop", profile.shop());
    told.put("results", Results.of(record.last()));
    told.put("measures", Results.measures(record));
    told.put("changes", Results.changes(record.last()));
    told.put("digest", digest);
    return look.text("record", told);
  }

  Reply card(Request request) {
    StoredJob job = open(request);
    return secret(
        Reply.file("application/pdf", card(job, works.profile().get(), today(job)), "card.pdf"));
  }

  /** The finished card without names. */
  static byte[] card(StoredJob job, ShopProfile profile, LocalDate day) {
    return Cards.pdf(Cards.withoutPeople(job.record()), job, CardForm.CARD, profile, day);
  }

  private LocalDate today(StoredJob job) {
    return job.record().last().day().orElse(LocalDate.now(works.clock()));
  }

  private static Reply secret(Reply reply) {
    return reply.with("Referrer-Policy", "no-referrer");
  }

  private StoredJob open(Request request) {
    guesses.check(request.address());
    String text = request.part("key");
    RecordKey key;
    try {
      key = new RecordKey(text);
    } catch (IllegalArgumentException e) {
      throw missed(request);
    }
    return stores.with(
        store -> {
          JobId job = store.jobOf(key).orElseThrow(() -> missed(request));
          return known(job, key, store);
        });
  }

  private static StoredJob known(JobId job, RecordKey key, Store store) {
    if (!store.recordKey(job).filter(key::equals).isPresent()) {
      throw new Refusal(410, "This address was replaced: ask the shop for the new one.");
    }
    return Jobs.known(job, store);
  }

  private Refusal missed(Request request) {
    guesses.failed(request.address());
    return Refusal.notFound("There is no such record.");
  }
}
