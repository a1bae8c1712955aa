package sheaf.desk.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import sheaf.core.answer.Revision;
import sheaf.core.job.JobId;

/**
 * How the values of a job came to be, as one JSON object on one line.
 *
 * <pre>
 * job      its id
 * history  list, one a field, of lists, one a value it had, the earliest first: {key, label, field
 *          (as a page's), when, sheet (number or null), place {x, y} where it is known, source (a
 *          file, or null for a person), who, why (text or null)}
 * </pre>
 */
public final class HistoryJson {

  private HistoryJson() {}

  /** One line, without a line end. */
  public static String line(JobId job, List<List<Revision>> history) {
    ObjectNode tree = Tree.object().put("job", job.spoken());
    ArrayNode fields = tree.putArray("history");
    for (List<Revision> field : history) {
      ArrayNode revisions = fields.addArray();
      field.forEach(one -> revisions.add(tree(one)));
    }
    return Tree.line(tree);
  }

  private static ObjectNode tree(Revision one) {
    ObjectNode tree = Tree.object().put("key", one.field().key()).put("label", one.label());
    tree.set("field", FieldJson.tree(one.field()));
    tree.put("when", one.when().toString())
        .put("sheet", one.sheet().isPresent() ? one.sheet().getAsInt() : null)
        .put("source", one.source().orElse(null))
        .put("who", one.who().orElse(null))
        .put("why", one.why().orElse(null));
    one.place().ifPresent(place -> tree.set("place", Tree.point(place)));
    return tree;
  }
}
