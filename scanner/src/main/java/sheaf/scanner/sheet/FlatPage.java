package sheaf.scanner.sheet;

import java.util.List;
import org.opencv.core.Point;
import sheaf.core.page.MmPoint;
import sheaf.core.page.Paper;

/**
 * A page that lies flat: a perspective map, and on top a smooth correction for what little no
 * perspective explains (a lens, a scanner's uneven feed).
 *
 * @param perspective row by row, nine numbers, millimetres to pixels
 * @param correction added in pixels
 */
record FlatPage(double[] perspective, Correction correction) implements PageMap {

  @Override
  public Point toPixel(MmPoint place) {
    double[] h = perspective;
    double w = h[6] * place.x() + h[7] * place.y() + h[8];
    double[] more = correction.at(place);
    return new Point(
        (h[0] * place.x() + h[1] * place.y() + h[2]) / w + more[0],
        (h[3] * place.x() + h[4] * place.y() + h[5]) / w + more[1]);
  }

  /**
   * How much larger the picture's near side is than its far side, less one: zero for a flatbed, a
   * tenth or more for a photo taken at a slant.
   */
  double foreshortening(Paper paper) {
    double[] h = perspective;
    double least = Double.MAX_VALUE;
    double most = 0;
    for (MmPoint corner : corners(paper)) {
      double w = Math.abs(h[6] * corner.x() + h[7] * corner.y() + h[8]);
      least = Math.min(least, w);
      most = Math.max(most, w);
    }
    return most / least - 1;
  }

  private static List<MmPoint> corners(Paper paper) {
    double width = paper.width();
    double height = paper.height();
    return List.of(
        new MmPoint(0, 0),
        new MmPoint(width, 0),
        new MmPoint(width, height),
        new MmPoint(0, height));
  }
}
