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

/**
 * What a sheet bears in print, and boxes that people write in.
 *
 * @param hidden 255 where the paper's tone says nothing: edges of print, lines, text, marks, codes,
 *     boxes
 * @param covered 255 where even an opening cannot be told: the same without lines and letters,
 *     which are too narrow to be taken for one
 * @param solid 255 inside print that is thick enough to tell it from a hole through it
 */
record KnownInk(Mat hidden, Mat covered, Mat solid) implements AutoCloseable {

  /** Print may lie this far off its place, in millimetres: geometry, toner spread, blur. */
  private static final double SPREAD = 0.25;

  /** Pens overshoot the boxes they write in by this much, in millimetres. */
  private static final double OVERSHOOT = 1.5;

  /** Lines at least this thick have an inside, in millimetres. */
  private static final double THICK = 2;

  /** Lines up to this width, in millimetres, are narrower than any opening that counts. */
  private static final double THIN = 0.6;

  /** So are the strokes of letters up to this size, in points. */
  private static final double THIN_LETTERS = 14;

  /** Outer edge of the page in which no hole is sought, in millimetres: as far out as the marks. */
  private static final double MARGIN = 9;

  private static final Scalar ON = new Scalar(255);
  private static final Scalar OFF = new Scalar(0);
  private static final int FILLED = -1;

  /** Draws both masks in the flat sheet's size. */
  static KnownInk of(Layout layout, Size size) {
    KnownInk known = new KnownInk(blank(size), blank(size), blank(size));
    layout.ink().stream().filter(ink -> !isThin(ink)).forEach(known::ink);
    layout.ink().forEach(known::inside);
    layout.marks().stream().map(RegisterMark::square).forEach(known::rect);
    layout.codes().forEach(known::rect);
    layout.fields().forEach(known::field);
    known.margin();
    known.hidden.copyTo(known.covered);
    layout.ink().stream().filter(KnownInk::isThin).forEach(known::ink);
    return known;
  }

  private static Mat blank(Size size) {
    return new Mat(size, CvType.CV_8UC1, OFF);
  }

  private static boolean isThin(Ink ink) {
    return ink instanceof Ink.Label label && label.size() <= THIN_LETTERS
        || ink instanceof Ink.Stroke stroke && stroke.width() <= THIN
        || ink instanceof Ink.Ring ring && ring.width() <= THIN;
  }

  /** Opens up the inside of thick print again. */
  private void inside(Ink ink) {
    if (ink instanceof Ink.Ring ring && ring.width() >= THICK) {
      int thickness = pixels(ring.width() - 2 * SPREAD);
      Imgproc.circle(hidden, at(ring.centre()), pixels(ring.radius()), OFF, thickness);
      Imgproc.circle(solid, at(ring.centre()), pixels(ring.radius()), ON, thickness);
    } else if (ink instanceof Ink.Disc disc && 2 * disc.radius() >= THICK) {
      int radius = pixels(disc.radius() - SPREAD);
      Imgproc.circle(hidden, at(disc.centre()), radius, OFF, FILLED);
      Imgproc.circle(solid, at(disc.centre()), radius, ON, FILLED);
    }
  }

  private void ink(Ink ink) {
    if (ink instanceof Ink.Stroke stroke) {
      int thickness = pixels(stroke.width() + 2 * SPREAD);
      Imgproc.line(hidden, at(stroke.from()), at(stroke.to()), ON, thickness);
    } else if (ink instanceof Ink.Box box) {
      Imgproc.rectangle(hidden, rectangle(box.rect()), ON, pixels(box.width() + 2 * SPREAD));
    } else if (ink instanceof Ink.Disc disc) {
      Imgproc.circle(hidden, at(disc.centre()), pixels(disc.radius() + SPREAD), ON, FILLED);
    } else if (ink instanceof Ink.Ring ring) {
      int thickness = pixels(ring.width() + 2 * SPREAD);
      Imgproc.circle(hidden, at(ring.centre()), pixels(ring.radius()), ON, thickness);
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
    Imgproc.rectangle(
        hidden, new Rect(0, 0, hidden.cols(), hidden.rows()), ON, 2 * pixels(MARGIN) - 1);
  }

  private void rect(MmRect rect) {
    Imgproc.rectangle(hidden, rectangle(rect.grow(SPREAD)), ON, FILLED);
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

  @Override
  public void close() {
    hidden.release();
    covered.release();
    solid.release();
  }
}
