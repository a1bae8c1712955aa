package sheaf.desk.web.view;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;
import sheaf.core.picture.Picture;
import sheaf.core.picture.Shape;

/** Numbers of pictures, as SVG writes them. */
public final class Svg {

  private static final double MM_PER_POINT = 25.4 / 72;

  private Svg() {}

  /** To a hundredth of a millimetre. */
  public static String n(double value) {
    return String.format(Locale.ROOT, "%.2f", value);
  }

  /** Letters in points, as millimetres. */
  public static String letters(double points) {
    return n(points * MM_PER_POINT);
  }

  /** What is seen. */
  public static String viewBox(MmRect rect) {
    return n(rect.x()) + " " + n(rect.y()) + " " + n(rect.width()) + " " + n(rect.height());
  }

  /** A picture with its own outline wholly inside. */
  public static String viewBox(Picture picture) {
    return viewBox(picture.frame().grow(0.5));
  }

  /** Corners of a polygon. */
  public static String points(List<MmPoint> corners) {
    return corners.stream()
        .map(corner -> n(corner.x()) + "," + n(corner.y()))
        .collect(Collectors.joining(" "));
  }

  /** A turn about a place. */
  public static String turned(double radians, MmPoint about) {
    return "rotate(" + n(Math.toDegrees(radians)) + " " + n(about.x()) + " " + n(about.y()) + ")";
  }

  /** The class that gives a tone its colour. */
  public static String line(Shape.Tone tone) {
    return "line-" + tone.name().toLowerCase(Locale.ROOT);
  }

  /** The class that fills with a tone. */
  public static String fill(Shape.Tone tone) {
    return "fill-" + tone.name().toLowerCase(Locale.ROOT);
  }
}
