package sheaf.desk.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.OptionalInt;
import sheaf.core.layout.Aim;
import sheaf.core.reading.Head;
import sheaf.core.reading.Hole;

/** One arrow's hole. */
final class HoleJson {

  private HoleJson() {}

  static ObjectNode tree(Hole hole) {
    return Tree.point(hole.axis())
        .put("head", hole.head().label())
        .put("blades", hole.blades())
        .put("cut", Round.hundredth(hole.cut()))
        .put("aim", hole.aim().label())
        .put("zone", hole.zone().isPresent() ? hole.zone().getAsInt() : null)
        .put("confidence", Round.thousandth(hole.confidence()))
        .put("axisError", Round.hundredth(hole.axisError()))
        .put("diameter", Round.hundredth(hole.diameter()));
  }

  static Hole parse(JsonNode tree) {
    return new Hole(
        Tree.point(tree),
        Tree.number(tree, "axisError"),
        Tree.number(tree, "diameter"),
        Tree.labelled(Head.values(), Head::label, tree, "head"),
        (int) Tree.number(tree, "blades"),
        Tree.number(tree, "cut"),
        Tree.labelled(Aim.values(), Aim::label, tree, "aim"),
        zone(tree),
        Tree.number(tree, "confidence"));
  }

  /** Readings that were filed before sheets with zones were told have none. */
  private static OptionalInt zone(JsonNode tree) {
    return Tree.optional(tree, "zone", node -> OptionalInt.of(node.intValue()))
        .orElse(OptionalInt.empty());
  }
}
