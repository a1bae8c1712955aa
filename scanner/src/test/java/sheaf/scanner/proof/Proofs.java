package sheaf.scanner.proof;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import sheaf.core.job.JobId;
import sheaf.core.job.SheetCode;
import sheaf.core.layout.Aim;
import sheaf.core.layout.Layout;
import sheaf.core.layout.Layouts;
import sheaf.core.layout.UnitSystem;
import sheaf.core.layout.Variant;
import sheaf.core.page.MmPoint;
import sheaf.core.page.Paper;
import sheaf.core.reading.FieldReading;
import sheaf.core.reading.Head;
import sheaf.core.reading.Hole;
import sheaf.core.reading.PageReading;
import sheaf.core.reading.Reason;

/** A page to draw proofs of. */
final class Proofs {

  static final Layout LAYOUT = Layouts.current(Variant.TWO_DOTS, Paper.LETTER, UnitSystem.INCHES);
  static final SheetCode CODE =
      new SheetCode(JobId.random(new SplittableRandom(1)), 2, LAYOUT.id());
  static final MmPoint FIELD = new MmPoint(60, 70);
  static final MmPoint BROADHEAD = new MmPoint(150, 160);

  private Proofs() {}

  /** A pair sheet with a hole of each head, and 20 yd ticked. */
  static PageReading pair(List<Reason> reasons) {
    return new PageReading(
        "scan.jpg",
        reasons,
        Optional.of(CODE),
        OptionalDouble.of(8),
        Optional.empty(),
        List.of(
            new Hole(FIELD, 0.3, 6, Head.FIELD, 0, 0, Aim.FIELD, 1),
            new Hole(BROADHEAD, 0.3, 6, Head.BROADHEAD, 3, 30, Aim.BROADHEAD, 1)),
        List.of(
            new FieldReading(
                "distance",
                FieldReading.State.READ,
                "20",
                OptionalDouble.of(20),
                Optional.empty(),
                1)));
  }
}
