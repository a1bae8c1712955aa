package sheaf.desk.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import sheaf.core.measure.Unit;
import sheaf.core.reading.FieldReading;
import sheaf.core.reading.FieldReading.State;
import sheaf.core.reading.FieldReading.Teller;

/** What the fields of a sheet said, by their keys. */
final class FieldJson {

  private FieldJson() {}

  static ObjectNode tree(List<FieldReading> fields) {
    ObjectNode tree = Tree.object();
    fields.forEach(field -> tree.set(field.key(), tree(field)));
    return tree;
  }

  static ObjectNode tree(FieldReading field) {
    ObjectNode tree = Tree.object();
    tree.put("text", field.text().isEmpty() ? null : field.text())
        .put("value", field.value().isPresent() ? Round.value(field.value().getAsDouble()) : null)
        .put("unit", field.unit().map(Unit::symbol).orElse(null))
        .put("confidence", Round.thousandth(field.confidence()))
        .put("state", label(field.state()));
    if (field.teller() != Teller.MACHINE) {
      tree.put("by", field.teller().name().toLowerCase(Locale.ROOT));
    }
    return tree;
  }

  static List<FieldReading> parseAll(JsonNode tree) {
    List<FieldReading> fields = new ArrayList<>();
    tree.properties().forEach(entry -> fields.add(parse(entry.getKey(), entry.getValue())));
    return fields;
  }

  private static FieldReading parse(String key, JsonNode tree) {
    return new FieldReading(
        key,
        Tree.labelled(State.values(), FieldJson::label, tree, "state"),
        Tree.optional(tree, "text", JsonNode::textValue).orElse(""),
        Tree.optionalNumber(tree, "value"),
        Tree.optional(tree, "unit", JsonNode::textValue).flatMap(Unit::ofSymbol),
        Tree.number(tree, "confidence"));
  }

  private static String label(State state) {
    return state.name().toLowerCase(Locale.ROOT);
  }
}
