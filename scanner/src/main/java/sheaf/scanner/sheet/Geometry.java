package sheaf.scanner.sheet;

import java.util.List;
import org.opencv.core.Point;
import sheaf.core.layout.MarkFamily;
import sheaf.core.page.MmPoint;

/**
 * Where a place on the page as designed lies in the picture: a perspective map, and on top a smooth
 * correction for what no perspective explains (a curled sheet, a lens, a scanner's uneven feed).
 *
 * @param family whose marks were used
 * @param perspective row by row, nine numbers, millimetres to pixels
 * @param correction added in pixels
 * @param residual root mean square distance of the marks' corners from the map, in millimetres
 * @param marks number of marks used
 */
record Geometry(
    MarkFamily family, double[] perspective, Correction correction, double residual, int marks) {

  /** Where a place on the page lies in the picture. */
  Point toPixel(MmPoint place) {
    Point plain = project(place.x(), place.y());
    double[] more = correction.at(place);
    return new Point(plain.x + more[0], plain.y + more[1]);
  }

  private Point project(double x, double y) {
    double[] h = perspective;
    double w = h[6] * x + h[7] * y + h[8];
    return new Point((h[0] * x + h[1] * y + h[2]) / w, (h[3] * x + h[4] * y + h[5]) / w);
  }

  /** Pixels for each millimetre around the middle of the page. */
  double pixelsPerMm() {
    MmPoint middle = middle();
    double step = 10;
    Point a = toPixel(new MmPoint(middle.x() - step, middle.y()));
    Point b = toPixel(new MmPoint(middle.x() + step, middle.y()));
    Point c = toPixel(new MmPoint(middle.x(), middle.y() - step));
    Point d = toPixel(new MmPoint(middle.x(), middle.y() + step));
    double across = Math.hypot(b.x - a.x, b.y - a.y) / (2 * step);
    double down = Math.hypot(d.x - c.x, d.y - c.y) / (2 * step);
    return Math.min(across, down);
  }

  /**
   * How much larger the picture's near side is than its far side, less one: zero for a flatbed, a
   * tenth or more for a photo taken at a slant.
   */
  double foreshortening() {
    double[] h = perspective;
    double least = Double.MAX_VALUE;
    double most = 0;
    for (MmPoint corner : pageCorners()) {
      double w = Math.abs(h[6] * corner.x() + h[7] * corner.y() + h[8]);
      least = Math.min(least, w);
      most = Math.max(most, w);
    }
    return most / least - 1;
  }

  private MmPoint middle() {
    return new MmPoint(family.paper().width() / 2, family.paper().height() / 2);
  }

  private List<MmPoint> pageCorners() {
    double width = family.paper().width();
    double height = family.paper().height();
    return List.of(
        new MmPoint(0, 0),
        new MmPoint(width, 0),
        new MmPoint(width, height),
        new MmPoint(0, height));
  }
}
