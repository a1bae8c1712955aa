package sheaf.desk.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.Locale;
import java.util.OptionalInt;
import sheaf.core.answer.Answer;
import sheaf.core.answer.Said;
import sheaf.core.layout.Aim;
import sheaf.core.measure.Unit;
import sheaf.core.reading.FieldReading.Teller;
import sheaf.core.reading.Head;

/**
 * What a person said as one JSON object on one line.
 *
 * <pre>
 * sheet   number, or null for a field of the bench card
 * who     text or null
 * when    such as 2026-09-14T16:30:00Z
 * why     text or null
 * said    value, hole, no_hole, tear, no_tear or as_read; with it, by that word:
 *         value    key, text (null for blank), value, unit, how (looked, typed), seen (what the
 *                  machine had read)
 *         hole     near {x, y} (where it was shown), at {x, y} (where it is), head, aim
 *         no_hole  near {x, y}
 *         tear     zone, point {x, y}, tail {x, y}
 *         no_tear  zone
 *         as_read  doubt {code, message, place {x, y} where it has one}
 * </pre>
 */
public final class AnswerJson {

  private AnswerJson() {}

  /** The answer as one line, without a line end. */
  public static String line(Answer answer) {
    ObjectNode tree =
        Tree.object()
            .put("sheet", answer.sheet().isPresent() ? answer.sheet().getAsInt() : null)
            .put("who", answer.who().orElse(null))
            .put("when", answer.when().toString())
            .put("why", answer.why().orElse(null));
    put(answer.said(), tree);
    return Tree.line(tree);
  }

  /**
   * Reads {@link #line} back.
   *
   * @throws IllegalArgumentException when the text is not such a line
   */
  public static Answer parse(String line) {
    JsonNode tree = Tree.parse(line);
    return new Answer(
        Tree.optional(tree, "sheet", node -> OptionalInt.of(node.intValue()))
            .orElse(OptionalInt.empty()),
        said(tree),
        Tree.optional(tree, "who", JsonNode::textValue),
        Instant.parse(Tree.text(tree, "when")),
        Tree.optional(tree, "why", JsonNode::textValue));
  }

  private static void put(Said said, ObjectNode tree) {
    if (said instanceof Said.Value value) {
      tree.put("said", "value")
          .put("key", value.key())
          .put("text", value.text().isEmpty() ? null : value.text())
          .put("value", value.value().isPresent() ? value.value().getAsDouble() : null)
          .put("unit", value.unit().map(Unit::symbol).orElse(null))
          .put("how", label(value.teller()))
          .put("seen", value.seen());
    } else if (said instanceof Said.HoleAt hole) {
      tree.put("said", "hole").set("near", Tree.point(hole.near()));
      tree.set("at", Tree.point(hole.at()));
      tree.put("head", hole.head().label()).put("aim", hole.aim().label());
    } else if (said instanceof Said.NoHole none) {
      tree.put("said", "no_hole").set("near", Tree.point(none.near()));
    } else if (said instanceof Said.TearAt tear) {
      tree.put("said", "tear").put("zone", tear.zone()).set("point", Tree.point(tear.point()));
      tree.set("tail", Tree.point(tear.tail()));
    } else if (said instanceof Said.NoTear none) {
      tree.put("said", "no_tear").put("zone", none.zone());
    } else if (said instanceof Said.AsRead read) {
      tree.put("said", "as_read").set("doubt", ReasonJson.tree(read.doubt()));
    }
  }

  private static Said said(JsonNode tree) {
    String said = Tree.text(tree, "said");
    return switch (said) {
      case "value" ->
          new Said.Value(
              Tree.text(tree, "key"),
              Tree.optional(tree, "text", JsonNode::textValue).orElse(""),
              Tree.optionalNumber(tree, "value"),
              Tree.optional(tree, "unit", JsonNode::textValue).flatMap(Unit::ofSymbol),
              Tree.labelled(Teller.values(), AnswerJson::label, tree, "how"),
              Tree.text(tree, "seen"));
      case "hole" ->
          new Said.HoleAt(
              Tree.point(Tree.get(tree, "near")),
              Tree.point(Tree.get(tree, "at")),
              Tree.labelled(Head.values(), Head::label, tree, "head"),
              Tree.labelled(Aim.values(), Aim::label, tree, "aim"));
      case "no_hole" -> new Said.NoHole(Tree.point(Tree.get(tree, "near")));
      case "tear" ->
          new Said.TearAt(
              (int) Tree.number(tree, "zone"),
              Tree.point(Tree.get(tree, "point")),
              Tree.point(Tree.get(tree, "tail")));
      case "no_tear" -> new Said.NoTear((int) Tree.number(tree, "zone"));
      case "as_read" -> new Said.AsRead(ReasonJson.parse(Tree.get(tree, "doubt")));
      default -> throw new IllegalArgumentException("\"said\" is unknown: " + said);
    };
  }

  private static String label(Teller teller) {
    return teller.name().toLowerCase(Locale.ROOT);
  }
}
