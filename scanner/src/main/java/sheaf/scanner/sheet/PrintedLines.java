package sheaf.scanner.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import sheaf.core.layout.Ink;
import sheaf.core.layout.Layout;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;

/** The lines and rings that a layout has printed, as places at which to look for them. */
final class PrintedLines {

  /** Shorter lines are not told from letters. */
  private static final double SHORTEST = 12;

  /** Boxes to tick, from this size on, are looked at on two sides each. */
  private static final double BOX = 4.5;

  /** More places than this add time and no exactness. */
  private static final int MOST = 320;

  /** Smaller rings bend too much within a look. */
  private static final double SMALLEST = 8;

  /** From one place to the next along a line, in millimetres. */
  private static final double APART = 9;

  /** Places of a part, which are kept or left out together: 45 mm of line. */
  private static final int TOGETHER = 5;

  private final List<Place> places = new ArrayList<>();
  private int part;

  private PrintedLines() {}

  /**
   * A place on a printed line.
   *
   * @param alongX direction of the line on the page, a unit vector
   * @param alongY the same, down
   * @param width of the line in millimetres
   * @param part of the print that it belongs to
   */
  record Place(MmPoint at, double alongX, double alongY, double width, int part) {}

  /** All places on a layout's lines and rings. */
  static List<Place> of(Layout layout) {
    PrintedLines lines = new PrintedLines();
    for (Ink ink : layout.ink()) {
      if (ink instanceof Ink.Stroke stroke) {
        lines.line(stroke.from(), stroke.to(), stroke.width());
      } else if (ink instanceof Ink.Box box) {
        lines.box(box.rect(), box.width());
      } else if (ink instanceof Ink.Ring ring) {
        lines.ring(ring);
      }
    }
    return thinned(lines.places);
  }

  /** Every so manieth place, where there are more than are needed. */
  private static List<Place> thinned(List<Place> places) {
    int kept = Math.min(places.size(), MOST);
    return IntStream.range(0, kept)
        .mapToObj(i -> places.get((int) ((long) i * places.size() / kept)))
        .toList();
  }

  private void box(MmRect rect, double width) {
    MmPoint topLeft = new MmPoint(rect.x(), rect.y());
    MmPoint topRight = new MmPoint(rect.right(), rect.y());
    MmPoint bottomLeft = new MmPoint(rect.x(), rect.bottom());
    MmPoint bottomRight = new MmPoint(rect.right(), rect.bottom());
    if (Math.min(rect.width(), rect.height()) < SHORTEST) {
      side(topLeft, topRight, width);
      side(topLeft, bottomLeft, width);
      part++;
    } else {
      line(topLeft, topRight, width);
      line(topRight, bottomRight, width);
      line(bottomLeft, bottomRight, width);
      line(topLeft, bottomLeft, width);
    }
  }

  /** The middle of a small box's side. */
  private void side(MmPoint from, MmPoint to, double width) {
    double length = from.distanceTo(to);
    if (length >= BOX) {
      MmPoint middle = new MmPoint((from.x() + to.x()) / 2, (from.y() + to.y()) / 2);
      double x = (to.x() - from.x()) / length;
      places.add(new Place(middle, x, (to.y() - from.y()) / length, width, part));
    }
  }

  private void line(MmPoint from, MmPoint to, double width) {
    double length = from.distanceTo(to);
    if (length < SHORTEST) {
      return;
    }
    double x = (to.x() - from.x()) / length;
    double y = (to.y() - from.y()) / length;
    int count = (int) Math.ceil(length / APART);
    for (int i = 0; i < count; i++) {
      double at = length * (i + 0.5) / count;
      MmPoint place = new MmPoint(from.x() + at * x, from.y() + at * y);
      places.add(new Place(place, x, y, width, part + i / TOGETHER));
    }
    part += (count + TOGETHER - 1) / TOGETHER;
  }

  private void ring(Ink.Ring ring) {
    if (ring.radius() < SMALLEST) {
      return;
    }
    int count = (int) Math.ceil(2 * Math.PI * ring.radius() / (APART / 2));
    for (int i = 0; i < count; i++) {
      double angle = 2 * Math.PI * (i + 0.5) / count;
      double x = Math.cos(angle);
      double y = Math.sin(angle);
      MmPoint at =
          new MmPoint(ring.centre().x() + ring.radius() * x, ring.centre().y() + ring.radius() * y);
      places.add(new Place(at, -y, x, ring.width(), part));
    }
    part++;
  }
}
