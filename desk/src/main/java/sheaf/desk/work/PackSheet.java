package sheaf.desk.work;

import java.util.List;
import java.util.Locale;
import sheaf.core.layout.BowType;
import sheaf.core.layout.Variant;

/** What {@code --sheets} can put into a pack. */
public enum PackSheet {
  /** Front and back of the bow's bench card. */
  BENCH_CARD {
    @Override
    public List<Variant> variants(BowType bow) {
      return List.of(bow.front(), bow.back());
    }
  },
  /** Front and back of the bow's return card. */
  RETURN_CARD {
    @Override
    public List<Variant> variants(BowType bow) {
      return List.of(bow.returnFront(), bow.returnBack());
    }
  },
  /** A tear sheet. */
  TEAR(Variant.FOUR_ZONES),
  /** A line sheet with distances to write in. */
  LINE(Variant.OPEN_DISTANCES),
  /** A line sheet with printed distances. */
  LINE_PRINTED(Variant.SET_DISTANCES),
  /** A pair sheet with two dots. */
  PAIR(Variant.TWO_DOTS),
  /** A pair sheet with one dot. */
  PAIR_ONE(Variant.SHARED_DOT),
  /** A group sheet. */
  GROUP(Variant.GROUP_GRID),
  /** A sight-in sheet. */
  SIGHT_IN(Variant.SIGHT_GRID),
  /** A force-draw sheet. */
  FORCE_DRAW(Variant.PULLS),
  /** A scale page. */
  SCALE_PAGE(Variant.CROSS);

  private final List<Variant> variants;

  PackSheet(Variant... variants) {
    this.variants = List.of(variants);
  }

  /** Its pages. */
  public List<Variant> variants(BowType bow) {
    return variants;
  }

  /** Whether it is a card, of which a pack has one unless its list names another. */
  public boolean isCard() {
    return this == BENCH_CARD || this == RETURN_CARD;
  }

  /** The name in {@code --sheets}. */
  public String label() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
