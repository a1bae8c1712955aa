package sheaf.core.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import sheaf.core.page.Paper;

/** Every layout ever released. */
public final class Layouts {

  /** Return cards tell since their second version in which order a bow is restored. */
  private static final int RETURN_CARDS = 2;

  /** Drawn once and then kept: results of an archive ask for the same few again and again. */
  private static final Map<LayoutId, Layout> DRAWN = new ConcurrentHashMap<>();

  private Layouts() {}

  /**
   * The layout that is printed now for a variant, a paper and units.
   *
   * @throws IllegalArgumentException when the variant does not come on that paper
   */
  public static Layout current(Variant variant, Paper paper, UnitSystem units) {
    return draw(new LayoutId(variant, paper, units, newest(variant)));
  }

  /** The layout of that name; empty when it was never released, as with a sheet from later on. */
  public static Optional<Layout> find(LayoutId id) {
    boolean released =
        id.version() <= newest(id.variant()) && MarkFamily.has(id.variant(), id.paper());
    return released ? Optional.of(draw(id)) : Optional.empty();
  }

  /** All layouts that were ever released. */
  public static List<Layout> all() {
    List<Layout> all = new ArrayList<>();
    for (MarkFamily family : MarkFamily.values()) {
      for (UnitSystem units : UnitSystem.values()) {
        for (int version = 1; version <= newest(family.variant()); version++) {
          all.add(draw(new LayoutId(family.variant(), family.paper(), units, version)));
        }
      }
    }
    return all;
  }

  /** The version that is printed now. */
  private static int newest(Variant variant) {
    return variant.kind() == SheetKind.RETURN_CARD ? RETURN_CARDS : 1;
  }

  private static Layout draw(LayoutId id) {
    return DRAWN.computeIfAbsent(id, Layouts::drawn);
  }

  private static Layout drawn(LayoutId id) {
    return switch (id.variant()) {
      case TWO_DOTS, SHARED_DOT -> PairLayout.of(id);
      case FRONT,
          RECURVE_FRONT,
          CROSSBOW_FRONT,
          RETURN_FRONT,
          RETURN_RECURVE_FRONT,
          RETURN_CROSSBOW_FRONT ->
          BenchCardLayout.of(id);
      case BACK,
          RECURVE_BACK,
          CROSSBOW_BACK,
          RETURN_BACK,
          RETURN_RECURVE_BACK,
          RETURN_CROSSBOW_BACK ->
          CardBackLayout.of(id);
      case FOUR_ZONES -> TearLayout.of(id);
      case OPEN_DISTANCES, SET_DISTANCES -> LineLayout.of(id);
      case GROUP_GRID, SIGHT_GRID -> GridLayout.of(id);
      case CROSS -> ScaleLayout.of(id);
      case PULLS -> PullsLayout.of(id);
    };
  }
}
