package sheaf.core.picture;

import java.util.List;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;

/**
 * Something to be painted; what comes later covers what came before. Places and lengths are
 * millimetres from the picture's top left, x to the right, y down.
 */
public sealed interface Shape {

  /** Colours by what they are for, so that each painter may choose its own. */
  enum Tone {
    /** Lines, signs and words. */
    INK,
    /** What stands behind the picture. */
    PAPER,
    /** The inside of a hole. */
    HOLE,
    /** What was there before anybody shot: dots and axes. */
    FAINT
  }

  /** A straight line. */
  record Line(MmPoint from, MmPoint to, double width, Tone tone, Stroke stroke) implements Shape {}

  /** How a line is drawn. */
  enum Stroke {
    /** Unbroken. */
    WHOLE,
    /** In dashes of {@link Shape#DASH} with gaps of {@link Shape#GAP}. */
    DASHED
  }

  /** Length of a dash in millimetres. */
  double DASH = 1.6;

  /** Length of the gap behind a dash in millimetres. */
  double GAP = 1.1;

  /** A filled circle. */
  record Disc(MmPoint centre, double radius, Tone tone) implements Shape {}

  /** A circle's outline. */
  record Ring(MmPoint centre, double radius, double width, Tone tone) implements Shape {}

  /**
   * An ellipse's outline.
   *
   * @param angle of its first half axis, in radians from x toward y
   */
  record Oval(
      MmPoint centre, double first, double second, double angle, double width, Stroke stroke)
      implements Shape {}

  /** A filled polygon. */
  record Polygon(List<MmPoint> corners, Tone tone) implements Shape {
    /** Copies the list. */
    public Polygon {
      corners = List.copyOf(corners);
    }
  }

  /** A rectangle's outline. */
  record Outline(MmRect rect, double width) implements Shape {}

  /** A filled rectangle. */
  record Patch(MmRect rect, Tone tone) implements Shape {}

  /** Where the words of a {@link Words} stand from their place. */
  enum Side {
    /** They begin there. */
    RIGHT_OF,
    /** They end there. */
    LEFT_OF
  }

  /**
   * One line of text in {@link Tone#INK}.
   *
   * @param place on its baseline
   * @param points letter size in points
   */
  record Words(String text, MmPoint place, double points, Side side) implements Shape {}

  /** Shapes of which only the part inside a rectangle shows. */
  record Inside(MmRect rect, List<Shape> shapes) implements Shape {
    /** Copies the list. */
    public Inside {
      shapes = List.copyOf(shapes);
    }
  }
}
