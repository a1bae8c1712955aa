package sheaf.desk.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
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
        Tree.number(tree, "confidence"));
  }
}
