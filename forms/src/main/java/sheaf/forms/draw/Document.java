package sheaf.forms.draw;

import java.io.IOException;
import java.io.OutputStream;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAppearanceStream;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences.DUPLEX;
import org.apache.pdfbox.pdmodel.interactive.viewerpreferences.PDViewerPreferences.PRINT_SCALING;
import sheaf.core.layout.Ink.Weight;

/** A PDF being made. Two documents made from the same input are the same, byte for byte. */
public final class Document implements AutoCloseable {

  private final PDDocument document = new PDDocument();
  private final Typeface typeface;

  /** Holds the resources that all pages drawn late share; it is itself never written. */
  private final PDAppearanceStream late = new PDAppearanceStream(document);

  /**
   * Begins a document.
   *
   * @param title shown by readers in place of the file's name
   * @param content tells this document from others of that title; goes into its identifier in place
   *     of the time of day
   */
  public Document(String title, String content) throws IOException {
    typeface = new Typeface(document);
    late.setResources(new PDResources());
    for (Weight weight : Weight.values()) {
      late.getResources().add(typeface.of(weight));
    }
    document.setDocumentId((long) content.hashCode());
    document.getDocumentInformation().setTitle(title);
    document.getDocumentInformation().setCreator("Sheaf");
    document.getDocumentCatalog().setLanguage("en");
    PDViewerPreferences preferences = new PDViewerPreferences(new COSDictionary());
    preferences.setDisplayDocTitle(true);
    // A hint only: many programs shrink pages all the same, so every sheet bears a rule.
    preferences.setPrintScaling(PRINT_SCALING.None);
    document.getDocumentCatalog().setViewerPreferences(preferences);
  }

  /** Adds a page of a size in millimetres. */
  public PDPage page(double width, double height) {
    PDPage page = new PDPage(box(width, height));
    document.addPage(page);
    return page;
  }

  /** Draws on a page, after anything drawn before. */
  public void draw(PDPage page, Pen.Drawing drawing) throws IOException {
    try (PDPageContentStream out =
        new PDPageContentStream(
            document, page, PDPageContentStream.AppendMode.APPEND, true, false)) {
      drawing.draw(new Pen(out, typeface, page.getMediaBox().getHeight() * Mm.PER_POINT));
    }
  }

  /** Something drawn once that many pages show. */
  public PDFormXObject shared(double width, double height, Pen.Drawing drawing) throws IOException {
    // An appearance stream is a form like any other, and the one kind that can be drawn into.
    PDAppearanceStream form = new PDAppearanceStream(document);
    form.setBBox(box(width, height));
    form.setResources(new PDResources());
    try (OutputStream stream = form.getContentStream().createOutputStream(COSName.FLATE_DECODE);
        PDPageContentStream out = new PDPageContentStream(document, form, stream)) {
      drawing.draw(new Pen(out, typeface, height));
    }
    return form;
  }

  /** Draws on a page over something shared. */
  public void drawOver(PDPage page, PDFormXObject shared, Pen.Drawing drawing) throws IOException {
    try (PDPageContentStream out = new PDPageContentStream(document, page)) {
      out.drawForm(shared);
      drawing.draw(new Pen(out, typeface, page.getMediaBox().getHeight() * Mm.PER_POINT));
    }
  }

  /**
   * Adds a page over something shared, drawn only while the document is written: so a document of
   * thousands of pages never holds more than one of their contents.
   *
   * <p>Its letters must be {@linkplain #embed embedded} beforehand, since the typeface's subset is
   * written first.
   */
  public void drawLate(double width, double height, PDFormXObject shared, Pen.Drawing drawing) {
    PDPage page = page(width, height);
    page.setResources(late.getResources());
    // Whatever a content needs must be known before writing begins.
    late.getResources().add(shared);
    page.getCOSObject()
        .setItem(COSName.CONTENTS, new LateStream(out -> late(out, height, shared, drawing)));
  }

  private void late(OutputStream stream, double height, PDFormXObject shared, Pen.Drawing drawing)
      throws IOException {
    try (PDPageContentStream out = new PDPageContentStream(document, late, stream)) {
      out.drawForm(shared);
      drawing.draw(new Pen(out, typeface, height));
    }
  }

  /** Embeds letters that pages drawn late will need. */
  public void embed(String letters) {
    typeface.embed(letters);
  }

  /** Says whether leaves are printed on both sides, turned over their long edge, or on one. */
  public void sides(boolean both) {
    PDViewerPreferences preferences = document.getDocumentCatalog().getViewerPreferences();
    preferences.setDuplex(both ? DUPLEX.DuplexFlipLongEdge : DUPLEX.Simplex);
  }

  /** Writes the finished document; the stream is left open. */
  public void write(OutputStream out) throws IOException {
    document.save(out);
  }

  private static PDRectangle box(double width, double height) {
    return new PDRectangle(Mm.points(width), Mm.points(height));
  }

  @Override
  public void close() throws IOException {
    document.close();
  }
}
