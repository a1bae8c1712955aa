package sheaf.core.answer;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import sheaf.core.reading.FieldReading;
import sheaf.core.reading.FieldReading.State;
import sheaf.core.reading.PageReading;

/** How the fields of a job came to their values. */
public final class History {

  /** Of which field of which sheet something was told; fields of cards are told of the bow. */
  private record Subject(int sheet, String key) {}

  private final Map<Subject, List<Revision>> told = new LinkedHashMap<>();

  private History() {}

  /**
   * All values of each field that ever had one, field by field, each field's earliest value first.
   * The same told again in a row is no new one, but for a person's word on what a machine read.
   *
   * @param readings of the job's pages
   * @param answers what people said of it
   */
  public static List<List<Revision>> of(Collection<ReadAt> readings, Answers answers) {
    History history = new History();
    readings.stream().sorted(Comparator.comparing(ReadAt::at)).forEach(history::add);
    answers.all().forEach(history::add);
    return history.told.values().stream().map(History::inOrder).filter(l -> !l.isEmpty()).toList();
  }

  private void add(ReadAt reading) {
    PageReading page = reading.page();
    if (page.sheet().isEmpty()) {
      return;
    }
    for (FieldReading field : page.fields()) {
      if (field.state() != State.BLANK) {
        revisions(page, field.key())
            .add(
                new Revision(
                    FieldPlaces.label(page, field.key()),
                    field,
                    reading.at(),
                    OptionalInt.of(page.sheet().get().number()),
                    FieldPlaces.place(page, field.key()),
                    Optional.of(page.source()),
                    Optional.empty(),
                    Optional.empty()));
      }
    }
  }

  private List<Revision> revisions(PageReading page, String key) {
    boolean card = page.sheet().orElseThrow().layout().kind().isCard();
    int sheet = card ? 0 : page.sheet().get().number();
    return told.computeIfAbsent(new Subject(sheet, key), any -> new ArrayList<>());
  }

  private void add(Answer answer) {
    if (!(answer.said() instanceof Said.Value value)) {
      return;
    }
    List<Revision> known =
        told.entrySet().stream()
            .filter(entry -> entry.getKey().key().equals(value.key()))
            .filter(entry -> isOf(entry.getKey(), answer))
            .map(Map.Entry::getValue)
            .findFirst()
            .orElseGet(
                () ->
                    told.computeIfAbsent(
                        new Subject(answer.sheet().orElse(0), value.key()),
                        any -> new ArrayList<>()));
    known.add(
        new Revision(
            known.isEmpty() ? value.key() : known.get(0).label(),
            Answers.reading(value),
            answer.when(),
            answer.sheet(),
            known.isEmpty() ? Optional.empty() : known.get(0).place(),
            Optional.empty(),
            answer.who(),
            answer.why()));
  }

  private static boolean isOf(Subject subject, Answer answer) {
    return subject.sheet() == 0
        || answer.sheet().isPresent() && answer.sheet().getAsInt() == subject.sheet();
  }

  private static List<Revision> inOrder(List<Revision> revisions) {
    List<Revision> kept = new ArrayList<>();
    revisions.stream()
        .sorted(Comparator.comparing(Revision::when))
        .filter(next -> kept.isEmpty() || !isRepeated(kept.get(kept.size() - 1), next))
        .forEach(kept::add);
    return kept;
  }

  private static boolean isRepeated(Revision last, Revision next) {
    FieldReading one = last.field();
    FieldReading other = next.field();
    return one.words().equals(other.words())
        && one.state() == other.state()
        && one.teller() == other.teller();
  }
}
