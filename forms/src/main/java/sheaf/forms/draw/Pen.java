package sheaf.forms.draw;

import java.awt.Color;
import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.util.Matrix;
import sheaf.core.layout.Ink.Align;
import sheaf.core.layout.Ink.Weight;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;

/** Draws on a page in millimetres from its top-left corner, x to the right, y down. */
public final class Pen {

  /** Distance of a circle's Bezier handles for a quarter, as a share of the radius. */
  private static final double QUARTER = 0.552284749831;

  /** From the top of a line of text to its baseline, in letter sizes. */
  private static final double BASELINE = 1.0;

  /** The space at which no line is broken. */
  private static final char UNBROKEN = '\u00a0';

  private final PDPageContentStream out;
  private final Typeface typeface;
  private final double pageHeight;

  /** Draws into a stream whose page is so many millimetres high. */
  public Pen(PDPageContentStream out, Typeface typeface, double pageHeight) {
    this.out = out;
    this.typeface = typeface;
    this.pageHeight = pageHeight;
  }

  /** Sets the colour of all that follows. */
  public void colour(Color colour) throws IOException {
    out.setStrokingColor(colour);
    out.setNonStrokingColor(colour);
  }

  /** Sets the width of lines in millimetres. */
  public void width(double mm) throws IOException {
    out.setLineWidth(Mm.points(mm));
  }

  /** Lines of dashes and gaps of the given length in millimetres; none makes them whole again. */
  public void dashes(double... mm) throws IOException {
    float[] pattern = new float[mm.length];
    for (int i = 0; i < mm.length; i++) {
      pattern[i] = Mm.points(mm[i]);
    }
    out.setLineDashPattern(pattern, 0);
  }

  /** Draws something of which only the part inside a rectangle shows. */
  public void within(MmRect rect, Drawing drawing) throws IOException {
    out.saveGraphicsState();
    path(rect);
    out.clip();
    drawing.draw(this);
    out.restoreGraphicsState();
  }

  /** Something drawn with a pen. */
  @FunctionalInterface
  public interface Drawing {
    /** Draws. */
    void draw(Pen pen) throws IOException;
  }

  /** A straight line. */
  public void line(MmPoint from, MmPoint to) throws IOException {
    out.moveTo(x(from.x()), y(from.y()));
    out.lineTo(x(to.x()), y(to.y()));
    out.stroke();
  }

  /** The outline of a rectangle. */
  public void outline(MmRect rect) throws IOException {
    path(rect);
    out.stroke();
  }

  /** Filled rectangles as one area, so that no seam shows between those that touch. */
  public void fill(List<MmRect> rects) throws IOException {
    if (rects.isEmpty()) {
      return;
    }
    for (MmRect rect : rects) {
      path(rect);
    }
    out.fill();
  }

  /** A filled polygon. */
  public void fillPolygon(List<MmPoint> corners) throws IOException {
    out.moveTo(x(corners.get(0).x()), y(corners.get(0).y()));
    for (MmPoint corner : corners.subList(1, corners.size())) {
      out.lineTo(x(corner.x()), y(corner.y()));
    }
    out.closePath();
    out.fill();
  }

  /** A picture that fills a rectangle. */
  void picture(PDImageXObject picture, MmRect rect) throws IOException {
    float width = Mm.points(rect.width());
    out.drawImage(picture, x(rect.x()), y(rect.bottom()), width, Mm.points(rect.height()));
  }

  /** A circle's outline. */
  public void ring(MmPoint centre, double radius) throws IOException {
    ellipsePath(centre, radius, radius, 0);
    out.stroke();
  }

  /** A filled circle. */
  public void disc(MmPoint centre, double radius) throws IOException {
    ellipsePath(centre, radius, radius, 0);
    out.fill();
  }

  /**
   * An ellipse's outline.
   *
   * @param angle of its first half axis, in radians from x toward y
   */
  public void ellipse(MmPoint centre, double first, double second, double angle)
      throws IOException {
    ellipsePath(centre, first, second, angle);
    out.stroke();
  }

  /** One line of text with its left end on the baseline. */
  public void text(String text, double x, double baseline, Weight weight, double size)
      throws IOException {
    write(text, Matrix.getTranslateInstance(x(x), y(baseline)), weight, size);
  }

  /** One line of text upward from its lower end on the baseline. */
  public void turned(String text, double baseline, double bottom, Weight weight, double size)
      throws IOException {
    Matrix matrix = Matrix.getRotateInstance(Math.PI / 2, x(baseline), y(bottom));
    write(text, matrix, weight, size);
  }

  /**
   * Text broken into lines inside a rectangle, from its top.
   *
   * @return the height used, in millimetres
   * @throws TextDoesNotFitException when it needs more room; nothing is ever clipped
   */
  public double block(String text, MmRect rect, Weight weight, double size, Align align)
      throws IOException {
    List<String> lines = typeface.lines(text, rect.width(), weight, size);
    double step = Typeface.lineHeight(size);
    double height = lines.size() * step;
    if (height > rect.height() + 0.1) {
      throw new TextDoesNotFitException(text, rect);
    }
    double baseline = rect.y() + size * BASELINE * Mm.PER_POINT;
    for (String line : lines) {
      double spare = rect.width() - typeface.width(line, weight, size);
      double shift = align == Align.LEFT ? 0 : align == Align.RIGHT ? spare : spare / 2;
      text(line, rect.x() + shift, baseline, weight, size);
      baseline += step;
    }
    return height;
  }

  /** Height in millimetres that a text needs at a width. */
  public double heightOf(String text, double width, Weight weight, double size) {
    return typeface.heightOf(text, width, weight, size);
  }

  /** Width of one line of text in millimetres. */
  public double widthOf(String text, Weight weight, double size) {
    return typeface.width(text, weight, size);
  }

  private void write(String text, Matrix matrix, Weight weight, double size) throws IOException {
    out.beginText();
    out.setFont(typeface.of(weight), (float) size);
    out.setTextMatrix(matrix);
    // A space that only kept two words on one line is an ordinary one once it is drawn.
    out.showText(typeface.printable(text.replace(UNBROKEN, ' '), weight));
    out.endText();
  }

  private void path(MmRect rect) throws IOException {
    out.addRect(x(rect.x()), y(rect.bottom()), Mm.points(rect.width()), Mm.points(rect.height()));
  }

  private void ellipsePath(MmPoint c, double a, double b, double angle) throws IOException {
    double[][] unit = {
      {1, 0},
      {1, QUARTER},
      {QUARTER, 1},
      {0, 1},
      {-QUARTER, 1},
      {-1, QUARTER},
      {-1, 0},
      {-1, -QUARTER},
      {-QUARTER, -1},
      {0, -1},
      {QUARTER, -1},
      {1, -QUARTER},
      {1, 0}
    };
    float[] px = new float[unit.length];
    float[] py = new float[unit.length];
    for (int i = 0; i < unit.length; i++) {
      double u = unit[i][0] * a;
      double v = unit[i][1] * b;
      px[i] = x(c.x() + u * Math.cos(angle) - v * Math.sin(angle));
      py[i] = y(c.y() + u * Math.sin(angle) + v * Math.cos(angle));
    }
    out.moveTo(px[0], py[0]);
    for (int i = 1; i < unit.length; i += 3) {
      out.curveTo(px[i], py[i], px[i + 1], py[i + 1], px[i + 2], py[i + 2]);
    }
    out.closePath();
  }

  private static float x(double mm) {
    return Mm.points(mm);
  }

  private float y(double mm) {
    return Mm.points(pageHeight - mm);
  }
}
