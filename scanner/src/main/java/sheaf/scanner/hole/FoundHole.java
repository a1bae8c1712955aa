package sheaf.scanner.hole;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;
import sheaf.scanner.sheet.FlatSheet;

/**
 * A hole before it is judged.
 *
 * @param circle of the shaft
 * @param error in pixels: 19 times in 20 the axis lies within so much of the circle's centre
 * @param evidence how likely it is a hole, 0 to 1
 * @param shape what it says of the head
 * @param lines that run outward from it
 */
record FoundHole(Circle circle, double error, double evidence, HeadShape shape, List<Slit> lines) {

  /** Around the shaft paper is torn and shaded this far from the axis, in radii. */
  private static final double TORN = 1.4;

  /** A line is covered with squares of this half side, and runs on so far unseen, in pixels. */
  private static final double BESIDE = 1.25 * FlatSheet.PIXELS_PER_MM;

  private static final double BEYOND = 2 * FlatSheet.PIXELS_PER_MM;

  /** Where the paper is torn: the hole itself, and squares along its slits. */
  List<MmRect> torn() {
    List<MmRect> torn = new ArrayList<>();
    torn.add(square(circle.x(), circle.y(), TORN * circle.radius()));
    for (Slit line : lines) {
      for (double out = circle.radius(); out < line.length() + BEYOND; out += BESIDE) {
        double x = circle.x() + out * Math.cos(line.angle());
        double y = circle.y() + out * Math.sin(line.angle());
        torn.add(square(x, y, BESIDE));
      }
    }
    return torn;
  }

  /**
   * Its lines that no other hole's slit explains: what is left may be its own blades' work.
   *
   * @param others all holes; itself among them does not matter
   */
  List<Slit> ownLines(Collection<FoundHole> others) {
    return lines.stream()
        .filter(
            line ->
                others.stream()
                    .filter(other -> other != this)
                    .noneMatch(
                        other ->
                            other.lines.stream()
                                .anyMatch(slit -> slit.covers(other.circle, line, circle))))
        .toList();
  }

  private static MmRect square(double x, double y, double half) {
    return MmRect.square(FlatSheet.toPage(x, y), 2 * half / FlatSheet.PIXELS_PER_MM);
  }

  /** Those of its lines that are long enough to be a blade's slit. */
  List<SlitLine> slits() {
    return lines.stream()
        .filter(line -> line.length() - circle.radius() > HeadShape.FIELD * FlatSheet.PIXELS_PER_MM)
        .map(line -> new SlitLine(along(line, circle.radius()), along(line, line.length())))
        .toList();
  }

  private MmPoint along(Slit line, double pixels) {
    return FlatSheet.toPage(
        circle.x() + pixels * Math.cos(line.angle()), circle.y() + pixels * Math.sin(line.angle()));
  }
}
