package sheaf.desk.web;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import sheaf.core.answer.Answer;
import sheaf.core.answer.Question;
import sheaf.core.answer.Question.About;
import sheaf.core.answer.Said;
import sheaf.core.answer.TypedValue.NotUnderstoodException;
import sheaf.core.job.JobId;
import sheaf.core.layout.Field;
import sheaf.core.layout.Layout;
import sheaf.core.layout.Layouts;
import sheaf.core.page.MmPoint;
import sheaf.core.reading.Head;
import sheaf.core.reading.PageReading;
import sheaf.core.reading.Reason;
import sheaf.core.result.Overview;
import sheaf.desk.store.Store;
import sheaf.desk.web.http.Reply;
import sheaf.desk.web.http.Request;
import sheaf.desk.web.http.Words;
import sheaf.desk.web.view.Doubt;
import sheaf.desk.work.SheetsOfJob;

/** The queue of doubts across jobs, one at a time. */
final class DoubtsPage {

  private static final int MOST_JOBS = 200;
  private static final String BLANK = "blank";

  private final Works works;
  private final Look look;
  private final Stores stores;

  DoubtsPage(Works works, Look look, Stores stores) {
    this.works = works;
    this.look = look;
    this.stores = stores;
  }

  /** A question, of which job, and how many there are in all. */
  private record Asked(JobId job, Question question, PageReading page) {}

  Reply show(Request request) {
    return stores.with(store -> ask(request, store, request.query(), ""));
  }

  private Reply ask(Request request, Store store, Words words, String wrong) {
    Optional<JobId> only = words.find("job").map(Jobs::id);
    int skip = skipped(words);
    List<Overview> waiting = waiting(store);
    Map<String, Object> told = new HashMap<>();
    Optional<Asked> next = next(only, skip, waiting, store);
    told.put("doubt", next.map(DoubtsPage::doubt));
    told.put("left", only.map(job -> questions(job, store).size()).orElse(0));
    told.put("waiting", waiting.size());
    told.put("skip", skip);
    told.put("only", only.map(JobId::spoken).orElse(""));
    told.put("wrong", wrong);
    return look.page(request, "doubts", "Doubts", "/doubts", told);
  }

  private static int skipped(Words words) {
    return words
        .find("skip")
        .filter(text -> text.matches("\\d{1,4}"))
        .map(Integer::parseInt)
        .orElse(0);
  }

  private static List<Overview> waiting(Store store) {
    return store.find(List.of(Overview.State.DOUBTS.label()), true, MOST_JOBS).stream()
        .filter(job -> job.state() == Overview.State.DOUBTS)
        .toList();
  }

  /** The first question behind those that were skipped. */
  private static Optional<Asked> next(
      Optional<JobId> only, int skip, List<Overview> waiting, Store store) {
    List<JobId> jobs =
        only.map(List::of).orElseGet(() -> waiting.stream().map(Overview::job).toList());
    int left = skip;
    for (JobId job : jobs) {
      List<Asked> questions = questions(job, store);
      if (left < questions.size()) {
        return Optional.of(questions.get(left));
      }
      left -= questions.size();
    }
    return Optional.empty();
  }

  private static List<Asked> questions(JobId job, Store store) {
    SheetsOfJob sheets = SheetsOfJob.of(job, store);
    List<Asked> all = new ArrayList<>();
    for (Question question : sheets.questions()) {
      sheets.said().sheets().stream()
          .filter(page -> page.sheet().orElseThrow().number() == question.sheet())
          .findFirst()
          .ifPresent(page -> all.add(new Asked(job, question, page)));
    }
    return all;
  }

  private static Doubt doubt(Asked asked) {
    Question question = asked.question();
    Layout layout = Layouts.find(asked.page().sheet().orElseThrow().layout()).orElseThrow();
    return new Doubt(
        asked.job().spoken(),
        question.sheet(),
        layout.id().kind().label().replace('-', ' '),
        key(question),
        question.words(),
        question.look(),
        layout.page(),
        question.doubts().stream().map(Reason::place).flatMap(Optional::stream).toList(),
        question.offer().orElse(""),
        choices(question.about()),
        question.about() instanceof About.OfField of && of.field() instanceof Field.Number);
  }

  /** Words and place of a question tell it from the others; a digest of them is short. */
  private static String key(Question question) {
    StringBuilder all = new StringBuilder();
    for (Reason doubt : question.doubts()) {
      MmPoint place = doubt.place().orElse(new MmPoint(0, 0));
      all.append(doubt.message()).append(place.x()).append(' ').append(place.y());
    }
    return Digests.shortOf(all.toString());
  }

  private static List<Doubt.Choice> choices(About about) {
    List<Doubt.Choice> choices = new ArrayList<>();
    if (about instanceof About.OfField of) {
      if (of.field() instanceof Field.Choice choice) {
        choice.options().stream()
            .map(Field.Option::value)
            .filter(value -> !of.guess().equals(value))
            .forEach(value -> choices.add(new Doubt.Choice(value, value)));
      }
      choices.add(new Doubt.Choice(BLANK, "nothing written"));
    } else if (about instanceof About.OfHole of) {
      if (of.hole().head() != Head.FIELD) {
        choices.add(new Doubt.Choice("field", "field point"));
      }
      if (of.hole().head() != Head.BROADHEAD) {
        choices.add(new Doubt.Choice("broadhead", "broadhead"));
      }
      choices.add(new Doubt.Choice("none", "no hole"));
    } else if (about instanceof About.OfTear) {
      choices.add(new Doubt.Choice("none", "no tear"));
    }
    return choices;
  }

  /** Takes an answer, then asks the next. */
  Reply take(Request request) {
    Words form = request.form();
    JobId job = Jobs.id(form.get("job"));
    return stores.with(
        store -> {
          Optional<Question> question =
              questions(job, store).stream()
                  .map(Asked::question)
                  .filter(one -> key(one).equals(form.get("key")))
                  .filter(one -> String.valueOf(one.sheet()).equals(form.get("sheet")))
                  .findFirst();
          try {
            if (question.isPresent()) {
              keep(job, question.get(), said(question.get(), form), request, store);
            }
          } catch (NotUnderstoodException e) {
            return ask(request, store, form, "It " + e.getMessage() + ".");
          }
          String only = form.find("only").map(text -> "&job=" + Jobs.id(text).spoken()).orElse("");
          return Reply.seeOther("/doubts?skip=" + skipped(form) + only);
        });
  }

  private static List<Said> said(Question question, Words form) throws NotUnderstoodException {
    Optional<String> tapped = form.find("answer");
    if (tapped.equals(Optional.of("accept"))) {
      return question.accepted();
    }
    String text = tapped.or(() -> form.find("typed")).orElse("");
    return text.isEmpty() ? question.accepted() : List.of(question.typed(text));
  }

  private void keep(JobId job, Question question, List<Said> said, Request request, Store store) {
    Optional<String> who =
        Optional.of(request.visitor().initials()).filter(initials -> !initials.isEmpty());
    store.answer(
        job,
        said.stream()
            .map(
                one ->
                    new Answer(
                        OptionalInt.of(question.sheet()),
                        one,
                        who,
                        works.clock().instant(),
                        Optional.empty()))
            .toList(),
        works.program());
  }
}
