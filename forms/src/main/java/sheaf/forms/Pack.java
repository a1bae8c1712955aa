package sheaf.forms;

import java.util.ArrayList;
import java.util.List;
import sheaf.core.job.JobId;
import sheaf.core.job.SheetCode;
import sheaf.core.layout.BowType;
import sheaf.core.layout.Layouts;
import sheaf.core.layout.UnitSystem;
import sheaf.core.layout.Variant;
import sheaf.core.page.Paper;

/** The papers that one job is worked on with. */
public final class Pack {

  /** What follows the bench card when nothing else is asked for, in the order of use. */
  private static final List<Variant> TARGETS =
      List.of(
          Variant.FOUR_ZONES,
          Variant.FOUR_ZONES,
          Variant.OPEN_DISTANCES,
          Variant.TWO_DOTS,
          Variant.TWO_DOTS);

  private Pack() {}

  /** A bench card and the usual targets: two tear sheets, a line sheet and two pair sheets. */
  public static List<Variant> usual(BowType bow) {
    List<Variant> usual = new ArrayList<>(List.of(bow.front(), bow.back()));
    usual.addAll(TARGETS);
    return List.copyOf(usual);
  }

  /** The usual sheets of a compound's job, numbered from 1. */
  public static List<SheetCode> sheets(JobId job, Paper paper, UnitSystem units) {
    return sheets(job, usual(BowType.COMPOUND), paper, units);
  }

  /**
   * Sheets of a job, numbered from 1. Cards come on the small paper that goes with a large one.
   *
   * @param variants in the order in which they are printed
   */
  public static List<SheetCode> sheets(
      JobId job, List<Variant> variants, Paper paper, UnitSystem units) {
    List<SheetCode> sheets = new ArrayList<>();
    for (Variant variant : variants) {
      Paper onto = variant.comesOn(paper) ? paper : paper.small();
      sheets.add(new SheetCode(job, sheets.size() + 1, Layouts.current(variant, onto, units).id()));
    }
    return List.copyOf(sheets);
  }
}
