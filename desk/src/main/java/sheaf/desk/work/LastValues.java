package sheaf.desk.work;

import java.util.Map;
import java.util.TreeMap;
import sheaf.core.layout.SheetKind;
import sheaf.core.reading.FieldReading;
import sheaf.core.reading.FieldReading.State;
import sheaf.core.result.JobSummary;

/** What an earlier job's cards surely said, in print, for a return card. */
public final class LastValues {

  private static final String FOUND = "_found";
  private static final String LEFT = "_left";

  private LastValues() {}

  /**
   * Printed text by field. What was found and not written again as left was left as it was found.
   */
  public static Map<String, String> of(JobSummary job) {
    Map<String, String> values = new TreeMap<>();
    job.sheets().stream()
        .filter(page -> page.sheet().filter(code -> isCard(code.layout().kind())).isPresent())
        .flatMap(page -> page.fields().stream())
        .filter(field -> field.state() == State.READ && !field.text().isEmpty())
        .forEach(field -> values.put(field.key(), text(field)));
    Map<String, String> found = new TreeMap<>(values);
    found.forEach(
        (key, text) -> {
          if (key.endsWith(FOUND)) {
            values.putIfAbsent(key.substring(0, key.length() - FOUND.length()) + LEFT, text);
          }
        });
    return values;
  }

  private static boolean isCard(SheetKind kind) {
    return kind == SheetKind.BENCH_CARD || kind == SheetKind.RETURN_CARD;
  }

  private static String text(FieldReading field) {
    return field.text() + field.unit().map(unit -> " " + unit.symbol()).orElse("");
  }
}
