package sheaf.forms;

import java.awt.Color;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import sheaf.core.layout.Ink.Align;
import sheaf.core.layout.Ink.Weight;
import sheaf.core.page.MmRect;
import sheaf.core.page.Paper;
import sheaf.forms.draw.Document;
import sheaf.forms.draw.Pen;

/**
 * The page that is laid behind a shot sheet while it is scanned or photographed: holes then show in
 * a colour that neither paper, toner nor pens have.
 */
public final class Backing {

  /** The colour, as sRGB: a pink that is easy to print and that no office pen writes in. */
  public static final Color COLOUR = new Color(230, 0, 126);

  /** White around the colour in millimetres, because most printers cannot reach the edge. */
  private static final double MARGIN = 5;

  /** A white strip for the caption at the foot, where no sheet of ours is shot at. */
  private static final double STRIP = 5.5;

  private static final double CAPTION_SIZE = 8;

  private static final String CAPTION =
      "Backing. Print in colour, lay it behind a shot sheet, colour toward the holes, "
          + "then scan or photograph the two together.";

  private Backing() {}

  /**
   * Writes a PDF of backings.
   *
   * @param copies pages, one or more
   * @throws IllegalArgumentException when {@code copies} is less than one
   */
  public static void write(Paper paper, int copies, OutputStream out) throws IOException {
    if (copies < 1) {
      throw new IllegalArgumentException("copies must be at least 1, not " + copies);
    }
    try (Document document = new Document("Sheaf backing", paper.label() + copies)) {
      PDFormXObject colour =
          document.shared(paper.width(), paper.height(), pen -> draw(paper, pen));
      for (int i = 0; i < copies; i++) {
        document.drawOver(document.page(paper.width(), paper.height()), colour, pen -> {});
      }
      document.write(out);
    }
  }

  private static void draw(Paper paper, Pen pen) throws IOException {
    double width = paper.width() - 2 * MARGIN;
    double height = paper.height() - 2 * MARGIN - STRIP;
    pen.colour(COLOUR);
    pen.fill(List.of(new MmRect(MARGIN, MARGIN, width, height)));
    pen.colour(Color.BLACK);
    MmRect strip = new MmRect(MARGIN + 1, MARGIN + height + 1, width - 2, STRIP - 1);
    pen.block(CAPTION, strip, Weight.REGULAR, CAPTION_SIZE, Align.LEFT);
  }
}
