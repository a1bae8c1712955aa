package sheaf.scanner.sheet;

import java.util.Optional;
import org.opencv.core.Point;
import sheaf.core.page.MmPoint;
import sheaf.core.page.Paper;
import sheaf.core.reading.PrintScale;
import sheaf.scanner.picture.Resolution;

/**
 * How large the sheet was printed, from the resolution that a flatbed scan states.
 *
 * <p>A photo tells nothing of size, whatever its file states; neither does a file whose stated
 * resolution cannot be true.
 */
final class ScaleMeasure {

  /** Printers miss the size by up to 6 % (a page shrunk to fit other paper); more is no scan. */
  private static final double PLAUSIBLE = 0.12;

  private ScaleMeasure() {}

  /**
   * The scale, where it can be known.
   *
   * @param geometry of a sheet on a flatbed's glass
   * @param stated by the file
   */
  static Optional<PrintScale> of(Geometry geometry, Resolution stated) {
    Paper paper = geometry.family().paper();
    double inset = 16;
    MmPoint left = new MmPoint(inset, paper.height() / 2);
    MmPoint right = new MmPoint(paper.width() - inset, paper.height() / 2);
    MmPoint top = new MmPoint(paper.width() / 2, inset);
    MmPoint bottom = new MmPoint(paper.width() / 2, paper.height() - inset);
    double across = onGlass(geometry, left, right, stated) / left.distanceTo(right);
    double down = onGlass(geometry, top, bottom, stated) / top.distanceTo(bottom);
    boolean plausible = Math.abs(across - 1) < PLAUSIBLE && Math.abs(down - 1) < PLAUSIBLE;
    return plausible ? Optional.of(new PrintScale(across, down)) : Optional.empty();
  }

  /** True millimetres on the scanner's glass between two places on the page. */
  private static double onGlass(Geometry geometry, MmPoint from, MmPoint to, Resolution stated) {
    Point a = geometry.toPixel(from);
    Point b = geometry.toPixel(to);
    return Math.hypot((b.x - a.x) / stated.across(), (b.y - a.y) / stated.down());
  }
}
