package sheaf.scanner.hole;

import java.util.List;
import sheaf.core.page.MmPoint;
import sheaf.scanner.sheet.FlatSheet;

/**
 * A hole before it is judged.
 *
 * @param circle of the shaft
 * @param spread standard deviation of the axis in each direction, in pixels
 * @param evidence how likely it is a hole, 0 to 1
 * @param shape what it says of the head
 * @param lines that run outward from it
 */
record FoundHole(Circle circle, double spread, double evidence, HeadShape shape, List<Slit> lines) {

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
