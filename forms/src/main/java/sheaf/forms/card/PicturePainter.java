package sheaf.forms.card;

import java.awt.Color;
import java.io.IOException;
import java.util.List;
import sheaf.core.layout.Ink.Weight;
import sheaf.core.picture.Shape;
import sheaf.core.picture.Shape.Stroke;
import sheaf.core.picture.Shape.Tone;
import sheaf.forms.draw.Pen;

/** Paints the shapes of a picture on paper. */
final class PicturePainter {

  private static final Color PAPER_GREY = new Color(205, 205, 205);
  private static final Color FAINT_GREY = new Color(110, 110, 110);

  private PicturePainter() {}

  static void paint(List<Shape> shapes, Pen pen) throws IOException {
    for (Shape shape : shapes) {
      paint(shape, pen);
    }
  }

  private static void paint(Shape shape, Pen pen) throws IOException {
    if (shape instanceof Shape.Inside inside) {
      pen.within(inside.rect(), within -> paint(inside.shapes(), within));
    } else if (shape instanceof Shape.Line line) {
      stroke(line.tone(), line.width(), line.stroke(), pen);
      pen.line(line.from(), line.to());
      pen.dashes();
    } else if (shape instanceof Shape.Oval oval) {
      stroke(Tone.INK, oval.width(), oval.stroke(), pen);
      pen.ellipse(oval.centre(), oval.first(), oval.second(), oval.angle());
      pen.dashes();
    } else if (shape instanceof Shape.Ring ring) {
      stroke(ring.tone(), ring.width(), Stroke.WHOLE, pen);
      pen.ring(ring.centre(), ring.radius());
    } else if (shape instanceof Shape.Outline outline) {
      stroke(Tone.INK, outline.width(), Stroke.WHOLE, pen);
      pen.outline(outline.rect());
    } else {
      fill(shape, pen);
    }
  }

  private static void fill(Shape shape, Pen pen) throws IOException {
    if (shape instanceof Shape.Disc disc) {
      pen.colour(colour(disc.tone()));
      pen.disc(disc.centre(), disc.radius());
    } else if (shape instanceof Shape.Polygon polygon) {
      pen.colour(colour(polygon.tone()));
      pen.fillPolygon(polygon.corners());
    } else if (shape instanceof Shape.Patch patch) {
      pen.colour(colour(patch.tone()));
      pen.fill(List.of(patch.rect()));
    } else if (shape instanceof Shape.Words words) {
      pen.colour(Color.BLACK);
      double width = pen.widthOf(words.text(), Weight.REGULAR, words.points());
      double x = words.place().x() - (words.side() == Shape.Side.LEFT_OF ? width : 0);
      pen.text(words.text(), x, words.place().y(), Weight.REGULAR, words.points());
    }
  }

  private static void stroke(Tone tone, double width, Stroke stroke, Pen pen) throws IOException {
    pen.colour(colour(tone));
    pen.width(width);
    if (stroke == Stroke.DASHED) {
      pen.dashes(Shape.DASH, Shape.GAP);
    }
  }

  private static Color colour(Tone tone) {
    return switch (tone) {
      case INK -> Color.BLACK;
      case PAPER -> Color.WHITE;
      case HOLE -> PAPER_GREY;
      case FAINT -> FAINT_GREY;
    };
  }
}
