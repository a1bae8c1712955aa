package sheaf.desk.json;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import sheaf.core.group.Centre;
import sheaf.core.group.Group;
import sheaf.core.group.Spread;
import sheaf.core.measure.Distance;
import sheaf.core.measure.MinutesOfAngle;
import sheaf.core.result.GroupResult;
import sheaf.core.result.GroupVerdict;
import sheaf.core.result.SightMove;

/**
 * What a group sheet or a sight-in sheet came to.
 *
 * <pre>
 * number     of the sheet
 * kind       group or sight-in
 * status     read or check
 * distance   {value, unit} or null
 * head       as ticked: field, broadhead or unknown
 * shots      how many
 * centre     null without shots, or {x, y}: estimates as in {@link LineJson}, from the spot, x right,
 *            y down
 * extremeSpread, meanRadius   {mm, inches, minutes (of angle) or null}, or null without shots
 * sigma      standard deviation in each direction, corrected for few shots: null with less than two,
 *            or {mm, low, high: its 95 % limits, inches, minutes or null}
 * flyer      the shot that stands out, which is counted: null, or {x, y, extremeSpreadWithout}
 * sight      null on a group sheet, or {right, up: estimates in millimetres on the target, by which
 *            the sight is to be moved, rightSquares, upSquares, rightMinutes, upMinutes or null,
 *            rightClaim, upClaim}
 * sentences  list: what it came to
 * </pre>
 */
final class GroupJson {

  private GroupJson() {}

  static ObjectNode tree(GroupResult result) {
    Optional<Distance> from = result.distance();
    ObjectNode tree =
        Tree.object()
            .put("number", result.sheet().number())
            .put("kind", result.sheet().layout().kind().label())
            .put("status", result.state().label());
    tree.set("distance", from.map(JobJson::tree).orElse(null));
    tree.put("head", result.head().label());
    tree.put("shots", result.shots().map(Group::size).orElse(0));
    tree.set("centre", result.centre().map(GroupJson::tree).orElse(null));
    Optional<Group> shots = result.shots();
    tree.set("extremeSpread", shots.map(g -> length(g.extremeSpread(), from)).orElse(null));
    tree.set("meanRadius", shots.map(g -> length(g.meanRadius(), from)).orElse(null));
    tree.set("sigma", result.spread().map(spread -> tree(spread, from)).orElse(null));
    tree.set(
        "flyer",
        result
            .flyer()
            .map(
                flyer ->
                    Tree.point(flyer.shot())
                        .put(
                            "extremeSpreadWithout",
                            Round.hundredth(flyer.others().extremeSpread())))
            .orElse(null));
    tree.set("sight", result.sightMove().map(move -> tree(move, result)).orElse(null));
    GroupVerdict.sentences(result).forEach(tree.putArray("sentences")::add);
    return tree;
  }

  private static ObjectNode tree(Centre centre) {
    ObjectNode tree = Tree.object();
    tree.set("x", LineJson.tree(centre.right()));
    tree.set("y", LineJson.tree(centre.down()));
    return tree;
  }

  private static ObjectNode tree(Spread spread, Optional<Distance> from) {
    return length(spread.sigma(), from)
        .put("low", Round.hundredth(spread.low()))
        .put("high", Round.hundredth(spread.high()));
  }

  private static ObjectNode length(double mm, Optional<Distance> from) {
    return Tree.object()
        .put("mm", Round.hundredth(mm))
        .put("inches", JobJson.inches(mm))
        .put("minutes", minutes(mm, from));
  }

  private static ObjectNode tree(SightMove move, GroupResult result) {
    double square = result.sheet().layout().units().gridSquareMm();
    ObjectNode tree = Tree.object();
    tree.set("right", LineJson.tree(move.right()));
    tree.set("up", LineJson.tree(move.up()));
    return tree.put("rightSquares", Round.hundredth(move.right().value() / square))
        .put("upSquares", Round.hundredth(move.up().value() / square))
        .put("rightMinutes", minutes(move.right().value(), result.distance()))
        .put("upMinutes", minutes(move.up().value(), result.distance()))
        .put("rightClaim", LineJson.label(move.sideways()))
        .put("upClaim", LineJson.label(move.upright()));
  }

  private static Double minutes(double mm, Optional<Distance> from) {
    return from.map(distance -> Round.hundredth(MinutesOfAngle.of(mm, distance))).orElse(null);
  }
}
