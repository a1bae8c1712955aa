package sheaf.desk.work;

import java.util.List;
import java.util.Locale;
import sheaf.core.layout.BowType;
import sheaf.core.layout.Variant;

/** What {@code sheaf print} can print. */
public enum Printable {
  /** Everything for one bow, with one job id. */
  PACK("pack"),
  /** A bench card, front and back. */
  BENCH_CARD("bench card", PackSheet.BENCH_CARD),
  /** A tear sheet. */
  TEAR("tear sheet", PackSheet.TEAR),
  /** A line sheet. */
  LINE("line sheet", PackSheet.LINE),
  /** A pair sheet. */
  PAIR("pair sheet", PackSheet.PAIR),
  /** A group sheet. */
  GROUP("group sheet", PackSheet.GROUP),
  /** A sight-in sheet. */
  SIGHT_IN("sight-in sheet", PackSheet.SIGHT_IN),
  /** A pull every inch, for the energy that the bow stores. */
  FORCE_DRAW("force-draw sheet", PackSheet.FORCE_DRAW),
  /** A bench card beside the values of an earlier job. */
  RETURN_CARD("return card", PackSheet.RETURN_CARD),
  /** The coloured page laid behind shot sheets. */
  BACKING("backing"),
  /** Rules to check a printer with. */
  SCALE_PAGE("scale page", PackSheet.SCALE_PAGE);

  private final String noun;
  private final List<PackSheet> sheets;

  Printable(String noun, PackSheet... sheets) {
    this.noun = noun;
    this.sheets = List.of(sheets);
  }

  /** In sentences. */
  public String noun() {
    return noun;
  }

  /** The name in commands. */
  public String label() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Its pages; none of a pack, whose list says them, and of a backing, which is no sheet. */
  public List<Variant> variants(BowType bow) {
    return sheets.stream().flatMap(sheet -> sheet.variants(bow).stream()).toList();
  }

  /** Whether it has a front and a back. */
  public boolean isCard() {
    return this == BENCH_CARD || this == RETURN_CARD;
  }

  /** Whether it is written on at the bench, so that it comes on small paper only. */
  public boolean isSmall() {
    return isCard() || this == FORCE_DRAW;
  }
}
