package sheaf.scanner.picture;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apache.pdfbox.contentstream.PDFStreamEngine;
import org.apache.pdfbox.contentstream.operator.DrawObject;
import org.apache.pdfbox.contentstream.operator.Operator;
import org.apache.pdfbox.contentstream.operator.state.Concatenate;
import org.apache.pdfbox.contentstream.operator.state.Restore;
import org.apache.pdfbox.contentstream.operator.state.Save;
import org.apache.pdfbox.contentstream.operator.state.SetGraphicsStateParameters;
import org.apache.pdfbox.contentstream.operator.state.SetMatrix;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.graphics.PDXObject;
import org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject;
import org.apache.pdfbox.pdmodel.graphics.image.PDImageXObject;
import org.apache.pdfbox.util.Matrix;

/**
 * A picture where a PDF page puts it.
 *
 * @param image the picture
 * @param widthInPoints of the page's room that its rows fill
 * @param heightInPoints of the page's room that its columns fill
 */
record PlacedImage(PDImageXObject image, double widthInPoints, double heightInPoints) {

  private static final double POINTS_PER_INCH = 72;

  static List<PlacedImage> on(PDPage page) throws IOException {
    Finder finder = new Finder();
    finder.processPage(page);
    return finder.found;
  }

  static PlacedImage largest(List<PlacedImage> images) {
    return images.stream().max(Comparator.comparingDouble(PlacedImage::areaInPoints)).orElseThrow();
  }

  double areaInPoints() {
    return widthInPoints * heightInPoints;
  }

  Resolution resolution() {
    return Resolution.ofDpi(
        image.getWidth() / widthInPoints * POINTS_PER_INCH,
        image.getHeight() / heightInPoints * POINTS_PER_INCH);
  }

  /** Follows a page's drawing commands as far as they place pictures. */
  private static final class Finder extends PDFStreamEngine {

    private final List<PlacedImage> found = new ArrayList<>();

    Finder() {
      addOperator(new Concatenate(this));
      addOperator(new DrawObject(this));
      addOperator(new SetGraphicsStateParameters(this));
      addOperator(new Save(this));
      addOperator(new Restore(this));
      addOperator(new SetMatrix(this));
    }

    @Override
    protected void processOperator(Operator operator, List<COSBase> operands) throws IOException {
      if (!operator.getName().equals("Do") || !(operands.get(0) instanceof COSName name)) {
        super.processOperator(operator, operands);
        return;
      }
      PDXObject object = getResources().getXObject(name);
      if (object instanceof PDImageXObject image) {
        Matrix matrix = getGraphicsState().getCurrentTransformationMatrix();
        found.add(
            new PlacedImage(
                image,
                Math.hypot(matrix.getScaleX(), matrix.getShearY()),
                Math.hypot(matrix.getScaleY(), matrix.getShearX())));
      } else if (object instanceof PDFormXObject form) {
        showForm(form);
      }
    }
  }
}
