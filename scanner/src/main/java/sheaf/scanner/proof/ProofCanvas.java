package sheaf.scanner.proof;

import java.util.ArrayList;
import java.util.List;
import org.opencv.core.Mat;
import org.opencv.core.Point;
import org.opencv.core.Rect;
import org.opencv.core.Scalar;
import org.opencv.core.Size;
import org.opencv.imgproc.Imgproc;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;
import sheaf.scanner.proof.ProofMark.Style;

/**
 * Draws marks over a sheet. Every mark is a dark line with a white one under it, so that it shows
 * on paper and on print alike.
 */
final class ProofCanvas {

  /** Blue for what was found, a dark red for doubts; both dark in grey. In blue, green, red. */
  private static final Scalar FOUND = new Scalar(175, 60, 0);

  private static final Scalar DOUBT = new Scalar(20, 20, 190);
  private static final Scalar WHITE = new Scalar(255, 255, 255);

  /** White left on both sides of a line, in pixels. */
  private static final int HALO = 1;

  /** Half the cross in a shaft's middle, in pixels. */
  private static final int CROSS = 7;

  /** Radius of the circle around a doubt, in millimetres. */
  private static final double AROUND_DOUBT = 6.5;

  /** How far off, in pixels, is as bad as covering a pixel of what is drawn or written. */
  private static final double COVERING = 0.5;

  /** The same for a printed label, most of which may be empty. */
  private static final double COVERING_LABEL = 0.02;

  /** A word farther than this from what it names, in pixels, is tied to it by a line. */
  private static final double NEAR = 34;

  private final Mat canvas;
  private final double pixelsPerMm;
  private final List<Rect> taken = new ArrayList<>();
  private final List<Rect> printed = new ArrayList<>();

  ProofCanvas(Mat canvas, double pixelsPerMm) {
    this.canvas = canvas;
    this.pixelsPerMm = pixelsPerMm;
  }

  /** Keeps words and numbers off a box that is filled in by hand. */
  void keepOff(MmRect box) {
    taken.add(pixels(box));
  }

  /** Keeps words and numbers off printed words where there is room elsewhere. */
  void ratherKeepOff(MmRect words) {
    printed.add(pixels(words));
  }

  private Rect pixels(MmRect rect) {
    return new Rect(
        at(new MmPoint(rect.x(), rect.y())), at(new MmPoint(rect.right(), rect.bottom())));
  }

  /** Draws them in order; words and numbers come last, where room is left. */
  void draw(List<ProofMark> marks) {
    marks.forEach(this::shape);
    for (ProofMark mark : marks) {
      if (mark instanceof ProofMark.Doubt doubt) {
        badge(doubt);
      }
    }
    for (ProofMark mark : marks) {
      if (mark instanceof ProofMark.Word word) {
        word(word);
      }
    }
  }

  private void shape(ProofMark mark) {
    if (mark instanceof ProofMark.Shaft shaft) {
      shaft(at(shaft.axis()), shaft.diameter() / 2 * pixelsPerMm);
    } else if (mark instanceof ProofMark.Line line) {
      line(at(line.from()), at(line.to()), line.style());
    } else if (mark instanceof ProofMark.Frame frame) {
      frame(frame.box());
    } else if (mark instanceof ProofMark.Doubt doubt) {
      Point place = at(doubt.place());
      haloed(3, DOUBT, (colour, width) -> dashedCircle(place, aroundDoubt(), colour, width));
    }
  }

  private int aroundDoubt() {
    return (int) Math.round(AROUND_DOUBT * pixelsPerMm);
  }

  private void shaft(Point axis, double radius) {
    int r = (int) Math.round(radius);
    haloed(2, FOUND, (colour, width) -> Imgproc.circle(canvas, axis, r, colour, width, smooth()));
    haloed(
        1,
        FOUND,
        (colour, width) -> {
          segment(moved(axis, -CROSS, 0), moved(axis, CROSS, 0), colour, width);
          segment(moved(axis, 0, -CROSS), moved(axis, 0, CROSS), colour, width);
        });
    taken.add(square(axis, r + 4));
  }

  private void line(Point from, Point to, Style style) {
    switch (style) {
      case SOLID -> haloed(2, FOUND, (colour, width) -> segment(from, to, colour, width));
      case DOTTED -> pieces(from, to, 1, 11, FOUND);
      case DASHED -> pieces(from, to, 12, 20, DOUBT);
    }
  }

  /** Pieces of so many pixels, each so many after the one before. */
  private void pieces(Point from, Point to, double length, double step, Scalar colour) {
    double whole = Math.hypot(to.x - from.x, to.y - from.y);
    for (double along = step; along + length < whole; along += step) {
      Point start = between(from, to, along / whole);
      Point end = between(from, to, (along + length) / whole);
      haloed(3, colour, (tone, width) -> segment(start, end, tone, width));
    }
  }

