package sheaf.desk.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import sheaf.core.job.SheetCode;
import sheaf.core.page.MmPoint;
import sheaf.core.reading.PageReading;
import sheaf.core.reading.Reason;

/** A line for each page, with its reasons below it. */
public final class PageTable {

  private static final String GAP = "  ";

  /** What was found needs at least this much room beside the other columns. */
  private static final int FOUND = 22;

  private static final int NARROWEST_SOURCE = 12;
  private static final int WIDEST_SOURCE = 40;

  /** All columns but the last, left to right. */
  private record Row(String source, String state, String job, String sheet) {

    static final Row HEADING = new Row("Page", "State", "Job", "Sheet");

    static Row of(PageReading page) {
      return new Row(
          file(page.source()),
          page.state().label(),
          page.sheet().map(sheet -> sheet.job().spoken()).orElse("-"),
          page.sheet().map(Row::sheet).orElse("-"));
    }

    /** The file's own name: the folders before it only cost room. */
    private static String file(String source) {
      return source.substring(Math.max(source.lastIndexOf('/'), source.lastIndexOf('\\')) + 1);
    }

    private static String sheet(SheetCode sheet) {
      return sheet.number() + " " + sheet.layout().kind().label();
    }
  }

  private final int source;
  private final int state;
  private final int job;
  private final int sheet;
  private final int width;

  private PageTable(List<PageReading> pages, int width) {
    List<Row> rows = Stream.concat(Stream.of(Row.HEADING), pages.stream().map(Row::of)).toList();
    this.width = width;
    this.state = longest(rows, Row::state);
    this.job = longest(rows, Row::job);
    this.sheet = longest(rows, Row::sheet);
    int room = width - state - job - sheet - FOUND - 4 * GAP.length();
    int wanted = Math.min(longest(rows, Row::source), WIDEST_SOURCE);
    this.source = Math.min(wanted, Math.max(room, NARROWEST_SOURCE));
  }

  /**
   * The table.
   *
   * @param pages in order
   * @param width of a line, in characters
   * @return lines, each with its end; empty without pages
   */
  public static String of(List<PageReading> pages, int width) {
    if (pages.isEmpty()) {
      return "";
    }
    PageTable table = new PageTable(pages, width);
    StringBuilder text = new StringBuilder(table.line(Row.HEADING, "Found"));
    pages.forEach(page -> text.append(table.page(page)));
    return text.toString();
  }

  private String page(PageReading page) {
    int room = width - source - state - job - sheet - 4 * GAP.length();
    StringBuilder text = new StringBuilder(line(Row.of(page), Found.on(page, room)));
    reasons(page)
        .forEach(
            (message, places) ->
                text.append(Text.hanging("    - ", message + where(places), width)));
    return text.toString();
  }

  /** Each message once, with all the places that it is said of. */
  private static Map<String, List<MmPoint>> reasons(PageReading page) {
    Map<String, List<MmPoint>> reasons = new LinkedHashMap<>();
    for (Reason reason : page.reasons()) {
      List<MmPoint> places = reasons.computeIfAbsent(reason.message(), any -> new ArrayList<>());
      reason.place().ifPresent(places::add);
    }
    return reasons;
  }

  private static String where(List<MmPoint> places) {
    if (places.isEmpty()) {
      return "";
    }
    return places.stream()
        .map(place -> Math.round(place.x()) + ", " + Math.round(place.y()))
        .collect(Collectors.joining("; ", " [mm across, down: ", "]"));
  }

  private String line(Row row, String found) {
    String lead =
        pad(Text.elide(row.source(), source), source)
            + pad(row.state(), state)
            + pad(row.job(), job)
            + pad(row.sheet(), sheet);
    return found.isEmpty() ? lead.stripTrailing() + "\n" : Text.hanging(lead, found, width);
  }

  private static int longest(List<Row> rows, Function<Row, String> column) {
    return rows.stream().mapToInt(row -> column.apply(row).length()).max().orElse(0);
  }

  private static String pad(String text, int width) {
    return text + " ".repeat(Math.max(0, width - text.length())) + GAP;
  }
}
