package sheaf.desk.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import sheaf.core.reading.Reason;
import sheaf.core.reading.ReasonCode;

/** Something said of a page. */
final class ReasonJson {

  private ReasonJson() {}

  static ObjectNode tree(Reason reason) {
    ObjectNode tree =
        Tree.object().put("code", reason.code().label()).put("message", reason.message());
    reason.place().ifPresent(place -> tree.set("place", Tree.point(place)));
    return tree;
  }

  static Reason parse(JsonNode tree) {
    return new Reason(
        Tree.labelled(ReasonCode.values(), ReasonCode::label, tree, "code"),
        Tree.text(tree, "message"),
        Tree.optional(tree, "place", Tree::point));
  }
}
