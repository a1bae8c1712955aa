package sheaf.core.answer;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sheaf.core.answer.Question.About;
import sheaf.core.layout.Field;
import sheaf.core.layout.Layouts;
import sheaf.core.layout.Zone;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;
import sheaf.core.reading.FieldReading;
import sheaf.core.reading.Hole;
import sheaf.core.reading.PageReading;
import sheaf.core.reading.ReadingState;
import sheaf.core.reading.Reason;

/** What is left to ask about a job's sheets. */
public final class Questions {

  /** Room around what is asked about, in millimetres, so that one sees where it stands. */
  private static final double AROUND_FIELD = 3;

  /** The printed words that name a field stand to its left, farther from the second column. */
  private static final double LEFT_OF_FIELD = 50;

  private static final double LEFT_OF_SECOND = 106;

  private static final double AROUND_HOLE = 20;

  private final PageReading machine;
  private final PageReading page;
  private final int sheet;
  private final Map<Object, Question> questions = new LinkedHashMap<>();

  private Questions(PageReading machine, PageReading page) {
    this.machine = machine;
    this.page = page;
    this.sheet = page.sheet().orElseThrow().number();
  }

  /**
   * The questions about a page: one a field, one a hole or zone, one for each other doubt.
   *
   * @param machine the page as the machine read it
   * @param page the same with all that people said so far
   */
  public static List<Question> of(PageReading machine, PageReading page) {
    Questions questions = new Questions(machine, page);
    for (Reason reason : page.reasons()) {
      if (reason.code().ending() == ReadingState.CHECK) {
        questions.add(reason);
      }
    }
    return new ArrayList<>(questions.questions.values());
  }

  private void add(Reason reason) {
    Optional<Field> field = FieldPlaces.field(page, reason);
    Optional<Hole> hole = Targets.isAboutHole(reason) ? hole(reason) : Optional.empty();
    Optional<Zone> zone = Targets.isAboutTear(reason) ? zone(reason) : Optional.empty();
    if (field.isPresent()) {
      Field of = field.get();
      String guess = page.field(of.key()).map(FieldReading::words).orElse("");
      String seen = machine.field(of.key()).map(FieldReading::words).orElse("");
      put(of.key(), new About.OfField(of, worded(guess), worded(seen)), reason, around(of));
    } else if (hole.isPresent()) {
      put(hole.get(), new About.OfHole(hole.get()), reason, around(hole.get().axis()));
    } else if (zone.isPresent()) {
      put(zone.get(), new About.OfTear(zone.get().number()), reason, zone.get().rect());
    } else {
      Optional<MmRect> look = reason.place().map(Questions::around);
      questions.put(reason, new Question(sheet, new About.OfSheet(), List.of(reason), look));
    }
  }

  /** A reading without a text has a unit all the same. */
  private static String worded(String words) {
    return words.startsWith(" ") ? "" : words;
  }

  /** One question for one thing, with all that is to be said of it. */
  private void put(Object key, About about, Reason reason, MmRect look) {
    List<Reason> doubts = new ArrayList<>();
    if (questions.containsKey(key)) {
      doubts.addAll(questions.get(key).doubts());
    }
    doubts.add(reason);
    questions.put(key, new Question(sheet, about, doubts, Optional.of(look)));
  }

  private Optional<Hole> hole(Reason reason) {
    return reason
        .place()
        .flatMap(
            place ->
                page.holes().stream()
                    .filter(hole -> hole.axis().minus(place).length() <= Targets.NEAR)
                    .min(Comparator.comparing(hole -> hole.axis().minus(place).length())));
  }

  private Optional<Zone> zone(Reason reason) {
    return Layouts.find(page.sheet().orElseThrow().layout())
        .flatMap(layout -> reason.place().flatMap(layout::zoneAt));
  }

  private static MmRect around(MmPoint place) {
    double side = 2 * AROUND_HOLE;
    return new MmRect(place.x() - AROUND_HOLE, place.y() - AROUND_HOLE, side, side);
  }

  private static MmRect around(Field field) {
    double left = field.boxes().stream().mapToDouble(MmRect::x).min().orElseThrow();
    double top = field.boxes().stream().mapToDouble(MmRect::y).min().orElseThrow();
    double right = field.boxes().stream().mapToDouble(MmRect::right).max().orElseThrow();
    double bottom = field.boxes().stream().mapToDouble(MmRect::bottom).max().orElseThrow();
    double before = field.key().endsWith("_left") ? LEFT_OF_SECOND : LEFT_OF_FIELD;
    return new MmRect(
        left - before,
        top - AROUND_FIELD,
        right - left + before + 4 * AROUND_FIELD,
        bottom - top + 2 * AROUND_FIELD);
  }
}
