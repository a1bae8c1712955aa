package sheaf.desk.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import sheaf.core.job.JobId;
import sheaf.core.job.SheetCode;
import sheaf.core.reading.ReadingState;
import sheaf.core.record.Change;
import sheaf.core.record.Inspected;
import sheaf.core.record.Inspected.Finding;
import sheaf.core.record.Measure;
import sheaf.core.record.SheetRead;
import sheaf.core.record.Taken;
import sheaf.core.record.Visit;
import sheaf.core.result.GroupResult;

/** One visit of a record. */
final class VisitJson {

  private VisitJson() {}

  static ObjectNode tree(Visit visit) {
    ObjectNode tree =
        Tree.object()
            .put("job", visit.job().spoken())
            .put("day", visit.day().map(LocalDate::toString).orElse(null))
            .put("customer", visit.customer().orElse(null))
            .put("technician", visit.technician().orElse(null));
    RecordJson.put(tree, "sheets", visit.sheets(), VisitJson::tree);
    RecordJson.put(tree, "inspection", visit.inspection(), VisitJson::tree);
    RecordJson.put(tree, "measures", visit.measures(), VisitJson::tree);
    RecordJson.put(tree, "changes", visit.changes(), VisitJson::tree);
    RecordJson.put(tree, "tears", visit.tears(), ShotJson::tree);
    RecordJson.put(tree, "line", visit.line(), ShotJson::tree);
    RecordJson.put(tree, "pairs", visit.pairs(), ShotJson::tree);
    RecordJson.put(tree, "groups", visit.groups(), ShotJson::tree);
    ArrayNode notes = tree.putArray("notes");
    visit.notes().forEach(notes::add);
    RecordJson.put(tree, "written", visit.written(), NoteJson::tree);
    return tree;
  }

  static Visit parse(JsonNode tree) {
    return new Visit(
        job(Tree.text(tree, "job")),
        Tree.optional(tree, "day", JsonNode::textValue).map(VisitJson::day),
        Tree.optional(tree, "customer", JsonNode::textValue),
        Tree.optional(tree, "technician", JsonNode::textValue),
        Tree.list(tree, "sheets", VisitJson::sheet),
        Tree.list(tree, "inspection", VisitJson::inspected),
        Tree.list(tree, "measures", VisitJson::measure),
        Tree.list(tree, "changes", VisitJson::change),
        Tree.list(tree, "tears", ShotJson::tear),
        Tree.list(tree, "line", ShotJson::line),
        Tree.list(tree, "pairs", ShotJson::pair),
        groups(tree),
        Tree.list(tree, "notes", JsonNode::asText),
        tree.has("written") ? Tree.list(tree, "written", NoteJson::parse) : List.of());
  }

  /** Records of before groups were told have no such key. */
  private static List<GroupResult> groups(JsonNode tree) {
    return tree.has("groups") ? Tree.list(tree, "groups", ShotJson::groupResult) : List.of();
  }

  private static JobId job(String text) {
    return JobId.parse(text)
        .orElseThrow(() -> new IllegalArgumentException("not a job id: " + text));
  }

  private static LocalDate day(String text) {
    try {
      return LocalDate.parse(text);
    } catch (DateTimeException e) {
      throw new IllegalArgumentException("not a day: " + text, e);
    }
  }

  private static ObjectNode tree(SheetRead sheet) {
    return Tree.object()
        .put("code", sheet.code().text())
        .put("kind", sheet.code().layout().kind().label())
        .put("state", sheet.state().label());
  }

  private static SheetRead sheet(JsonNode tree) {
    return new SheetRead(
        code(tree, "code"),
        Tree.labelled(ReadingState.values(), ReadingState::label, tree, "state"));
  }

  static SheetCode code(JsonNode tree, String key) {
    String text = Tree.text(tree, key);
    return SheetCode.parse(text)
        .orElseThrow(() -> new IllegalArgumentException("not a sheet's code: " + text));
  }

  private static ObjectNode tree(Inspected part) {
    return Tree.object()
        .put("key", part.key())
        .put("label", part.label())
        .put("finding", part.finding().label());
  }

  private static Inspected inspected(JsonNode tree) {
    return new Inspected(
        Tree.text(tree, "key"),
        Tree.text(tree, "label"),
        Tree.labelled(Finding.values(), Finding::label, tree, "finding"));
  }

  private static ObjectNode tree(Measure measure) {
    ObjectNode tree = Tree.object().put("key", measure.key()).put("label", measure.label());
    tree.set("found", measure.found().map(TakenJson::tree).orElse(null));
    tree.set("left", measure.left().map(TakenJson::tree).orElse(null));
    return tree;
  }

  private static Measure measure(JsonNode tree) {
    return new Measure(
        Tree.text(tree, "key"),
        Tree.text(tree, "label"),
        taken(tree, "found"),
        taken(tree, "left"));
  }

  private static ObjectNode tree(Change change) {
    ObjectNode tree = Tree.object().put("beforeSheet", change.beforeSheet());
    tree.set("what", TakenJson.tree(change.what()));
    tree.set("way", change.way().map(TakenJson::tree).orElse(null));
    tree.set("amount", change.amount().map(TakenJson::tree).orElse(null));
    return tree;
  }

  private static Change change(JsonNode tree) {
    return new Change(
        (int) Tree.number(tree, "beforeSheet"),
        TakenJson.parse(Tree.get(tree, "what")),
        taken(tree, "way"),
        taken(tree, "amount"));
  }

  private static Optional<Taken> taken(JsonNode tree, String key) {
    return Tree.optional(tree, key, TakenJson::parse);
  }
}
