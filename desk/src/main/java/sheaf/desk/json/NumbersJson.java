package sheaf.desk.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import sheaf.core.energy.BowNumbers;
import sheaf.core.energy.Figure;
import sheaf.core.flight.BowFlight;
import sheaf.core.record.Drifted;

/**
 * What a job's measures come to, as further keys of {@link JobJson}.
 *
 * <pre>
 * numbers    list of {key, value, unit}
 * cautions   list of sentences
 * flight     null or {set (distance), rows: list of {distance, heightMm over the aim, dropMm, seconds,
 *            feetPerSecond, fallDegrees, mark or null}}
 * drifted    null unless another job is named, or a list, in the order of restoring, of {key, was, is:
 *            as in a record; change, in the unit of {@code was}}
 * </pre>
 */
public final class NumbersJson {

  private NumbersJson() {}

  static void put(
      ObjectNode tree,
      BowNumbers numbers,
      Optional<BowFlight> flight,
      Optional<List<Drifted>> drifted) {
    RecordJson.put(tree, "numbers", numbers.figures(), NumbersJson::tree);
    ArrayNode cautions = tree.putArray("cautions");
    numbers.cautions().forEach(cautions::add);
    tree.set("flight", flight.map(NumbersJson::tree).orElse(null));
    if (drifted.isPresent()) {
      RecordJson.put(tree, "drifted", drifted.get(), NumbersJson::tree);
    } else {
      tree.putNull("drifted");
    }
  }

  private static ObjectNode tree(Figure figure) {
    return Tree.object()
        .put("key", figure.key())
        .put("value", Round.thousandth(figure.value()))
        .put("unit", figure.unit());
  }

  private static ObjectNode tree(BowFlight flight) {
    ObjectNode tree = Tree.object();
    tree.set("set", JobJson.tree(flight.set()));
    RecordJson.put(tree, "rows", flight.rows(), NumbersJson::tree);
    return tree;
  }

  private static ObjectNode tree(BowFlight.Row row) {
    ObjectNode tree = Tree.object();
    tree.set("distance", JobJson.tree(row.distance()));
    return tree.put("heightMm", Round.hundredth(row.heightMm()))
        .put("dropMm", Round.hundredth(row.dropMm()))
        .put("seconds", Round.thousandth(row.seconds()))
        .put("feetPerSecond", Round.hundredth(row.feetPerSecond()))
        .put("fallDegrees", Round.hundredth(row.fallDegrees()))
        .put("mark", row.mark().isPresent() ? Round.hundredth(row.mark().getAsDouble()) : null);
  }

  private static ObjectNode tree(Drifted drifted) {
    ObjectNode tree = Tree.object().put("key", drifted.key());
    tree.set("was", TakenJson.tree(drifted.was()));
    tree.set("is", TakenJson.tree(drifted.is()));
    return tree.put("change", Round.value(drifted.change()));
  }
}
