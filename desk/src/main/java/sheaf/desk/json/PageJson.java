package sheaf.desk.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.OptionalDouble;
import sheaf.core.reading.PageReading;
import sheaf.core.reading.PrintScale;

/**
 * One page as one JSON object on one line.
 *
 * <pre>
 * source         text: the file as it was named, with # and the page's number when it has several
 * status         read, check or refused
 * reasons        list of {code, message, place {x, y} where it has one}
 * sheet          null when unknown, or {job, number, kind, variant, layout (its version), page (the
 *                paper: letter, a4), units (in, metric)}
 * pixelsPerMm    number or null
 * printScale     number or null: true size over designed size, both directions taken together
 * printScaleXY   {x, y} or null: the same across and down
 * holes          list of {x, y, head (field, broadhead, unknown), blades, cut, aim (field,
 *                broadhead, shared), zone (number of the band, or null), confidence, axisError,
 *                diameter}
 * tears          list of {zone, point {x, y}, tail {x, y}, length (true millimetres where the print
 *                scale is known; 0 for a bullet hole), vanes (3, 4 or null when they do not tell),
 *                pointError, tailError, confidence}
 * fields         object: key to {text, value, unit, confidence, state (read, check, blank)};
 *                text, value and unit are null where there is none; what a person said besides has
 *                by (looked, typed)
 * linesWithin    number or null: nine in ten places on printed lines lie within so many millimetres
 *                of where they should be on the flattened page
 * note           null, or what is written freely on it as a picture: {width, height, png (in
 *                Base64)}
 * </pre>
 *
 * <p>Places and lengths are millimetres on the page as designed, from its top-left corner, x to the
 * right, y down, to 0.01 mm. Confidences run from 0 to 1.
 */
public final class PageJson {

  private PageJson() {}

  /** The page as one line, without a line end. */
  public static String line(PageReading page) {
    return Tree.line(tree(page));
  }

  /**
   * Reads {@link #line} back: the same page, with its numbers as rounded there.
   *
   * @throws IllegalArgumentException when the text is not such a line
   */
  public static PageReading parse(String line) {
    JsonNode tree = Tree.parse(line);
    return new PageReading(
        Tree.text(tree, "source"),
        Tree.list(tree, "reasons", ReasonJson::parse),
        Tree.optional(tree, "sheet", SheetJson::parse),
        Tree.optionalNumber(tree, "pixelsPerMm"),
        Tree.optional(tree, "printScaleXY", PageJson::printScale),
        Tree.list(tree, "holes", HoleJson::parse),
        Tree.list(tree, "tears", TearJson::parse),
        FieldJson.parseAll(Tree.get(tree, "fields")),
        // Readings kept from before it was measured do not tell.
        tree.has("linesWithin") ? Tree.optionalNumber(tree, "linesWithin") : OptionalDouble.empty(),
        Tree.optional(tree, "note", NoteJson::parse));
  }

  static ObjectNode tree(PageReading page) {
    ObjectNode tree = Tree.object();
    tree.put("source", page.source());
    tree.put("status", page.state().label());
    ArrayNode reasons = tree.putArray("reasons");
    page.reasons().forEach(reason -> reasons.add(ReasonJson.tree(reason)));
    tree.set("sheet", page.sheet().map(SheetJson::tree).orElse(null));
    tree.put("pixelsPerMm", hundredth(page.pixelsPerMm()));
    tree.put("printScale", page.printScale().map(scale -> Round.scale(scale.mean())).orElse(null));
    tree.set("printScaleXY", page.printScale().map(PageJson::tree).orElse(null));
    ArrayNode holes = tree.putArray("holes");
    page.holes().forEach(hole -> holes.add(HoleJson.tree(hole)));
    ArrayNode tears = tree.putArray("tears");
    page.tears().forEach(tear -> tears.add(TearJson.tree(tear, page.printScale())));
    tree.set("fields", FieldJson.tree(page.fields()));
    tree.put("linesWithin", hundredth(page.linesWithin()));
    tree.set("note", page.note().map(NoteJson::tree).orElse(null));
    return tree;
  }

  private static Double hundredth(OptionalDouble number) {
    return number.isPresent() ? Round.hundredth(number.getAsDouble()) : null;
  }

  private static ObjectNode tree(PrintScale scale) {
    return Tree.object().put("x", Round.scale(scale.x())).put("y", Round.scale(scale.y()));
  }

  private static PrintScale printScale(JsonNode tree) {
    return new PrintScale(Tree.number(tree, "x"), Tree.number(tree, "y"));
  }
}
