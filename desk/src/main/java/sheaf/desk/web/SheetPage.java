package sheaf.desk.web;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import sheaf.core.answer.Answer;
import sheaf.core.answer.Answers;
import sheaf.core.answer.Said;
import sheaf.core.job.JobId;
import sheaf.core.job.SheetCode;
import sheaf.core.layout.Layout;
import sheaf.core.layout.Layouts;
import sheaf.core.layout.SheetKind;
import sheaf.core.picture.Picture;
import sheaf.core.reading.Hole;
import sheaf.core.reading.PageReading;
import sheaf.core.reading.Reason;
import sheaf.core.result.JobSummary;
import sheaf.core.result.PairResult;
import sheaf.desk.store.Store;
import sheaf.desk.web.http.Refusal;
import sheaf.desk.web.http.Reply;
import sheaf.desk.web.http.Request;
import sheaf.desk.web.view.HoleRow;
import sheaf.desk.work.SheetsOfJob;

/** One sheet: its picture with the holes on it, to move, add, take away and name. */
final class SheetPage {

  private static final ObjectMapper MAPPER = new ObjectMapper();
  private static final int KEPT_SECONDS = 3600;

  private final Works works;
  private final Look look;
  private final Stores stores;
  private final SheetImages images;

  SheetPage(Works works, Look look, Stores stores, SheetImages images) {
    this.works = works;
    this.look = look;
    this.stores = stores;
    this.images = images;
  }

  /** A sheet as the machine read it, and with what people said. */
  private record Both(
      JobId job, int number, PageReading machine, PageReading said, JobSummary all) {
    Layout layout() {
      return Layouts.find(said.sheet().orElseThrow().layout()).orElseThrow();
    }

    boolean hasHoles() {
      SheetKind kind = layout().id().kind();
      return layout().target().isPresent() && kind != SheetKind.TEAR;
    }
  }

  private static Both both(Request request, Store store) {
    JobId job = Jobs.id(request);
    Jobs.known(job, store);
    int number = number(request);
    SheetsOfJob sheets = SheetsOfJob.of(job, store);
    return new Both(
        job,
        number,
        sheet(sheets.machine(), number, job),
        sheet(sheets.said(), number, job),
        sheets.said());
  }

  private static int number(Request request) {
    String text = request.part("sheet");
    if (!text.matches("[1-9]\\d{0,2}")) {
      throw Refusal.notFound("There is no sheet of that number.");
    }
    return Integer.parseInt(text);
  }

  private static PageReading sheet(JobSummary sheets, int number, JobId job) {
    return sheets.sheets().stream()
        .filter(page -> page.sheet().orElseThrow().number() == number)
        .findFirst()
        .orElseThrow(
            () ->
                Refusal.notFound(
                    "Sheet %d of job %s has not been read yet: take its picture."
                        .formatted(number, job)));
  }

  Reply show(Request request) {
    return stores.with(
        store -> {
          Both both = both(request, store);
          Map<String, Object> told = new HashMap<>();
          told.put("job", both.job().spoken());
          told.put("number", both.number());
          told.put("kind", both.layout().id().kind().label().replace('-', ' '));
          told.put("state", both.said().state().label());
          told.put("page", both.layout().page());
          told.put("hasHoles", both.hasHoles());
          told.put("comparesHeads", both.layout().id().kind().comparesHeads());
          told.put("holes", rows(both.said()));
          told.put("machine", rows(both.machine()));
          told.put("tears", both.said().tears());
          told.put("answer", SheetAnswers.of(both.said(), both.all()));
          told.put("pictures", pictures(both.said()));
          told.put("doubts", both.said().reasons().stream().map(Reason::message).toList());
          String title = "Sheet " + both.number() + " of job " + both.job().spoken();
          return look.page(request, "sheet", title, "", told);
        });
  }

  private static List<Picture> pictures(PageReading page) {
    SheetKind kind = page.sheet().orElseThrow().layout().kind();
    return kind == SheetKind.PAIR ? Results.pair(PairResult.of(page)).pictures() : List.of();
  }

  private static List<HoleRow> rows(PageReading page) {
    List<HoleRow> rows = new ArrayList<>();
    for (Hole hole : page.holes()) {
      rows.add(
          new HoleRow(
              rows.size() + 1,
              hole.axis().x(),
              hole.axis().y(),
              hole.diameter() / 2,
              hole.head().label(),
              hole.aim().label()));
    }
    return rows;
  }

  /** The flattened picture of the scan that counts. */
  Reply image(Request request) {
    return stores.with(
        store ->
            SheetImages.last(Jobs.id(request), number(request), store)
                .flatMap(reading -> images.of(reading, store))
                .map(jpeg -> new Reply(200, "image/jpeg", jpeg, Map.of()).keptFor(KEPT_SECONDS))
                .orElseThrow(
                    () -> Refusal.notFound("The picture of this sheet is not there any more.")));
  }

  /** What the sheet would come to with some edits, which are not kept. */
  Reply tried(Request request) {
    return stores.with(
        store -> {
          Both both = both(request, store);
          Answers edits = new Answers(answers(request, both));
          PageReading page = edits.over(both.said());
          JobSummary all = new JobSummary(both.job(), List.of(page), List.of());
          ObjectNode json = MAPPER.createObjectNode();
          ArrayNode sentences = json.putArray("answer");
          SheetAnswers.of(page, all).forEach(sentences::add);
          ArrayNode holes = json.putArray("holes");
          for (HoleRow row : rows(page)) {
            holes.add(MAPPER.valueToTree(row));
          }
          json.put("picture", look.text("pictures", Map.of("pictures", pictures(page))));
          return Reply.json(200, json.toString());
        });
  }

  /** Keeps edits: several of the page's script, or one of a form. */
  Reply keep(Request request) {
    return stores.with(
        store -> {
          Both both = both(request, store);
          List<Answer> answers = answers(request, both);
          if (!answers.isEmpty()) {
            store.answer(both.job(), answers, works.program());
          }
          String to = "/job/" + both.job().spoken() + "/sheet/" + both.number();
          return request.byScript() ? Reply.text(to) : Reply.seeOther(to);
        });
  }

  private List<Answer> answers(Request request, Both both) {
    if (!both.hasHoles()) {
      throw new Refusal(400, "Nothing is moved on such a sheet.");
    }
    List<Said> said =
        request.byScript()
            ? HoleEdits.ofScript(request.text(), both.layout())
            : List.of(HoleEdits.ofForm(request.form(), both.layout()));
    Optional<String> who =
        Optional.of(request.visitor().initials()).filter(initials -> !initials.isEmpty());
    return said.stream()
        .map(
            one ->
                new Answer(
                    OptionalInt.of(both.number()),
                    one,
                    who,
                    works.clock().instant(),
                    Optional.empty()))
        .toList();
  }

  /** Where a sheet's own code leads: to the sheet, or to where its picture is taken. */
  Reply byCode(Request request) {
    SheetCode code =
        SheetCode.parse(request.part("code"))
            .orElseThrow(() -> Refusal.notFound("That is no code of a sheet."));
    String job = code.job().spoken();
    return stores.with(
        store -> {
          boolean read =
              store.job(code.job()).stream()
                  .flatMap(stored -> stored.summary().sheets().stream())
                  .anyMatch(page -> page.sheet().orElseThrow().number() == code.number());
          return Reply.seeOther(read ? "/job/" + job + "/sheet/" + code.number() : "/");
        });
  }
}
