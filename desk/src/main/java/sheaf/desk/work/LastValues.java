package sheaf.desk.work;

import java.util.Map;
import java.util.TreeMap;
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
    job.cardFields()
        .filter(field -> field.state() == State.READ && !field.text().isEmpty())
        .forEach(field -> values.put(field.key(), field.words()));
    Map<String, String> found = new TreeMap<>(values);
    found.forEach(
        (key, text) -> {
          if (key.endsWith(FOUND)) {
            values.putIfAbsent(key.substring(0, key.length() - FOUND.length()) + LEFT, text);
          }
        });
    return values;
  }
}
