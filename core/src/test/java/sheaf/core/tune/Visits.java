package sheaf.core.tune;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import sheaf.core.group.Group;
import sheaf.core.group.Offset;
import sheaf.core.job.JobId;
import sheaf.core.job.SheetCode;
import sheaf.core.layout.LayoutId;
import sheaf.core.layout.UnitSystem;
import sheaf.core.layout.Variant;
import sheaf.core.measure.Distance;
import sheaf.core.measure.Unit;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmVector;
import sheaf.core.page.Paper;
import sheaf.core.reading.ReadingState;
import sheaf.core.record.Change;
import sheaf.core.record.How;
import sheaf.core.record.Inspected;
import sheaf.core.record.Taken;
import sheaf.core.record.Tear;
import sheaf.core.record.Visit;
import sheaf.core.result.PairResult;

/** Visits made up for tests, sheet after sheet; all sheets are shot from 20 yd. */
final class Visits {

  private static final JobId JOB = JobId.random(new SplittableRandom(5));
  private static final LayoutId PAIR =
      new LayoutId(Variant.TWO_DOTS, Paper.LETTER, UnitSystem.INCHES, 1);

  private final List<PairResult> pairs = new ArrayList<>();
  private final List<Change> changes = new ArrayList<>();
  private final List<Tear> tears = new ArrayList<>();
  private final List<Inspected> inspection = new ArrayList<>();
  private final boolean mirrored;
  private int sheet = 1;

  Visits() {
    this(false);
  }

  /**
   * A visit.
   *
   * @param mirrored whether left and right are exchanged in all that follows
   */
  Visits(boolean mirrored) {
    this.mirrored = mirrored;
  }

  /** Five arrows of each head, each group with a scatter of about 6 mm; broadheads so far off. */
  Visits pair(double right, double down) {
    return pair(right, down, 6);
  }

  Visits pair(double right, double down, double scatter) {
    Group field = cross(0, 0, scatter);
    Group broadheads = cross(right, down, scatter);
    pairs.add(
        new PairResult(
            new SheetCode(JOB, sheet++, PAIR),
            ReadingState.READ,
            Optional.of(new Distance(20, Unit.YARD)),
            Optional.of(field),
            Optional.of(broadheads),
            6,
            Optional.of(Offset.between(field, broadheads))));
    return this;
  }

  private Group cross(double x, double y, double arm) {
    double sign = mirrored ? -1 : 1;
    return new Group(
        List.of(
            new MmPoint(sign * x, y),
            new MmPoint(sign * (x + arm), y),
            new MmPoint(sign * (x - arm), y),
            new MmPoint(sign * x, y + arm),
            new MmPoint(sign * x, y - arm)));
  }

  /** Something changed before the next sheet. */
  Visits changed(String what, String way, int amount, String unit) {
    String seen =
        !mirrored ? way : way.equals("left") ? "right" : way.equals("right") ? "left" : way;
    changes.add(
        new Change(
            sheet,
            Taken.word(what, How.READ),
            Optional.of(Taken.word(seen, How.READ)),
            Optional.of(
                new Taken(
                    amount + " × " + unit,
                    OptionalDouble.of(amount),
                    Optional.empty(),
                    How.READ))));
    return this;
  }

  /** Something changed before the next sheet, of which only the word was ticked. */
  Visits changed(String what) {
    changes.add(new Change(sheet, Taken.word(what, How.READ), Optional.empty(), Optional.empty()));
    return this;
  }

  Visits tear(double right, double down) {
    tears.add(new Tear(sheet++, 1, new MmVector(mirrored ? -right : right, down)));
    return this;
  }

  Visits notSound(String part) {
    inspection.add(new Inspected(part, part, Inspected.Finding.NOT_SOUND));
    return this;
  }

  Visit visit() {
    return new Visit(
        JOB,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        List.of(),
        inspection,
        List.of(),
        changes,
        tears,
        List.of(),
        pairs,
        List.of(),
        List.of());
  }
}
