package sheaf.forms;

import java.io.IOException;
import java.io.OutputStream;
import java.util.HashMap;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import sheaf.core.job.SheetCode;
import sheaf.core.layout.Layout;
import sheaf.core.layout.LayoutId;
import sheaf.core.layout.Layouts;
import sheaf.core.page.Paper;
import sheaf.forms.draw.Document;

/**
 * Prints blank sheets.
 *
 * <p>What all sheets of a layout share is stored once; what a sheet has of its own is drawn while
 * the file is written, so that a pad of thousands of pages takes little memory.
 */
public final class BlankSheets {

  /** Letters that job ids, sheet numbers and last values may need. */
  private static final String OWN_LETTERS =
      IntStream.rangeClosed(' ', '~').mapToObj(Character::toString).collect(Collectors.joining())
          + SheetPainter.NOT_KNOWN;

  private final Document document;
  private final Sides sides;
  private final SheetValues values;
  private final Map<LayoutId, Layout> layouts = new HashMap<>();
  private final Map<LayoutId, PDFormXObject> shared = new HashMap<>();
  private int pages;
  private Paper paper;

  private BlankSheets(Document document, Sides sides, SheetValues values) {
    this.document = document;
    this.sides = sides;
    this.values = values;
  }

  /**
   * Writes a PDF with a page for each sheet, in order.
   *
   * @throws IllegalArgumentException when a sheet's layout was never released
   */
  public static void write(Iterable<SheetCode> sheets, OutputStream out) throws IOException {
    write(sheets, Sides.ONE, SheetValues.NONE, out);
  }

  /**
   * Writes a PDF with the sheets in order, for one or both sides of the leaves.
   *
   * @param values what the sheets bear from the start
   * @throws IllegalArgumentException when a sheet's layout was never released
   * @throws sheaf.forms.draw.TextDoesNotFitException when a value is longer than its place
   */
  public static void write(
      Iterable<SheetCode> sheets, Sides sides, SheetValues values, OutputStream out)
      throws IOException {
    StringBuilder content = new StringBuilder();
    sheets.forEach(code -> content.append(code.text()).append(' '));
    try (Document document = new Document("Sheaf sheets", content.toString() + values + sides)) {
      BlankSheets pages = new BlankSheets(document, sides, values);
      document.embed(OWN_LETTERS + String.join("", values.last().values()));
      for (SheetCode code : sheets) {
        pages.add(code);
      }
      document.sides(sides == Sides.BOTH);
      document.write(out);
    }
  }

  /** Pages that the sheets take in print, blank ones included. */
  public static int pages(Iterable<SheetCode> sheets, Sides sides) {
    int pages = 0;
    for (SheetCode code : sheets) {
      pages += startsLeaf(code, sides, pages) ? 2 : 1;
    }
    return pages;
  }

  /** Whether a blank page must come before a sheet, so that it begins a leaf of its own. */
  private static boolean startsLeaf(SheetCode code, Sides sides, int pages) {
    return sides == Sides.BOTH && pages % 2 == 1 && !code.layout().variant().isBack();
  }

  private void add(SheetCode code) throws IOException {
    if (startsLeaf(code, sides, pages)) {
      document.page(paper.width(), paper.height());
      pages++;
    }
    Layout layout = layout(code.layout());
    paper = code.layout().paper();
    document.drawLate(
        paper.width(),
        paper.height(),
        shared(layout),
        pen -> SheetPainter.own(layout, code, values, pen));
    pages++;
  }

  private Layout layout(LayoutId id) {
    return layouts.computeIfAbsent(
        id,
        key ->
            Layouts.find(key)
                .orElseThrow(() -> new IllegalArgumentException("no such layout: " + key.code())));
  }

  private PDFormXObject shared(Layout layout) throws IOException {
    PDFormXObject form = shared.get(layout.id());
    if (form == null) {
      form =
          document.shared(paper.width(), paper.height(), pen -> SheetPainter.shared(layout, pen));
      shared.put(layout.id(), form);
    }
    return form;
  }
}
