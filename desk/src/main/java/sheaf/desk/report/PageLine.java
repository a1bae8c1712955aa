package sheaf.desk.report;

import java.util.stream.Collectors;
import java.util.stream.Stream;
import sheaf.core.reading.PageReading;
import sheaf.core.reading.ReadingState;

/** One page in one line, for those that come one by one. */
public final class PageLine {

  /** Room for what was found, in characters. */
  private static final int FOUND = 40;

  private PageLine() {}

  /** Its file, state, job and sheet, what was found or is doubtful. */
  public static String of(PageReading page) {
    String sheet =
        page.sheet()
            .map(
                code ->
                    code.job().spoken() + "  " + code.number() + " " + code.layout().kind().label())
            .orElse("");
    String reasons =
        page.state() == ReadingState.READ
            ? ""
            : page.reasons().stream()
                .filter(reason -> reason.code().ending() == page.state())
                .map(reason -> reason.message())
                .collect(Collectors.joining(" "));
    return Stream.of(page.source(), page.state().label(), sheet, Found.on(page, FOUND), reasons)
        .filter(part -> !part.isEmpty())
        .collect(Collectors.joining("  "));
  }
}
