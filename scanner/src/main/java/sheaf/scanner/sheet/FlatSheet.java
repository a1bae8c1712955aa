package sheaf.scanner.sheet;

import java.util.Optional;
import org.opencv.core.Mat;
import org.opencv.core.Point;
import org.opencv.core.Rect;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;

/**
 * A sheet's picture flattened onto the page as designed, at {@link #PIXELS_PER_MM}.
 *
 * @param grey one channel
 * @param colour blue, green, red; empty for a grey picture
 * @param sourcePixelsPerMm resolution of the picture it was flattened from
 */
public record FlatSheet(Mat grey, Optional<Mat> colour, double sourcePixelsPerMm)
    implements AutoCloseable {

  /** Ten pixels a millimetre (254 dpi): a hairline slit of 0.1 mm is still a pixel wide. */
  public static final double PIXELS_PER_MM = 10;

  /** Where a place on the page lies; whole numbers are pixel centres. */
  public static Point toPixel(MmPoint place) {
    return new Point(place.x() * PIXELS_PER_MM - 0.5, place.y() * PIXELS_PER_MM - 0.5);
  }

  /** The place on the page of a pixel position. */
  public static MmPoint toPage(double x, double y) {
    return new MmPoint((x + 0.5) / PIXELS_PER_MM, (y + 0.5) / PIXELS_PER_MM);
  }

  /** The pixels that a rectangle of the page covers, clipped to the page. */
  public Rect pixels(MmRect rect) {
    int left = clip(rect.x(), grey.cols());
    int top = clip(rect.y(), grey.rows());
    int right = clip(rect.right(), grey.cols());
    int bottom = clip(rect.bottom(), grey.rows());
    return new Rect(left, top, right - left, bottom - top);
  }

  private static int clip(double mm, int limit) {
    return (int) Math.max(0, Math.min(limit, Math.round(mm * PIXELS_PER_MM)));
  }

  @Override
  public void close() {
    grey.release();
    colour.ifPresent(Mat::release);
  }
}
