package sheaf.scanner.hole;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What shows slits in a square of the sheet, pixel by pixel.
 *
 * @param darkness against the paper around
 * @param backing how surely the coloured backing is seen; only where it lies behind
 * @param hiding above zero where no slit can be told
 * @param contrast against the paper beside it from which a line is a slit
 */
public record SlitView(Grid darkness, Optional<Grid> backing, Grid hiding, double contrast) {

  /** A slit in front of the backing is more of its colour than what lies beside it by this. */
  public static final double COLOURED_SLIT = 0.15;

  /** A slit in front of something dark is darker than the paper beside it by this. */
  private static final double DARK_SLIT = 0.08;

  /** A slit in front of white differs from the paper beside it by this. */
  private static final double FAINT_SLIT = 0.03;

  /**
   * Of a square of a sheet.
   *
   * @param kind what is seen through its openings
   * @param hiding above zero where no slit can be told
   */
  public static SlitView of(Surface surface, Seeds.Kind kind, Square around, Grid hiding) {
    return new SlitView(
        Grid.lazily(around, surface::darkness),
        kind == Seeds.Kind.COLOURED
            ? Optional.of(Grid.lazily(around, surface.behind().orElseThrow()::in))
            : Optional.empty(),
        hiding,
        kind == Seeds.Kind.FAINT ? Math.max(FAINT_SLIT, 3 * surface.noise()) : DARK_SLIT);
  }

  /** Traces slits in all that is seen. */
  public SlitTracer tracer() {
    List<SlitTracer.Layer> layers = new ArrayList<>();
    layers.add(new SlitTracer.Layer(darkness, hiding, contrast));
    backing.ifPresent(map -> layers.add(new SlitTracer.Layer(map, Grid.zero(), COLOURED_SLIT)));
    return new SlitTracer(layers);
  }
}
