package sheaf.core.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import sheaf.core.layout.UnitSystem;
import sheaf.core.measure.Inches;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;
import sheaf.core.page.MmVector;
import sheaf.core.picture.Shape.Stroke;
import sheaf.core.picture.Shape.Tone;
import sheaf.core.record.Tear;

/** A tear as the archer sees it: where the point went in, and where the tail went through. */
public final class TearPicture {

  /** Half a usual shaft, in true millimetres. */
  private static final double SHAFT_RADIUS = 3;

  /** Enlarging a small tear further would make it look like a bad one. */
  private static final double LARGEST_SCALE = 1;

  private TearPicture() {}

  /**
   * The scale at which the longest of some tears fits a square frame, so that all are shown alike.
   *
   * @param side of the frame in millimetres
   * @return picture millimetres for a true one
   */
  public static double scale(List<Tear> tears, double side) {
    double longest =
        tears.stream().mapToDouble(tear -> tear.pointToTail().length()).max().orElse(1);
    return Math.min(LARGEST_SCALE, (side / 2 - 4) / Math.max(longest, 1));
  }

  /** The picture in a frame. */
  public static Picture of(Tear tear, MmRect frame, double scale) {
    MmPoint point = frame.centre();
    MmPoint tail = point.plus(tear.pointToTail().times(scale));
    double radius = SHAFT_RADIUS * scale;
    List<Shape> shapes = new ArrayList<>();
    shapes.add(
        line(new MmPoint(frame.x(), point.y()), new MmPoint(frame.right(), point.y()), Tone.FAINT));
    shapes.add(
        line(
            new MmPoint(point.x(), frame.y()), new MmPoint(point.x(), frame.bottom()), Tone.FAINT));
    shapes.add(new Shape.Line(point, tail, 2 * radius, Tone.HOLE, Stroke.WHOLE));
    shapes.add(new Shape.Disc(tail, radius, Tone.HOLE));
    shapes.add(new Shape.Disc(point, radius, Tone.HOLE));
    shapes.add(new Shape.Ring(tail, radius, 0.3, Tone.INK));
    shapes.add(new Shape.Disc(point, Math.max(radius, 0.8), Tone.INK));
    shapes.add(new Shape.Outline(frame, 0.3));
    shapes.addAll(ScaleBar.fit(UnitSystem.METRIC, scale, frame.width()).in(frame));
    return new Picture(frame, "As the archer sees it: " + way(tear) + ".", shapes);
  }

  private static Shape line(MmPoint from, MmPoint to, Tone tone) {
    return new Shape.Line(from, to, 0.25, tone, Stroke.WHOLE);
  }

  /** How long a tear is and which way it goes, in words. */
  public static String way(Tear tear) {
    if (tear.isBulletHole()) {
      return "Round hole, no tear to tell";
    }
    MmVector v = tear.pointToTail();
    return String.format(
        Locale.ROOT,
        "Tail %.0f mm = %s toward %d o'clock: %.0f mm %s, %.0f mm %s",
        v.length(),
        Inches.decimal(v.length()),
        tear.clock(),
        Math.abs(v.dx()),
        v.dx() < 0 ? "left" : "right",
        Math.abs(v.dy()),
        v.dy() < 0 ? "high" : "low");
  }
}
