package sheaf.forms.card;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import sheaf.core.layout.SheetKind;
import sheaf.core.reading.PageReading;
import sheaf.core.reading.ReadingState;
import sheaf.core.result.JobSummary;
import sheaf.core.result.PairResult;

/** Sentences of a finished card. */
final class CardWords {

  private CardWords() {}

  /** Which sheet a result comes from. */
  static String about(PairResult pair) {
    return "From sheet %d of this job, a pair sheet with %s."
        .formatted(pair.sheet().number(), pair.sheet().layout().variant().label());
  }

  /** What is to be said of sheets that nobody has confirmed; empty when every sheet is sure. */
  static Optional<String> doubts(JobSummary job) {
    List<String> doubtful = new ArrayList<>();
    for (PageReading page : job.sheets()) {
      if (page.state() == ReadingState.CHECK) {
        page.sheet().ifPresent(sheet -> doubtful.add(String.valueOf(sheet.number())));
      }
    }
    if (doubtful.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        (doubtful.size() == 1 ? "Sheet " : "Sheets ")
            + String.join(", ", doubtful)
            + (doubtful.size() == 1 ? " has" : " have")
            + " doubts: not confirmed. A person must still look at the scan.");
  }

  /** Which sheets the card is made from. */
  static String sheets(JobSummary job) {
    if (job.sheets().isEmpty()) {
      return "Sheets read: none.";
    }
    return job.sheets().stream()
        .map(CardWords::sheet)
        .collect(Collectors.joining("; ", "Sheets read: ", "."));
  }

  private static String sheet(PageReading page) {
    String name =
        page.sheet()
            .map(
                sheet ->
                    sheet.layout().kind() == SheetKind.PAIR
                        ? "%d pair sheet, %s"
                            .formatted(sheet.number(), sheet.layout().variant().label())
                        : sheet.number() + " bench card")
            .orElse("a sheet without a code");
    return page.state() == ReadingState.CHECK ? name + " (has doubts)" : name;
  }
}
