package sheaf.scanner.tear;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sheaf.scanner.hole.Circle;
import sheaf.scanner.hole.Grid;
import sheaf.scanner.hole.Seeds;
import sheaf.scanner.hole.SlitTracer;
import sheaf.scanner.hole.Square;
import sheaf.scanner.hole.Surface;
import sheaf.scanner.sheet.FlatSheet;

/**
 * What is seen, pixel by pixel, around a tear: as far as slits may reach from either end.
 *
 * @param kind what is seen through the tear
 * @param darkness against the paper around
 * @param backing how surely the coloured backing is seen; only where it lies behind
 * @param hiding above zero where no slit can be told
 * @param contrast against the paper beside it from which a line is a slit
 */
record TearView(
    Seeds.Kind kind, Grid darkness, Optional<Grid> backing, Grid hiding, double contrast) {

  private static final double MM = FlatSheet.PIXELS_PER_MM;

  /** A slit in front of something dark is darker than the paper beside it by this. */
  private static final double DARK_SLIT = 0.08;

  /** A slit in front of white differs from the paper beside it by this. */
  private static final double FAINT_SLIT = 0.03;

  /** A slit in front of the backing is more of its colour than what lies beside it by this. */
  private static final double COLOURED_SLIT = 0.15;

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
        kind,
        new Grid(around, surface.darkness(around)),
        kind == Seeds.Kind.COLOURED
            ? Optional.of(new Grid(around, surface.backing(around)))
            : Optional.empty(),
        hiding(surface, kind, middle, reach),
        kind == Seeds.Kind.FAINT ? Math.max(FAINT_SLIT, 3 * surface.noise()) : DARK_SLIT);
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

  /** Traces slits in all that is seen. */
  SlitTracer tracer() {
    List<SlitTracer.Layer> layers = new ArrayList<>();
    layers.add(new SlitTracer.Layer(darkness, hiding, contrast));
    backing.ifPresent(map -> layers.add(new SlitTracer.Layer(map, Grid.zero(), COLOURED_SLIT)));
    return new SlitTracer(layers);
  }

  /** Draws the lines of slits in what shows them best. */
  SlitLines lines() {
    return backing
        .map(map -> new SlitLines(map, COLOURED_SLIT))
        .orElseGet(() -> new SlitLines(darkness, contrast));
  }
}
