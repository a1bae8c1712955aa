package sheaf.scanner.sheet;

import org.opencv.core.Point;
import sheaf.core.layout.MarkFamily;
import sheaf.core.page.MmPoint;

/**
 * How a sheet lies in a picture.
 *
 * @param family whose marks were used
 * @param map of the page onto the picture
 * @param marks number of marks used
 */
record Geometry(MarkFamily family, PageMap map, int marks) {

  /** Where a place on the page lies in the picture. */
  Point toPixel(MmPoint place) {
    return map.toPixel(place);
  }

  /** Pixels for each millimetre around the middle of the page, in the direction with fewer. */
  double pixelsPerMm() {
    MmPoint middle = new MmPoint(family.paper().width() / 2, family.paper().height() / 2);
    return pixelsPerMm(map, middle);
  }

  /** Pixels for each millimetre around a place, in the direction with fewer. */
  static double pixelsPerMm(PageMap map, MmPoint place) {
    Point right = map.right(place);
    Point down = map.down(place);
    return Math.min(Math.hypot(right.x, right.y), Math.hypot(down.x, down.y));
  }
}
