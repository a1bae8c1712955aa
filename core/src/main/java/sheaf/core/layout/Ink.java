package sheaf.core.layout;

import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;

/** Something printed that is neither a register mark nor a code. Widths in millimetres. */
public sealed interface Ink {

  /** How dark. */
  enum Tone {
    /** Full black. */
    BLACK,
    /** A light tone for the boxes that people write in, so that a scan tells it from a pen. */
    LIGHT
  }

  /** How a label sits in its rectangle. */
  enum Align {
    LEFT,
    CENTRE,
    RIGHT
  }

  /** The weights of the one typeface. */
  enum Weight {
    REGULAR,
    BOLD
  }

  /** A straight line with square ends, centred on the way between its ends. */
  record Stroke(MmPoint from, MmPoint to, double width, Tone tone) implements Ink {}

  /** The outline of a rectangle; the line is centred on the rectangle's edge. */
  record Box(MmRect rect, double width, Tone tone) implements Ink {}

  /** A filled circle. */
  record Disc(MmPoint centre, double radius) implements Ink {}

  /** A circle's outline; the line is centred on the radius. */
  record Ring(MmPoint centre, double radius, double width) implements Ink {}

  /**
   * Text that must fit its rectangle, broken into lines at spaces where needed, starting at the
   * top.
   *
   * <p>{@code {job}} and {@code {sheet}} stand for the job's id and the sheet's number.
   *
   * @param text what it says
   * @param rect where it must stay
   * @param size of the letters, in points
   * @param weight of the letters
   * @param align in the rectangle
   * @param turned whether it reads from bottom to top, starting at the rectangle's left edge
   */
  record Label(String text, MmRect rect, double size, Weight weight, Align align, boolean turned)
      implements Ink {}
}
