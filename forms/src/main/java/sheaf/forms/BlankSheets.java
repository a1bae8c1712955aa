package sheaf.forms;

import java.io.IOException;
import java.io.OutputStream;
import java.util.HashMap;
import java.util.Map;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import sheaf.core.job.SheetCode;
import sheaf.core.layout.Layout;
import sheaf.core.layout.LayoutId;
import sheaf.core.layout.Layouts;
import sheaf.core.page.Paper;
import sheaf.forms.draw.Document;

/** Prints blank sheets. */
public final class BlankSheets {

  private BlankSheets() {}

  /**
   * Writes a PDF with a page for each sheet, in order.
   *
   * @throws IllegalArgumentException when a sheet's layout was never released
   */
  public static void write(Iterable<SheetCode> sheets, OutputStream out) throws IOException {
    Map<LayoutId, PDFormXObject> shared = new HashMap<>();
    StringBuilder content = new StringBuilder();
    sheets.forEach(code -> content.append(code.text()).append(' '));
    try (Document document = new Document("Sheaf sheets", content.toString())) {
      for (SheetCode code : sheets) {
        page(code, shared, document);
      }
      document.write(out);
    }
  }

  private static void page(SheetCode code, Map<LayoutId, PDFormXObject> shared, Document document)
      throws IOException {
    Layout layout =
        Layouts.find(code.layout())
            .orElseThrow(
                () -> new IllegalArgumentException("no such layout: " + code.layout().code()));
    Paper paper = code.layout().paper();
    PDFormXObject form = shared.get(layout.id());
    if (form == null) {
      form =
          document.shared(paper.width(), paper.height(), pen -> SheetPainter.shared(layout, pen));
      shared.put(layout.id(), form);
    }
    PDPage page = document.page(paper.width(), paper.height());
    document.drawOver(page, form, pen -> SheetPainter.own(layout, code, pen));
  }
}
