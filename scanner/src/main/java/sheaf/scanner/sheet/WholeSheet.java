package sheaf.scanner.sheet;

import java.util.stream.Stream;
import org.opencv.core.Point;
import org.opencv.core.Size;
import sheaf.core.layout.Layout;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;
import sheaf.core.reading.ReasonCode;
import sheaf.scanner.picture.UnreadableException;

/**
 * Whether all that is to be read of a sheet is in its picture: four marks may be seen although a
 * part of the sheet is not, and beyond the picture's edge a box would be neither blank nor ticked.
 */
final class WholeSheet {

  private WholeSheet() {}

  /** Throws when the target or a box reaches beyond the picture's edge. */
  static void refuseUnlessInside(Layout layout, Geometry geometry, Size picture)
      throws UnreadableException {
    boolean inside =
        Stream.concat(layout.target().stream(), layout.boxes().stream())
            .flatMap(WholeSheet::corners)
            .map(geometry::toPixel)
            .allMatch(corner -> isInside(corner, picture));
    if (!inside) {
      throw new UnreadableException(
          ReasonCode.PARTLY_OUTSIDE,
          "A part of the sheet that is to be read lies outside the picture: take the whole sheet, with a little room around it.");
    }
  }

  private static Stream<MmPoint> corners(MmRect rect) {
    return Stream.of(
        new MmPoint(rect.x(), rect.y()),
        new MmPoint(rect.right(), rect.y()),
        new MmPoint(rect.right(), rect.bottom()),
        new MmPoint(rect.x(), rect.bottom()));
  }

  private static boolean isInside(Point place, Size picture) {
    return place.x >= 0 && place.y >= 0 && place.x < picture.width && place.y < picture.height;
  }
}
