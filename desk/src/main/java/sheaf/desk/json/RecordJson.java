package sheaf.desk.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.function.Function;
import sheaf.core.record.Bow;
import sheaf.core.record.BowRecord;
import sheaf.core.record.Trait;

/**
 * A bow's record as one JSON object: what a finished card carries inside.
 *
 * <p>Its keys are described by the JSON Schema {@code sheaf/core/record/record.schema.json} in
 * {@code core}. Numbers are written in full, so that what is read back is equal.
 */
public final class RecordJson {

  /** Tells a record from other JSON. */
  private static final String FORMAT = "sheaf-record";

  /** A record with a higher one is refused. */
  private static final int VERSION = 1;

  private RecordJson() {}

  /** The record as one line, without a line end. */
  public static String line(BowRecord record) {
    return Tree.line(tree(record));
  }

  /**
   * Reads {@link #line} back: an equal record.
   *
   * @throws IllegalArgumentException when the text is not such a line
   */
  public static BowRecord parse(String line) {
    JsonNode tree = Tree.parse(line);
    if (!FORMAT.equals(Tree.text(tree, "format"))) {
      throw new IllegalArgumentException("not a record: " + Tree.text(tree, "format"));
    }
    if (Tree.number(tree, "version") > VERSION) {
      throw new IllegalArgumentException(
          "a record of format %.0f, where %d is known"
              .formatted(Tree.number(tree, "version"), VERSION));
    }
    return new BowRecord(bow(Tree.get(tree, "bow")), Tree.list(tree, "visits", VisitJson::parse));
  }

  static ObjectNode tree(BowRecord record) {
    ObjectNode tree = Tree.object().put("format", FORMAT).put("version", VERSION);
    tree.set("bow", tree(record.bow()));
    put(tree, "visits", record.visits(), VisitJson::tree);
    return tree;
  }

  private static ObjectNode tree(Bow bow) {
    ObjectNode tree = Tree.object().put("words", bow.words().orElse(null));
    put(tree, "traits", bow.traits(), RecordJson::tree);
    return tree;
  }

  private static Bow bow(JsonNode tree) {
    return new Bow(
        Tree.optional(tree, "words", JsonNode::textValue),
        Tree.list(tree, "traits", RecordJson::trait));
  }

  private static ObjectNode tree(Trait trait) {
    ObjectNode tree = Tree.object().put("key", trait.key()).put("label", trait.label());
    tree.set("answer", TakenJson.tree(trait.answer()));
    return tree;
  }

  private static Trait trait(JsonNode tree) {
    return new Trait(
        Tree.text(tree, "key"),
        Tree.text(tree, "label"),
        TakenJson.parse(Tree.get(tree, "answer")));
  }

  /** Puts a list. */
  static <T> void put(ObjectNode tree, String key, List<T> list, Function<T, ObjectNode> write) {
    ArrayNode array = tree.putArray(key);
    list.forEach(one -> array.add(write.apply(one)));
  }
}
