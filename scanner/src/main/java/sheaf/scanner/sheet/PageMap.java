package sheaf.scanner.sheet;

import org.opencv.core.Point;
import sheaf.core.page.MmPoint;

/** Where the places of a page as designed lie in a picture. */
@FunctionalInterface
interface PageMap {

  /** A step on the page that shows which way and how fast the picture goes, in millimetres. */
  double STEP = 0.5;

  /** Where a place on the page lies in the picture; whole numbers are pixel centres. */
  Point toPixel(MmPoint place);

  /** Pixels moved for a millimetre to the right on the page: across and down the picture. */
  default Point right(MmPoint place) {
    return slope(place, STEP, 0);
  }

  /** Pixels moved for a millimetre down the page: across and down the picture. */
  default Point down(MmPoint place) {
    return slope(place, 0, STEP);
  }

  private Point slope(MmPoint place, double dx, double dy) {
    Point before = toPixel(new MmPoint(place.x() - dx, place.y() - dy));
    Point after = toPixel(new MmPoint(place.x() + dx, place.y() + dy));
    return new Point((after.x - before.x) / (2 * STEP), (after.y - before.y) / (2 * STEP));
  }
}
