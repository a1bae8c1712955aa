package sheaf.desk.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import sheaf.core.job.JobId;

/**
 * A job at a glance as one JSON object on one line.
 *
 * <pre>
 * job       text, as it is read out
 * changed   when anything of it was taken in last, in UTC
 * day       of the visit
 * customer  initials or reference, or null
 * bow       in general words, or null
 * sheets    how many were read
 * missing   numbers of sheets that were printed and not read
 * doubts    how many sheets need a person's look
 * state     what is to be done next: doubts, sheets, card or done
 * </pre>
 */
public final class OverviewJson {

  private OverviewJson() {}

  /** One line, without a line end. */
  public static String line(
      JobId job,
      Instant changed,
      LocalDate day,
      Optional<String> customer,
      Optional<String> bow,
      int sheets,
      List<Integer> missing,
      int doubts,
      String state) {
    ObjectNode tree = Tree.object();
    tree.put("job", job.spoken()).put("changed", changed.toString()).put("day", day.toString());
    tree.put("customer", customer.orElse(null)).put("bow", bow.orElse(null));
    tree.put("sheets", sheets);
    ArrayNode numbers = tree.putArray("missing");
    missing.forEach(numbers::add);
    tree.put("doubts", doubts).put("state", state);
    return Tree.line(tree);
  }
}
