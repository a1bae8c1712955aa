package sheaf.core.picture;

import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;

/**
 * From true millimetres around the aim dot to millimetres in the picture.
 *
 * @param middle of what is shown, in true millimetres from the dot
 * @param place where that is in the picture
 * @param perMm picture millimetres for a true one
 */
record PictureScale(MmPoint middle, MmPoint place, double perMm) {

  /** Two shots in one hole need no picture larger than this. */
  private static final double LARGEST = 2;

  /** Room at the foot of the frame for the scale bar, in millimetres. */
  private static final double FOOT = 7;

  /** The scale at which all of a span shows in a frame. */
  static PictureScale fit(MmRect span, MmRect frame) {
    double room = frame.height() - FOOT;
    double perMm = Math.min(frame.width() / span.width(), room / span.height());
    MmPoint place = new MmPoint(frame.centre().x(), frame.y() + room / 2);
    return new PictureScale(span.centre(), place, Math.min(perMm, LARGEST));
  }

  MmPoint inPicture(MmPoint fromDot) {
    return place.plus(fromDot.minus(middle).times(perMm));
  }
}
