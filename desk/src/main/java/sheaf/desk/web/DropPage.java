package sheaf.desk.web;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sheaf.core.job.SheetCode;
import sheaf.core.layout.SheetKind;
import sheaf.core.reading.PageReading;
import sheaf.core.reading.ReadingState;
import sheaf.core.reading.Reason;
import sheaf.desk.report.PlanText;
import sheaf.desk.store.Store;
import sheaf.desk.store.StoredJob;
import sheaf.desk.web.http.Refusal;
import sheaf.desk.web.http.Reply;
import sheaf.desk.web.http.Request;
import sheaf.desk.web.http.Token;
import sheaf.desk.web.http.Uploads;
import sheaf.desk.web.view.Dropped;
import sheaf.desk.work.NextMove;

/** Where papers are dropped, and what is to be done next. */
final class DropPage {

  private static final int MOST_JOBS = 30;

  private final Works works;
  private final Look look;
  private final Stores stores;
  private final Taking taking;

  DropPage(Works works, Look look, Stores stores, Taking taking) {
    this.works = works;
    this.look = look;
    this.stores = stores;
    this.taking = taking;
  }

  Reply show(Request request) {
    return stores.with(
        store ->
            look.page(
                request,
                "home",
                "Drop papers",
                "/",
                Map.of("open", store.find(List.of(), true, MOST_JOBS))));
  }

  Reply take(Request request) {
    List<Dropped> dropped = new ArrayList<>();
    Token token = new Token(request.visitor().token());
    works.home().create();
    try (Uploads uploads = Uploads.of(request, works.home().path(), token)) {
      if (uploads.files().isEmpty()) {
        throw new Refusal(400, "No file was chosen: take a picture or choose a scan first.");
      }
      for (Uploads.Uploaded file : uploads.files()) {
        dropped.add(told(file.name(), taking.take(file)));
      }
    }
    return request.byScript()
        ? look.part("dropped", Map.of("files", dropped))
        : look.page(request, "drops", "Papers read", "/", Map.of("files", dropped));
  }

  private Dropped told(String name, List<PageReading> pages) {
    return stores.with(
        store -> new Dropped(name, pages.stream().map(page -> told(page, store)).toList()));
  }

  private static Dropped.Page told(PageReading page, Store store) {
    if (page.sheet().isEmpty() || page.state() == ReadingState.REFUSED) {
      return new Dropped.Page(
          "refused", "", 0, "", "", List.of(), "", messages(page.reasons(), ReadingState.REFUSED));
    }
    SheetCode code = page.sheet().get();
    Optional<StoredJob> job = store.job(code.job());
    // With what people said of the sheet before, when it was scanned again.
    PageReading now =
        job.flatMap(
                stored ->
                    stored.summary().sheets().stream()
                        .filter(sheet -> sheet.sheet().orElseThrow().number() == code.number())
                        .findFirst())
            .orElse(page);
    SheetKind kind = code.layout().kind();
    return new Dropped.Page(
        now.state().label(),
        code.job().spoken(),
        code.number(),
        kind.label().replace('-', ' '),
        SheetAnswers.found(now),
        job.map(stored -> SheetAnswers.of(now, stored.summary())).orElse(List.of()),
        kind == SheetKind.PAIR
            ? job.map(s -> PlanText.headline(NextMove.of(code.job(), s, store))).orElse("")
            : "",
        messages(now.reasons(), ReadingState.CHECK));
  }

  private static List<String> messages(List<Reason> reasons, ReadingState ending) {
    return reasons.stream()
        .filter(reason -> reason.code().ending() == ending)
        .map(Reason::message)
        .toList();
  }
}
