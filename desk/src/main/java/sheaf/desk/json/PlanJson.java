package sheaf.desk.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import sheaf.core.job.JobId;
import sheaf.core.page.MmVector;
import sheaf.core.tune.Move;
import sheaf.core.tune.Plan;

/**
 * A plan as one JSON object on one line.
 *
 * <pre>
 * job        text
 * kind       do_not_shoot, shoot_first, same_point, more_arrows, starting_move, computed_move, no_lever
 * move       null or {part, axis (sideways, upright), steps: right and up are positive, step (1/64 in,
 *            0.1 mm, turns, clicks), words}
 * now        null or {x, y, region}: where broadheads go now from the field points, by all sheets
 * after      the same as expected after the move, or null
 * moreOfEach arrows of each head that would settle this setting, or null
 * learnt     list of {part, axis, step, x, y: what a step to the right or up does; xDeviation,
 *            yDeviation: standard deviations of that; known: whether its direction is}
 * remarks    list of sentences
 * </pre>
 *
 * <p>Lengths are millimetres at 20 yd, x right, y down; a region as in {@link JobJson}.
 */
public final class PlanJson {

  private PlanJson() {}

  /** The plan as one line, without a line end. */
  public static String line(JobId job, Plan plan) {
    ObjectNode tree = Tree.object().put("job", job.spoken()).put("kind", word(plan.kind()));
    tree.set("move", plan.move().map(PlanJson::tree).orElse(null));
    tree.set("now", plan.now().map(PlanJson::tree).orElse(null));
    tree.set("after", plan.after().map(PlanJson::tree).orElse(null));
    tree.put("moreOfEach", plan.moreOfEach().isPresent() ? plan.moreOfEach().getAsInt() : null);
    RecordJson.put(tree, "learnt", plan.learnt(), PlanJson::tree);
    ArrayNode remarks = tree.putArray("remarks");
    plan.remarks().forEach(remarks::add);
    return Tree.line(tree);
  }

  private static ObjectNode tree(Move move) {
    return Tree.object()
        .put("part", move.lever().part().label())
        .put("axis", word(move.lever().axis()))
        .put("steps", move.steps())
        .put("step", move.lever().step().label())
        .put("words", move.words());
  }

  private static ObjectNode tree(Plan.Forecast forecast) {
    ObjectNode tree = vector(forecast.offset());
    tree.set("region", JobJson.tree(forecast.region()));
    return tree;
  }

  private static ObjectNode tree(Plan.Learnt learnt) {
    return Tree.object()
        .put("part", learnt.lever().part().label())
        .put("axis", word(learnt.lever().axis()))
        .put("step", learnt.lever().step().label())
        .put("x", Round.hundredth(learnt.response().perStep().dx()))
        .put("y", Round.hundredth(learnt.response().perStep().dy()))
        .put("xDeviation", Round.hundredth(learnt.response().rightDeviation()))
        .put("yDeviation", Round.hundredth(learnt.response().downDeviation()))
        .put("known", learnt.response().directionKnown(learnt.lever().axis()));
  }

  private static ObjectNode vector(MmVector way) {
    return Tree.object().put("x", Round.hundredth(way.dx())).put("y", Round.hundredth(way.dy()));
  }

  private static String word(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT);
  }
}
