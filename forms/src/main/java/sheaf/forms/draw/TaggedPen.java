package sheaf.forms.draw;

import java.awt.Color;
import java.io.IOException;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkedContentReference;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import sheaf.core.layout.Ink.Align;
import sheaf.core.layout.Ink.Weight;
import sheaf.core.page.MmRect;

/**
 * A pen on a page of a tagged document: all that it draws either belongs to a part of the document
 * or is decoration.
 */
public final class TaggedPen {

  private final PDDocument document;
  private final PDPageContentStream out;
  private final PDPage page;
  private final Pen pen;
  private final Typeface typeface;
  private final double pageHeight;

  /** The part that each piece of the page's content belongs to, by its number on the page. */
  private final COSArray owners;

  TaggedPen(
      PDDocument document,
      PDPageContentStream out,
      PDPage page,
      Typeface typeface,
      COSArray owners) {
    this.document = document;
    this.out = out;
    this.page = page;
    this.typeface = typeface;
    this.pageHeight = page.getMediaBox().getHeight() * Mm.PER_POINT;
    this.pen = new Pen(out, typeface, pageHeight);
    this.owners = owners;
  }

  /** What it writes with. */
  public Typeface typeface() {
    return typeface;
  }

  /** Sets the colour of all that follows. */
  public void colour(Color colour) throws IOException {
    pen.colour(colour);
  }

  /** Draws what belongs to a part. */
  public void content(Part part, Pen.Drawing drawing) throws IOException {
    int number = owners.size();
    owners.add(part.element());
    PDMarkedContentReference reference = new PDMarkedContentReference();
    reference.setPage(page);
    reference.setMCID(number);
    part.element().appendKid(reference);
    out.beginMarkedContent(COSName.getPDFName(part.element().getStructureType()), number);
    drawing.draw(pen);
    out.endMarkedContent();
  }

  /** Draws what says nothing: lines, boxes, page numbers. */
  public void decoration(Pen.Drawing drawing) throws IOException {
    out.beginMarkedContent(COSName.ARTIFACT);
    drawing.draw(pen);
    out.endMarkedContent();
  }

  /**
   * Draws a picture.
   *
   * @param parent what it is a part of
   * @param alternative what it shows, in words
   * @param place all that it covers
   */
  public void figure(Part parent, String alternative, MmRect place, Pen.Drawing drawing)
      throws IOException {
    PDRectangle box =
        new PDRectangle(
            Mm.points(place.x()),
            Mm.points(pageHeight - place.bottom()),
            Mm.points(place.width()),
            Mm.points(place.height()));
    content(parent.addFigure(alternative, box), drawing);
  }

  /**
   * Puts a picture into a rectangle.
   *
   * @param parent what it is a part of
   * @param alternative what it shows, in words
   * @param place as wide for its height as the picture is
   */
  public void picture(Part parent, String alternative, MmRect place, Picture picture)
      throws IOException {
    PDImageXObject pixels = picture.in(document);
    figure(parent, alternative, place, p -> p.picture(pixels, place));
  }

  /**
   * Writes the text of a part, broken into lines inside a rectangle; a word that is wider than the
   * rectangle is broken too.
   *
   * @return the height used, in millimetres
   * @throws TextDoesNotFitException when it needs more room
   */
  public double text(Part part, String text, MmRect rect, Weight weight, double size, Align align)
      throws IOException {
    String broken = typeface.breakable(text, rect.width(), weight, size);
    if (!broken.equals(text) || typeface.lacksLettersOf(text, weight)) {
      part.actualText(text);
    }
    double[] used = new double[1];
    content(part, p -> used[0] = p.block(broken, rect, weight, size, align));
    return used[0];
  }
}
