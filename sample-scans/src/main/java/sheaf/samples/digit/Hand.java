package sheaf.samples.digit;

import java.awt.geom.AffineTransform;
import java.awt.geom.NoninvertibleTransformException;
import java.util.random.RandomGenerator;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;

/**
 * Where in a box a mark is written, and how large, turned and slanted.
 *
 * @param mark what is written
 * @param room all that it may touch, in millimetres
 * @param toMark from millimetres to the mark's pixels
 */
public record Hand(PenMark mark, MmRect room, AffineTransform toMark) {

  /** Half the room around a box's middle, in millimetres. */
  private static final double REACH = 7;

  /** A mark over a square, as it was drawn: its free room around the drawing lies outside. */
  static Hand over(MmRect square, PenMark mark) {
    double scale = (Marks.SIDE - 2.0 * Marks.ROOM) / square.width();
    AffineTransform toMark = new AffineTransform();
    toMark.translate(Marks.ROOM, Marks.ROOM);
    toMark.scale(scale, scale);
    toMark.translate(-square.x(), -square.y());
    return new Hand(mark, square.grow(Marks.ROOM / scale), toMark);
  }

  /** Writes a mark into a box as people do: smaller than the box mostly, at times beyond it. */
  public static Hand in(MmRect box, PenMark mark, RandomGenerator random) {
    int[] extent = mark.extent();
    double longer = Math.max(8, Math.max(extent[2] - extent[0], extent[3] - extent[1]));
    double height = Math.max(3.9, Math.min(8.8, 6.3 + random.nextGaussian()));
    double scale = height / longer;
    MmPoint middle = box.centre();
    AffineTransform place = new AffineTransform();
    place.translate(
        middle.x() + random.nextGaussian() * 0.45, middle.y() + random.nextGaussian() * 0.55);
    place.rotate(random.nextGaussian() * 0.07);
    place.shear(random.nextGaussian() * 0.1, 0);
    place.scale(scale * Math.exp(random.nextGaussian() * 0.07), scale);
    place.translate(-(extent[0] + extent[2]) / 2.0, -(extent[1] + extent[3]) / 2.0);
    MmRect room = new MmRect(middle.x() - REACH, middle.y() - REACH, 2 * REACH, 2 * REACH);
    try {
      return new Hand(mark, room, place.createInverse());
    } catch (NoninvertibleTransformException e) {
      throw new IllegalStateException(e);
    }
  }

  /** The inked share of a place in millimetres. */
  public double at(double x, double y) {
    return mark.at(
        toMark.getScaleX() * x + toMark.getShearX() * y + toMark.getTranslateX(),
        toMark.getShearY() * x + toMark.getScaleY() * y + toMark.getTranslateY());
  }
}
