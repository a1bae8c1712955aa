package sheaf.scanner.hole;

import java.util.LinkedHashMap;
import java.util.Map;
import org.opencv.core.CvType;
import org.opencv.core.Mat;
import org.opencv.core.Point;
import org.opencv.core.Rect;
import org.opencv.core.Scalar;
import org.opencv.core.Size;
import org.opencv.imgproc.Imgproc;
import sheaf.core.layout.Ink;
import sheaf.core.layout.Layout;
import sheaf.core.layout.LayoutId;
import sheaf.core.layout.RegisterMark;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;
import sheaf.scanner.opencv.Mats;
import sheaf.scanner.sheet.FlatSheet;

/**
 * What a sheet bears in print, and boxes that people write in: a byte of marks for each pixel.
 *
 * <p>Every sheet of a layout bears the same, so it is drawn once and kept.
 */
final class KnownInk {

  /** Here the paper's tone says nothing: edges of print, lines, text, codes, boxes. */
  static final int HIDDEN = 1;

  /**
   * Here even an opening cannot be told: the same without lines and letters, which are too narrow
   * to be taken for one.
   */
  static final int COVERED = 2;

  /** Inside print that is thick enough to tell it from a hole through it. */
  static final int SOLID = 4;

  /** The kinds of sheet in a stack are few. */
  private static final int KEPT = 4;

  private static final Map<LayoutId, KnownInk> DRAWN =
      new LinkedHashMap<>() {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<LayoutId, KnownInk> eldest) {
          return size() > KEPT;
        }
      };

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

  private final int columns;
  private final int rows;
  private final byte[] marks;
  private final byte[] half;

  /** Takes masks of one size that are 255 where a mark is set, else 0. */
  KnownInk(Mat hidden, Mat covered, Mat solid) {
    columns = hidden.cols();
    rows = hidden.rows();
    marks = new byte[columns * rows];
    mark(hidden, HIDDEN);
    mark(covered, COVERED);
    mark(solid, SOLID);
    half = halved();
  }

  /** Of a layout, in the size of its flat sheet. */
  static KnownInk of(Layout layout, Size size) {
    synchronized (DRAWN) {
      return DRAWN.computeIfAbsent(layout.id(), id -> Drawing.of(layout, size));
    }
  }

  private void mark(Mat mask, int mark) {
    byte[] set = new byte[marks.length];
    mask.get(0, 0, set);
    for (int i = 0; i < set.length; i++) {
      marks[i] |= set[i] & mark;
    }
  }

  /** Half as fine: what any of four pixels hides is hidden; solid is where all four are. */
  private byte[] halved() {
    int wide = (columns + 1) / 2;
    byte[] halved = new byte[wide * ((rows + 1) / 2)];
    for (int i = 0; i < halved.length; i++) {
      int x = i % wide * 2;
      int y = i / wide * 2;
      int beside = Math.min(x + 1, columns - 1);
      int below = Math.min(y + 1, rows - 1);
      int any = at(x, y) | at(beside, y) | at(x, below) | at(beside, below);
      int all = at(x, y) & at(beside, y) & at(x, below) & at(beside, below);
      halved[i] = (byte) (any & ~SOLID | all & SOLID);
    }
    return halved;
  }

  private int at(int x, int y) {
    return marks[y * columns + x];
  }

  /** The marks of a square of the sheet; none beyond it. */
  byte[] marks(Square square) {
    byte[] cut = new byte[square.pixels()];
    int first = square.firstColumn();
    int length = square.endColumn(columns) - first;
    for (int y = square.firstRow(); y < square.endRow(rows) && length > 0; y++) {
      int from = (square.top() + y) * columns + square.left() + first;
      System.arraycopy(marks, from, cut, y * square.side() + first, length);
    }
    return cut;
  }

  /**
   * The marks of the sheet reduced by {@link Seeds#REDUCTION}, row by row; not to be written to.
   */
  byte[] half() {
    return half;
  }

  /** Draws the masks. */
  private record Drawing(Mat hidden, Mat covered, Mat solid) {

    static KnownInk of(Layout layout, Size size) {
      try (Mats mats = new Mats()) {
        Drawing known = new Drawing(blank(size, mats), mats.mat(), blank(size, mats));
        layout.ink().stream().filter(ink -> !isThin(ink)).forEach(known::ink);
        layout.ink().forEach(known::inside);
        layout.marks().stream().map(RegisterMark::square).forEach(known::rect);
        layout.codes().forEach(known::rect);
        layout.boxes().forEach(box -> known.rect(box.grow(OVERSHOOT)));
        known.margin();
        known.hidden.copyTo(known.covered);
        layout.ink().stream().filter(Drawing::isThin).forEach(known::ink);
        return new KnownInk(known.hidden, known.covered, known.solid);
      }
    }

    private static Mat blank(Size size, Mats mats) {
      return mats.own(new Mat(size, CvType.CV_8UC1, OFF));
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
  }
}
