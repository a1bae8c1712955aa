package sheaf.desk.web;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import sheaf.core.answer.History;
import sheaf.core.answer.ReadAt;
import sheaf.core.answer.Revision;
import sheaf.core.job.JobId;
import sheaf.core.job.SheetCode;
import sheaf.core.reading.PageReading;
import sheaf.core.result.Overview;
import sheaf.core.tune.Plan;
import sheaf.desk.report.HistoryText;
import sheaf.desk.report.PlanText;
import sheaf.desk.store.KeptReading;
import sheaf.desk.store.Store;
import sheaf.desk.store.StoredJob;
import sheaf.desk.web.http.Refusal;
import sheaf.desk.web.http.Reply;
import sheaf.desk.web.http.Request;
import sheaf.desk.web.view.SheetRow;
import sheaf.desk.web.view.Told;
import sheaf.desk.work.Cards;
import sheaf.desk.work.NextMove;
import sheaf.forms.CardForm;

/** A job: its papers, what they came to, and what is next. */
final class JobPage {

  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("d MMM HH:mm", Locale.ENGLISH);

  private final Works works;
  private final Look look;
  private final Stores stores;

  JobPage(Works works, Look look, Stores stores) {
    this.works = works;
    this.look = look;
    this.stores = stores;
  }

  Reply show(Request request) {
    JobId job = Jobs.id(request);
    return stores.with(
        store -> {
          StoredJob stored = Jobs.known(job, store);
          Optional<Overview> overview = Jobs.overview(job, store);
          Plan plan = NextMove.of(job, stored, store);
          Map<String, Object> told = new HashMap<>();
          told.put("job", job.spoken());
          told.put("record", stored.record());
          told.put("overview", overview);
          told.put("imported", stored.importCounts());
          told.put("sheets", sheets(stored, overview));
          told.put("results", Results.of(stored.record().last()));
          told.put("measures", Results.measures(stored.record()));
          told.put("changes", Results.changes(stored.record().last()));
          told.put("headline", PlanText.headline(plan));
          told.put("remarks", plan.remarks());
          told.put("story", story(job, store));
          told.put("link", link(stored));
          return look.page(request, "job", "Job " + job.spoken(), "", told);
        });
  }

  private Optional<String> link(StoredJob stored) {
    return works.profile().get().recordAddress().map(to -> to.link(stored.key()));
  }

  /** The papers that were read and those that are missing, by number. */
  static List<SheetRow> sheets(StoredJob stored, Optional<Overview> overview) {
    List<SheetRow> rows = new ArrayList<>();
    for (PageReading page : stored.summary().sheets()) {
      SheetCode code = page.sheet().orElseThrow();
      rows.add(
          new SheetRow(
              code.number(),
              code.layout().kind().label().replace('-', ' '),
              page.state().label(),
              SheetAnswers.found(page)));
    }
    overview.stream()
        .flatMap(job -> job.missing().stream())
        .forEach(number -> rows.add(new SheetRow(number, "", "missing", "")));
    rows.sort(Comparator.comparingInt(SheetRow::number));
    return rows;
  }

  private List<Told> story(JobId job, Store store) {
    List<ReadAt> readings = store.everyReading(job).stream().map(KeptReading::read).toList();
    return History.of(readings, store.answers(job)).stream()
        .map(field -> new Told(field.get(0).label(), field.stream().map(this::told).toList()))
        .toList();
  }

  private String told(Revision one) {
    return TIME.format(one.when().atZone(works.clock().getZone())) + ": " + HistoryText.told(one);
  }

  /** The finished card, which is noted as made. */
  Reply card(Request request) {
    JobId job = Jobs.id(request);
    CardForm form = form(request.form().get("form"));
    return stores.with(
        store -> {
          StoredJob stored = Jobs.known(job, store);
          byte[] pdf =
              Cards.pdf(
                  stored.record(),
                  stored,
                  form,
                  works.profile().get(),
                  LocalDate.now(works.clock()));
          store.cardMade(job, works.program());
          return Reply.file("application/pdf", pdf, form.label() + "-" + job.spoken() + ".pdf");
        });
  }

  private static CardForm form(String label) {
    for (CardForm form : CardForm.values()) {
      if (form.label().equals(label)) {
        return form;
      }
    }
    throw new Refusal(400, "There is no such card: go back and choose one.");
  }

  /** Another key for the record. */
  Reply newKey(Request request) {
    JobId job = Jobs.id(request);
    return stores.with(
        store -> {
          Jobs.known(job, store);
          store.newRecordKey(job, works.program());
          return Reply.seeOther("/job/" + job.spoken() + "#record");
        });
  }
}
