package sheaf.scanner.tear;

import sheaf.scanner.hole.Circle;
import sheaf.scanner.hole.Grid;
import sheaf.scanner.hole.Seeds;
import sheaf.scanner.hole.SlitTracer;
import sheaf.scanner.hole.SlitView;
import sheaf.scanner.hole.Square;
import sheaf.scanner.hole.Surface;
import sheaf.scanner.sheet.FlatSheet;

/**
 * What is seen, pixel by pixel, around a tear: as far as slits may reach from either end.
 *
 * @param kind what is seen through the tear
 * @param slits what shows the slits of vanes
 */
record TearView(Seeds.Kind kind, SlitView slits) {

  private static final double MM = FlatSheet.PIXELS_PER_MM;

  /** An end may move so far when it is sought more exactly, in millimetres. */
  private static final double MOVE = 6;

  /** Of a sheet. */
  static TearView of(Surface surface, Seeds.Kind kind, Capsule tear) {
    Circle middle =
        new Circle(
            (tear.pointX() + tear.tailX()) / 2 * MM,
            (tear.pointY() + tear.tailY()) / 2 * MM,
            tear.radius() * MM);
    double reach = (tear.length() / 2 + MOVE) * MM + SlitTracer.REACH;
    Square around = Square.around(middle.x(), middle.y(), reach);
    return new TearView(
        kind, SlitView.of(surface, kind, around, hiding(surface, kind, middle, reach)));
  }

  /**
   * In front of the backing, a scan of 200 dpi shows so little of its colour in a vane's slit that
   * the slit would be taken for a pen's line.
   */
  private static Grid hiding(Surface surface, Seeds.Kind kind, Circle middle, double reach) {
    return kind == Seeds.Kind.COLOURED
        ? surface.printHidingSlits(Square.around(middle.x(), middle.y(), reach))
        : surface.hidingSlits(kind, middle, reach);
  }

  /** Draws the lines of slits in what shows them best. */
  SlitLines lines() {
    return slits
        .backing()
        .map(map -> new SlitLines(map, SlitView.COLOURED_SLIT))
        .orElseGet(() -> new SlitLines(slits.darkness(), slits.contrast()));
  }
}