  private void frame(MmRect box) {
    Point from = at(new MmPoint(box.x(), box.y()));
    Point to = at(new MmPoint(box.right(), box.bottom()));
    haloed(
        3, FOUND, (colour, width) -> Imgproc.rectangle(canvas, from, to, colour, width, smooth()));
  }

  private void dashedCircle(Point centre, int radius, Scalar colour, int width) {
    Size axes = new Size(radius, radius);
    for (int from = 0; from < 360; from += 36) {
      Imgproc.ellipse(canvas, centre, axes, 0, from, from + 17.0, colour, width, smooth());
    }
  }

  private void badge(ProofMark.Doubt doubt) {
    Point place = at(doubt.place());
    int side = 2 * ProofText.BADGE;
    Point middle = room(place, new Size(side, side), aroundDoubt());
    double away = Math.hypot(middle.x - place.x, middle.y - place.y);
    Point rim = between(place, middle, aroundDoubt() / away);
    haloed(2, DOUBT, (colour, width) -> segment(rim, middle, colour, width));
    ProofText.badge(canvas, middle, doubt.number());
    taken.add(square(middle, ProofText.BADGE));
  }

  private void word(ProofMark.Word word) {
    Point what = at(word.what());
    Size size = ProofText.WORD.size(word.text());
    double clear = word.clear() * pixelsPerMm + 8;
    Point middle = room(what, size, clear);
    Rect box = box(middle, size);
    Point nearest =
        new Point(
            Math.max(box.x, Math.min(what.x, box.x + box.width)),
            Math.max(box.y, Math.min(what.y, box.y + box.height)));
    double away = Math.hypot(nearest.x - what.x, nearest.y - what.y);
    if (away > clear + NEAR) {
      Point rim = between(what, nearest, (clear - 8) / away);
      haloed(1, FOUND, (colour, width) -> segment(rim, nearest, colour, width));
    }
    Point corner = new Point(box.x, box.y + box.height - 4.0);
    ProofText.WORD.put(canvas, word.text(), corner, WHITE, 7);
    ProofText.WORD.put(canvas, word.text(), corner, FOUND, 2);
    taken.add(box);
  }

  /** The middle of a free place of that size around something, as near to it as there is one. */
  private Point room(Point what, Size size, double clear) {
    Point best = moved(what, clear + size.width / 2, 0);
    double least = Double.MAX_VALUE;
    for (double farther = 0; farther <= 120; farther += 20) {
      for (int step = 0; step < 16; step++) {
        double angle = step * Math.PI / 8;
        Point middle =
            moved(
                what,
                Math.cos(angle) * (clear + farther + size.width / 2),
                Math.sin(angle) * (clear + farther + size.height / 2));
        double cost = farther + cost(box(middle, size));
        if (cost < least) {
          least = cost;
          best = middle;
        }
      }
    }
    return best;
  }

  /** What it costs to cover a box, the part of it beyond the edge included. */
  private double cost(Rect box) {
    double beyond = box.area() - overlap(box, new Rect(0, 0, canvas.cols(), canvas.rows()));
    double covered = taken.stream().mapToDouble(other -> overlap(box, other)).sum();
    double labels = printed.stream().mapToDouble(other -> overlap(box, other)).sum();
    return COVERING * (beyond + covered) + COVERING_LABEL * labels;
  }

  private static double overlap(Rect a, Rect b) {
    int width = Math.min(a.x + a.width, b.x + b.width) - Math.max(a.x, b.x);
    int height = Math.min(a.y + a.height, b.y + b.height) - Math.max(a.y, b.y);
    return width > 0 && height > 0 ? (double) width * height : 0;
  }

  private static Rect box(Point middle, Size size) {
    return new Rect(
        (int) (middle.x - size.width / 2),
        (int) (middle.y - size.height / 2),
        (int) size.width,
        (int) size.height);
  }

  private static Rect square(Point middle, int half) {
    return box(middle, new Size(2.0 * half, 2.0 * half));
  }

  private interface Stroke {
    void draw(Scalar colour, int width);
  }

  private static void haloed(int width, Scalar colour, Stroke stroke) {
    stroke.draw(WHITE, width + 2 * HALO);
    stroke.draw(colour, width);
  }

  private void segment(Point from, Point to, Scalar colour, int width) {
    Imgproc.line(canvas, from, to, colour, width, smooth());
  }

  private static int smooth() {
    return Imgproc.LINE_AA;
  }

  private Point at(MmPoint place) {
    return new Point(place.x() * pixelsPerMm - 0.5, place.y() * pixelsPerMm - 0.5);
  }

  private static Point between(Point from, Point to, double share) {
    return new Point(from.x + share * (to.x - from.x), from.y + share * (to.y - from.y));
  }

  private static Point moved(Point from, double right, double down) {
    return new Point(from.x + right, from.y + down);
  }
}
