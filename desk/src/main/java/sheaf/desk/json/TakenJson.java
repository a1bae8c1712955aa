package sheaf.desk.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import sheaf.core.measure.Unit;
import sheaf.core.record.How;
import sheaf.core.record.Taken;

/** An answer and how it was taken. */
final class TakenJson {

  private TakenJson() {}

  static ObjectNode tree(Taken taken) {
    return Tree.object()
        .put("text", taken.text())
        .put("value", taken.value().isPresent() ? taken.value().getAsDouble() : null)
        .put("unit", taken.unit().map(Unit::symbol).orElse(null))
        .put("how", taken.how().label());
  }

  static Taken parse(JsonNode tree) {
    return new Taken(
        Tree.text(tree, "text"),
        Tree.optionalNumber(tree, "value"),
        unit(tree),
        Tree.labelled(How.values(), How::label, tree, "how"));
  }

  /** A unit that is not known must not be dropped in silence. */
  private static Optional<Unit> unit(JsonNode tree) {
    return Tree.get(tree, "unit").isNull()
        ? Optional.empty()
        : Optional.of(Tree.labelled(Unit.values(), Unit::symbol, tree, "unit"));
  }
}
