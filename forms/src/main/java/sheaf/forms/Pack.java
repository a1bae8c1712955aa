package sheaf.forms;

import java.util.ArrayList;
import java.util.List;
import sheaf.core.job.JobId;
import sheaf.core.job.SheetCode;
import sheaf.core.layout.LayoutId;
import sheaf.core.layout.Layouts;
import sheaf.core.layout.UnitSystem;
import sheaf.core.layout.Variant;
import sheaf.core.page.Paper;

/** The papers that one job is worked on with. */
public final class Pack {

  /** In the order in which they are used, sheet 1 first. */
  private static final List<Variant> ORDER =
      List.of(Variant.FRONT, Variant.TWO_DOTS, Variant.SHARED_DOT);

  private Pack() {}

  /**
   * The sheets of a job, numbered from 1: the bench card, a pair sheet with two dots, and one with
   * a shared dot.
   */
  public static List<SheetCode> sheets(JobId job, Paper paper, UnitSystem units) {
    List<SheetCode> sheets = new ArrayList<>();
    for (Variant variant : ORDER) {
      LayoutId layout = Layouts.current(variant, paper, units).id();
      sheets.add(new SheetCode(job, sheets.size() + 1, layout));
    }
    return List.copyOf(sheets);
  }
}
