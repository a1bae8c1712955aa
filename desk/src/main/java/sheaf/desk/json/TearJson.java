package sheaf.desk.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import sheaf.core.reading.PrintScale;
import sheaf.core.reading.TearReading;

/** What one arrow left in a zone of a tear sheet. */
final class TearJson {

  private TearJson() {}

  /**
   * As a tree.
   *
   * @param scale of the print, by which the length is corrected
   */
  static ObjectNode tree(TearReading tear, Optional<PrintScale> scale) {
    ObjectNode tree = Tree.object().put("zone", tear.zone());
    tree.set("point", Tree.point(tear.point()));
    tree.set("tail", Tree.point(tear.tail()));
    Integer vanes = tear.vanes() == TearReading.UNKNOWN_VANES ? null : tear.vanes();
    return tree.put("length", Round.hundredth(tear.pointToTail(scale).length()))
        .put("vanes", vanes)
        .put("pointError", Round.hundredth(tear.pointError()))
        .put("tailError", Round.hundredth(tear.tailError()))
        .put("confidence", Round.thousandth(tear.confidence()));
  }

  static TearReading parse(JsonNode tree) {
    return new TearReading(
        (int) Tree.number(tree, "zone"),
        Tree.point(Tree.get(tree, "point")),
        Tree.number(tree, "pointError"),
        Tree.point(Tree.get(tree, "tail")),
        Tree.number(tree, "tailError"),
        (int) Tree.optionalNumber(tree, "vanes").orElse(TearReading.UNKNOWN_VANES),
        Tree.number(tree, "confidence"));
  }
}
