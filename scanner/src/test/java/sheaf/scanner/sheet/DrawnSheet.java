package sheaf.scanner.sheet;

import java.util.List;
import org.opencv.core.Core;
import org.opencv.core.CvType;
import org.opencv.core.Mat;
import org.opencv.core.Point;
import org.opencv.core.Rect;
import org.opencv.core.Scalar;
import org.opencv.core.Size;
import org.opencv.imgproc.Imgproc;
import sheaf.core.layout.MarkFamily;
import sheaf.core.layout.RegisterMark;
import sheaf.core.page.MmPoint;

/** A page with nothing but its register marks, drawn for tests. */
final class DrawnSheet {

  static final double PIXELS_PER_MM = 8;

  private DrawnSheet() {}

  /** White paper on grey, with the marks of a family, but for those whose index is left out. */
  static Mat of(MarkFamily family, Integer... without) {
    int width = (int) Math.round(family.paper().width() * PIXELS_PER_MM);
    int height = (int) Math.round(family.paper().height() * PIXELS_PER_MM);
    Mat page = new Mat(height, width, CvType.CV_8UC1, new Scalar(250));
    for (RegisterMark mark : family.marks()) {
      if (!List.of(without).contains(mark.tag() % MarkFamily.MARKS)) {
        draw(page, mark);
      }
    }
    Mat framed = new Mat();
    Core.copyMakeBorder(page, framed, 40, 40, 40, 40, Core.BORDER_CONSTANT, new Scalar(120));
    page.release();
    return framed;
  }

  private static void draw(Mat page, RegisterMark mark) {
    double cell = mark.cell() * PIXELS_PER_MM;
    for (int row = 0; row < RegisterMark.CELLS; row++) {
      for (int column = 0; column < RegisterMark.CELLS; column++) {
        if (!mark.white(row, column)) {
          int x = (int) Math.round(mark.square().x() * PIXELS_PER_MM + column * cell);
          int y = (int) Math.round(mark.square().y() * PIXELS_PER_MM + row * cell);
          Imgproc.rectangle(
              page, new Rect(x, y, (int) cell, (int) cell), new Scalar(10), Imgproc.FILLED);
        }
      }
    }
  }

  /** Where a place on the page lies in the drawn picture. */
  static Point at(MmPoint place) {
    return new Point(place.x() * PIXELS_PER_MM + 39.5, place.y() * PIXELS_PER_MM + 39.5);
  }

  /** The picture seen at a slant, and the map that did it. */
  static Mat slanted(Mat picture, Mat map) {
    Mat slanted = new Mat();
    Imgproc.warpPerspective(
        picture, slanted, map, new Size(picture.cols(), picture.rows()), Imgproc.INTER_LINEAR);
    return slanted;
  }
}
