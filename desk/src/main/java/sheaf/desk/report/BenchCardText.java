package sheaf.desk.report;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sheaf.core.layout.Layout;
import sheaf.core.layout.Layouts;
import sheaf.core.reading.FieldReading;
import sheaf.core.reading.FieldReading.State;
import sheaf.core.reading.FieldReading.Teller;
import sheaf.core.reading.PageReading;
import sheaf.core.result.JobSummary;

/** What was filled in on a job's bench card. */
public final class BenchCardText {

  private BenchCardText() {}

  /** What a field is called, and what was written there. */
  private record Line(String label, String answer) {}

  /** A line for each field that is not blank; empty when there is no bench card. */
  public static String of(JobSummary job) {
    List<Line> lines = job.sheets().stream().flatMap(BenchCardText::lines).toList();
    int widest = lines.stream().mapToInt(line -> line.label().length()).max().orElse(0);
    StringBuilder text = new StringBuilder();
    for (Line line : lines) {
      String gap = " ".repeat(widest - line.label().length());
      text.append("  ").append(line.label()).append(gap).append("  ");
      text.append(line.answer()).append("\n");
    }
    return text.isEmpty() ? "" : "Bench card\n" + text;
  }

  private static Stream<Line> lines(PageReading page) {
    Optional<Layout> layout =
        page.sheet()
            .filter(sheet -> sheet.layout().kind().isCard())
            .flatMap(sheet -> Layouts.find(sheet.layout()));
    List<FieldReading> filled =
        page.fields().stream().filter(field -> field.state() != State.BLANK).toList();
    Stream<Line> note =
        page.note().stream().map(picture -> new Line("notes", "kept as a picture for the card"));
    Stream<Line> fields =
        layout.stream()
            .flatMap(
                found ->
                    filled.stream()
                        .map(field -> new Line(found.field(field.key()).label(), answer(field))));
    return Stream.concat(fields, note);
  }

  private static String answer(FieldReading reading) {
    if (reading.text().isEmpty()) {
      return "not read: see the sheet";
    }
    String unit = reading.unit().map(u -> " " + u.symbol()).orElse("");
    String how =
        reading.state() == State.CHECK
            ? "  (unsure)"
            : reading.teller() == Teller.MACHINE ? "" : "  (by hand)";
    return reading.text() + unit + how;
  }
}
