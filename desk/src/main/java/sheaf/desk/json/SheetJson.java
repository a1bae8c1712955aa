package sheaf.desk.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Arrays;
import java.util.Locale;
import sheaf.core.job.JobId;
import sheaf.core.job.SheetCode;
import sheaf.core.layout.LayoutId;
import sheaf.core.layout.SheetKind;
import sheaf.core.layout.UnitSystem;
import sheaf.core.layout.Variant;
import sheaf.core.page.Paper;

/** Which sheet a page is. */
final class SheetJson {

  private SheetJson() {}

  static ObjectNode tree(SheetCode sheet) {
    LayoutId layout = sheet.layout();
    return Tree.object()
        .put("job", sheet.job().spoken())
        .put("number", sheet.number())
        .put("kind", layout.kind().label())
        .put("variant", label(layout.variant()))
        .put("layout", layout.version())
        .put("page", layout.paper().label())
        .put("units", layout.units().label());
  }

  static SheetCode parse(JsonNode tree) {
    String job = Tree.text(tree, "job");
    LayoutId layout =
        new LayoutId(
            variant(tree),
            Tree.labelled(Paper.values(), Paper::label, tree, "page"),
            Tree.labelled(UnitSystem.values(), UnitSystem::label, tree, "units"),
            (int) Tree.number(tree, "layout"));
    return new SheetCode(
        JobId.parse(job).orElseThrow(() -> new IllegalArgumentException("not a job id: " + job)),
        (int) Tree.number(tree, "number"),
        layout);
  }

  private static Variant variant(JsonNode tree) {
    SheetKind kind = Tree.labelled(SheetKind.values(), SheetKind::label, tree, "kind");
    Variant[] variants =
        Arrays.stream(Variant.values()).filter(one -> one.kind() == kind).toArray(Variant[]::new);
    return Tree.labelled(variants, SheetJson::label, tree, "variant");
  }

  private static String label(Variant variant) {
    return variant.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
