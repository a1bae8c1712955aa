package sheaf.desk.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import sheaf.core.result.Overview;

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
  public static String line(Overview job) {
    ObjectNode tree = Tree.object();
    tree.put("job", job.job().spoken());
    tree.put("changed", job.changed().toString()).put("day", job.day().toString());
    tree.put("customer", job.customer().orElse(null)).put("bow", job.bow().orElse(null));
    tree.put("sheets", job.sheets());
    ArrayNode numbers = tree.putArray("missing");
    job.missing().forEach(numbers::add);
    tree.put("doubts", job.doubts()).put("state", job.state().label());
    return Tree.line(tree);
  }
}
