package sheaf.samples.tune;

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
import sheaf.core.page.Paper;
import sheaf.core.reading.ReadingState;
import sheaf.core.record.Change;
import sheaf.core.record.How;
import sheaf.core.record.Taken;
import sheaf.core.record.Visit;
import sheaf.core.result.PairResult;
import sheaf.core.tune.Move;
import sheaf.core.tune.Planner;

/** A made bow's job, sheet after sheet, until its heads are shown to hit the same point. */
final class MadeJob {

  /** One inch at 20 yd. */
  static final double TOLERANCE_MM = 25.4;

  /** Who is not done after so many sheets never will be. */
  static final int MOST_SHEETS = 40;

  private static final Distance FROM = new Distance(20, Unit.YARD);
  private static final double SHAFT_MM = 6;
  private static final JobId JOB = JobId.random(new SplittableRandom(20));
  private static final LayoutId LAYOUT =
      new LayoutId(Variant.TWO_DOTS, Paper.LETTER, UnitSystem.INCHES, 1);

  private final MadeBow bow;
  private final int arrows;
  private final List<PairResult> pairs = new ArrayList<>();
  private final List<Change> changes = new ArrayList<>();

  /**
   * How a job went.
   *
   * @param sheets shot; {@value #MOST_SHEETS} when it was given up
   * @param shown whether the heads were shown to hit the same point
   * @param farthest that they ever truly were apart, against how far they were at first, or an inch
   * @param apart how far the heads truly were apart at the end, in millimetres
   * @param visit all of it
   */
  record Ending(int sheets, boolean shown, double farthest, double apart, Visit visit) {

    /** Whether it was shown although it is not so. */
    boolean wronglyShown() {
      return shown && apart > TOLERANCE_MM;
    }
  }

  private MadeJob(MadeBow bow, int arrows) {
    this.bow = bow;
    this.arrows = arrows;
  }

  /** Tunes a bow with so many arrows of each head on a sheet. */
  static Ending tune(MadeBow bow, int arrows, Technician technician) {
    MadeJob job = new MadeJob(bow, arrows);
    double first = Math.max(bow.apart(), TOLERANCE_MM);
    double farthest = bow.apart();
    for (int sheet = 1; sheet <= MOST_SHEETS; sheet++) {
      job.shoot(sheet);
      if (Planner.isShown(job.visit())) {
        return new Ending(sheet, true, farthest / first, bow.apart(), job.visit());
      }
      try {
        technician.next(job.visit()).ifPresent(job::move);
      } catch (Technician.GivesUp e) {
        break;
      }
      farthest = Math.max(farthest, bow.apart());
    }
    return new Ending(MOST_SHEETS, false, farthest / first, bow.apart(), job.visit());
  }

  private void shoot(int sheet) {
    Group field = bow.fieldPoints(arrows);
    Group broadheads = bow.broadheads(arrows);
    pairs.add(
        new PairResult(
            new SheetCode(JOB, sheet, LAYOUT),
            ReadingState.READ,
            Optional.of(FROM),
            Optional.of(field),
            Optional.of(broadheads),
            SHAFT_MM,
            Optional.of(Offset.between(field, broadheads))));
  }

  private void move(Move move) {
    bow.move(move);
    double steps = Math.abs(move.steps());
    String words = (long) steps + " × " + move.lever().step().label();
    changes.add(
        new Change(
            pairs.size() + 1,
            Taken.word(move.lever().part().label(), How.READ),
            Optional.of(Taken.word(move.lever().axis().word(move.steps()), How.READ)),
            Optional.of(new Taken(words, OptionalDouble.of(steps), Optional.empty(), How.READ))));
  }

  private Visit visit() {
    return new Visit(
        JOB,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        List.of(),
        List.of(),
        List.of(),
        changes,
        List.of(),
        List.of(),
        pairs,
        List.of(),
        List.of());
  }
}
