package sheaf.scanner.hole;

import org.opencv.core.CvType;
import org.opencv.core.Mat;
import org.opencv.core.Point;
import org.opencv.core.Rect;
import org.opencv.core.Scalar;
import org.opencv.core.Size;
import org.opencv.imgproc.Imgproc;
import sheaf.core.layout.Field;
import sheaf.core.layout.Ink;
import sheaf.core.layout.Layout;
import sheaf.core.layout.RegisterMark;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;
import sheaf.scanner.sheet.FlatSheet;

/** Where a sheet bears print, or boxes that people write in: there darkness says nothing. */
final class KnownInk {

  /** Print may lie this far off its place, in millimetres: geometry, toner spread, blur. */
  private static final double SPREAD = 0.35;

  /** Pens overshoot the boxes they write in by this much, in millimetres. */
  private static final double OVERSHOOT = 1.5;

  /** Outer edge of the page in which no hole is sought, in millimetres: as far out as the marks. */
  private static final double MARGIN = 9;

  private static final Scalar ON = new Scalar(255);
  private static final Scalar OFF = new Scalar(0);
  private static final int FILLED = -1;

  private final Mat mask;

  private KnownInk(Mat mask) {
    this.mask = mask;
  }

  /** A mask of the flat sheet's size: 255 where ink is known to be, else 0. Caller releases. */
  static Mat mask(Layout layout, Size size) {
    KnownInk known = new KnownInk(new Mat(size, CvType.CV_8UC1, OFF));
    layout.ink().forEach(known::ink);
    layout.marks().stream().map(RegisterMark::square).forEach(known::rect);
    layout.codes().forEach(known::rect);
    for (Field field : layout.fields()) {
      known.field(field);
    }
    known.margin();
    return known.mask;
  }

  private void ink(Ink ink) {
    if (ink instanceof Ink.Stroke stroke) {
      int thickness = pixels(stroke.width() + 2 * SPREAD);
      Imgproc.line(mask, at(stroke.from()), at(stroke.to()), ON, thickness);
    } else if (ink instanceof Ink.Box box) {
      Imgproc.rectangle(mask, rectangle(box.rect()), ON, pixels(box.width() + 2 * SPREAD));
    } else if (ink instanceof Ink.Disc disc) {
      Imgproc.circle(mask, at(disc.centre()), pixels(disc.radius() + SPREAD), ON, FILLED);
    } else if (ink instanceof Ink.Ring ring) {
      int thickness = pixels(ring.width() + 2 * SPREAD);
      Imgproc.circle(mask, at(ring.centre()), pixels(ring.radius()), ON, thickness);
    } else if (ink instanceof Ink.Label label) {
      rect(label.rect());
    }
  }

  private void field(Field field) {
    if (field instanceof Field.Choice choice) {
      choice.options().forEach(option -> rect(option.box().grow(OVERSHOOT)));
    } else if (field instanceof Field.Number number) {
      number.digits().forEach(digit -> rect(digit.box().grow(OVERSHOOT)));
    }
  }

  /** Beyond the marks the paper ends, and what lies beside it begins. */
  private void margin() {
    Imgproc.rectangle(mask, new Rect(0, 0, mask.cols(), mask.rows()), ON, 2 * pixels(MARGIN) - 1);
  }

  private void rect(MmRect rect) {
    Imgproc.rectangle(mask, rectangle(rect.grow(SPREAD)), ON, FILLED);
  }

  private static Rect rectangle(MmRect rect) {
    Point topLeft = FlatSheet.toPixel(new MmPoint(rect.x(), rect.y()));
    Point bottomRight = FlatSheet.toPixel(new MmPoint(rect.right(), rect.bottom()));
    return new Rect(topLeft, bottomRight);
  }

  private static Point at(MmPoint place) {
    return FlatSheet.toPixel(place);
  }

  private static int pixels(double mm) {
    return (int) Math.ceil(mm * FlatSheet.PIXELS_PER_MM);
  }
}
