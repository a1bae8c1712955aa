package sheaf.desk.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import sheaf.core.group.Group;
import sheaf.core.group.LineShot;
import sheaf.core.group.Offset;
import sheaf.core.measure.Distance;
import sheaf.core.measure.Unit;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmVector;
import sheaf.core.reading.Head;
import sheaf.core.reading.ReadingState;
import sheaf.core.record.Tear;
import sheaf.core.result.GroupResult;
import sheaf.core.result.PairResult;

/** What a record tells of sheets that were shot at: the shots, from which all else follows. */
final class ShotJson {

  private ShotJson() {}

  static ObjectNode tree(Tear tear) {
    return Tree.object()
        .put("sheet", tear.sheet())
        .put("zone", tear.zone())
        .put("rightMm", tear.pointToTail().dx())
        .put("downMm", tear.pointToTail().dy());
  }

  static Tear tear(JsonNode tree) {
    return new Tear(
        (int) Tree.number(tree, "sheet"),
        (int) Tree.number(tree, "zone"),
        new MmVector(Tree.number(tree, "rightMm"), Tree.number(tree, "downMm")));
  }

  static ObjectNode tree(LineShot shot) {
    ObjectNode tree = Tree.object();
    tree.set("distance", tree(shot.distance()));
    return tree.put("rightMm", shot.rightMm());
  }

  static LineShot line(JsonNode tree) {
    return new LineShot(distance(Tree.get(tree, "distance")), Tree.number(tree, "rightMm"));
  }

  static ObjectNode tree(PairResult pair) {
    ObjectNode tree =
        Tree.object().put("sheet", pair.sheet().text()).put("state", pair.state().label());
    tree.set("distance", pair.distance().map(ShotJson::tree).orElse(null));
    put(tree, "field", pair.field());
    put(tree, "broadhead", pair.broadhead());
    return tree.put("shaftDiameterMm", pair.shaftDiameter());
  }

  static PairResult pair(JsonNode tree) {
    Optional<Group> field = group(tree, "field");
    Optional<Group> broadhead = group(tree, "broadhead");
    return new PairResult(
        VisitJson.code(tree, "sheet"),
        Tree.labelled(ReadingState.values(), ReadingState::label, tree, "state"),
        Tree.optional(tree, "distance", ShotJson::distance),
        field,
        broadhead,
        Tree.number(tree, "shaftDiameterMm"),
        field.flatMap(f -> broadhead.map(b -> Offset.between(f, b))));
  }

  static ObjectNode tree(GroupResult group) {
    ObjectNode tree =
        Tree.object().put("sheet", group.sheet().text()).put("state", group.state().label());
    tree.set("distance", group.distance().map(ShotJson::tree).orElse(null));
    tree.put("head", group.head().label());
    put(tree, "shots", group.shots());
    return tree.put("shaftDiameterMm", group.shaftDiameter());
  }

  static GroupResult groupResult(JsonNode tree) {
    return new GroupResult(
        VisitJson.code(tree, "sheet"),
        Tree.labelled(ReadingState.values(), ReadingState::label, tree, "state"),
        Tree.optional(tree, "distance", ShotJson::distance),
        Tree.labelled(Head.values(), Head::label, tree, "head"),
        group(tree, "shots"),
        Tree.number(tree, "shaftDiameterMm"));
  }

  private static ObjectNode tree(Distance distance) {
    return Tree.object().put("value", distance.value()).put("unit", distance.unit().symbol());
  }

  private static Distance distance(JsonNode tree) {
    return new Distance(
        Tree.number(tree, "value"), Tree.labelled(Unit.values(), Unit::symbol, tree, "unit"));
  }

  private static void put(ObjectNode tree, String key, Optional<Group> group) {
    ArrayNode shots = tree.putArray(key);
    group
        .map(Group::shots)
        .orElse(List.of())
        .forEach(shot -> shots.addObject().put("rightMm", shot.x()).put("downMm", shot.y()));
  }

  private static Optional<Group> group(JsonNode tree, String key) {
    List<MmPoint> shots =
        Tree.list(
            tree,
            key,
            shot -> new MmPoint(Tree.number(shot, "rightMm"), Tree.number(shot, "downMm")));
    return shots.isEmpty() ? Optional.empty() : Optional.of(new Group(shots));
  }
}
