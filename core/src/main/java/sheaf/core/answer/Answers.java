package sheaf.core.answer;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import sheaf.core.layout.SheetKind;
import sheaf.core.reading.FieldReading;
import sheaf.core.reading.FieldReading.State;
import sheaf.core.reading.PageReading;

/**
 * What people said of one job, the earliest first.
 *
 * @param all of it; what was said twice at one time in the same words counts once
 */
public record Answers(List<Answer> all) {

  /** Nobody said anything. */
  public static final Answers NONE = new Answers(List.of());

  /** Sorts them by time; of one time, the order in which they come counts. */
  public Answers {
    all = new LinkedHashSet<>(all).stream().sorted(Comparator.comparing(Answer::when)).toList();
  }

  /**
   * A page as the machine read it with all that people said of it. Their word counts: a doubt that
   * they settled is gone, and where a sheet surely says something else than what they saw and said,
   * their value stays and the difference is a doubt.
   */
  public PageReading over(PageReading page) {
    List<Answer> about = all.stream().filter(answer -> isAbout(answer, page)).toList();
    return about.isEmpty() ? page : new Overlay(page, about).page();
  }

  private static boolean isAbout(Answer answer, PageReading page) {
    if (page.sheet().isEmpty()) {
      return false;
    }
    if (answer.sheet().isPresent()) {
      return answer.sheet().getAsInt() == page.sheet().get().number();
    }
    SheetKind kind = page.sheet().get().layout().kind();
    return kind.isCard()
        && answer.said() instanceof Said.Value value
        && page.field(value.key()).isPresent();
  }

  /**
   * What people said of bench-card fields that stand on none of these pages: typed in without a
   * card, or before it was read.
   */
  public List<FieldReading> beside(List<PageReading> pages) {
    Set<Answer> told = new LinkedHashSet<>();
    pages.forEach(page -> all.stream().filter(a -> isAbout(a, page)).forEach(told::add));
    Map<String, FieldReading> beside = new LinkedHashMap<>();
    for (Answer answer : all) {
      if (answer.sheet().isEmpty()
          && !told.contains(answer)
          && answer.said() instanceof Said.Value value) {
        beside.put(value.key(), reading(value));
      }
    }
    return List.copyOf(beside.values());
  }

  /** A person's value as a field's reading. */
  static FieldReading reading(Said.Value value) {
    State state = value.text().isEmpty() ? State.BLANK : State.READ;
    return new FieldReading(
        value.key(), state, value.text(), value.value(), value.unit(), 1, value.teller());
  }

  /** Both of them. */
  public Answers and(List<Answer> more) {
    List<Answer> both = new ArrayList<>(all);
    both.addAll(more);
    return new Answers(both);
  }
}
