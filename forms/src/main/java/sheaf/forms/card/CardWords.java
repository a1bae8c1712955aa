package sheaf.forms.card;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import sheaf.core.layout.SheetKind;
import sheaf.core.reading.PageReading;
import sheaf.core.reading.ReadingState;
import sheaf.core.result.JobSummary;
import sheaf.core.result.PairResult;

/** Sentences of a finished card. */
final class CardWords {

  /** Longer lists of sheets are cut short, so that a card always has room for them. */
  private static final int MOST_NUMBERS = 12;

  private CardWords() {}

  /** The text with every number kept on one line with its fraction and its unit. */
  static String bound(String text) {
    return text.replaceAll("(?<=\\d) (?=\\d+/\\d|(?:yd|mm?|in)\\b|%)", "\u00a0");
  }

  /** Which sheet a result comes from. */
  static String about(PairResult pair) {
    return "From sheet %d of this job, a pair sheet with %s."
        .formatted(pair.sheet().number(), pair.sheet().layout().variant().label());
  }

  /** What is to be said of sheets that nobody has confirmed; empty when every sheet is sure. */
  static Optional<String> doubts(JobSummary job) {
    List<Integer> doubtful = numbers(job, page -> page.state() == ReadingState.CHECK);
    if (doubtful.isEmpty()) {
      return Optional.empty();
    }
    String which = doubtful.size() == 1 ? "Sheet %s has" : "Sheets %s have";
    return Optional.of(
        which.formatted(list(doubtful))
            + " doubts: not confirmed. A person must still look at the scan.");
  }

  /** Which sheets the card is made from. */
  static String sheets(JobSummary job) {
    List<Integer> cards = numbers(job, page -> kind(page) == SheetKind.BENCH_CARD);
    List<Integer> pairs = numbers(job, page -> kind(page) == SheetKind.PAIR);
    List<String> parts = new ArrayList<>();
    if (!cards.isEmpty()) {
      parts.add("bench card no. " + list(cards));
    }
    if (!pairs.isEmpty()) {
      parts.add((pairs.size() == 1 ? "pair sheet no. " : "pair sheets no. ") + list(pairs));
    }
    return "Sheets read: " + (parts.isEmpty() ? "none" : String.join("; ", parts)) + ".";
  }

  private static SheetKind kind(PageReading page) {
    return page.sheet().orElseThrow().layout().kind();
  }

  /** The numbers of some sheets; a summary holds no sheet without one. */
  private static List<Integer> numbers(JobSummary job, Predicate<PageReading> wanted) {
    return job.sheets().stream()
        .filter(wanted)
        .map(page -> page.sheet().orElseThrow().number())
        .toList();
  }

  private static String list(List<Integer> numbers) {
    String first =
        numbers.stream().limit(MOST_NUMBERS).map(String::valueOf).collect(Collectors.joining(", "));
    int more = numbers.size() - MOST_NUMBERS;
    return more > 0 ? first + " and " + more + " more" : first;
  }
}
