package sheaf.desk.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import sheaf.core.group.Claim;
import sheaf.core.group.Drift;
import sheaf.core.group.Estimate;
import sheaf.core.result.LineResult;
import sheaf.core.result.LineVerdict;

/**
 * What a line sheet came to.
 *
 * <pre>
 * number     of the sheet
 * status     read or check
 * bands      list, from the top down, of {number, distance {value, unit} or null, shots: list of
 *            {x, y} from the band's spot}
 * drift      null without shots from two known distances, or {mmPerMetre (estimate), claim: whether
 *            impact drifts; mmAtZero (estimate), offsetClaim: whether it is off by the same at
 *            every distance}; right is positive
 * sentence   what it shows
 * practice   what to move next as common practice, or null
 * </pre>
 *
 * <p>An estimate is {value, margin: the true value lies within it with 95 % confidence, or null
 * when the arrows are too few}; a claim is shown, not_shown or not_enough_arrows.
 */
final class LineJson {

  private LineJson() {}

  static ObjectNode tree(LineResult line) {
    ObjectNode tree =
        Tree.object().put("number", line.sheet().number()).put("status", line.state().label());
    RecordJson.put(tree, "bands", line.bands(), LineJson::tree);
    tree.set("drift", line.drift().map(LineJson::tree).orElse(null));
    return tree.put("sentence", LineVerdict.of(line))
        .put("practice", LineVerdict.practice(line.shots()).orElse(null));
  }

  private static ObjectNode tree(LineResult.Band band) {
    ObjectNode tree = Tree.object().put("number", band.number());
    tree.set("distance", band.distance().map(JobJson::tree).orElse(null));
    ArrayNode shots = tree.putArray("shots");
    band.shots().forEach(shot -> shots.add(Tree.point(shot)));
    return tree;
  }

  private static ObjectNode tree(Drift drift) {
    ObjectNode tree = Tree.object();
    tree.set("mmPerMetre", tree(drift.mmPerMetre()));
    tree.put("claim", label(drift.drifts()));
    tree.set("mmAtZero", tree(drift.mmAtZero()));
    return tree.put("offsetClaim", label(drift.isOff()));
  }

  static ObjectNode tree(Estimate estimate) {
    return Tree.object()
        .put("value", Round.thousandth(estimate.value()))
        .put(
            "margin",
            estimate.margin().isPresent()
                ? Round.thousandth(estimate.margin().getAsDouble())
                : null);
  }

  static String label(Claim claim) {
    return claim.name().toLowerCase(Locale.ROOT);
  }
}
