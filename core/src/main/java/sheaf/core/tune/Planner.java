package sheaf.core.tune;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import sheaf.core.group.Comparison;
import sheaf.core.group.Equivalence;
import sheaf.core.group.SamePoint;
import sheaf.core.page.MmVector;
import sheaf.core.record.Visit;

/**
 * Makes the {@link Plan} of a visit.
 *
 * <p>One thing is moved at a time, and each move is one that the next sheet can be expected to
 * show. While it is not known how the bow answers to a lever, the move is small and its direction
 * common practice; once it is, from this bow's sheets or the shop's earlier ones, it is the move
 * that leaves the least offset to be expected. Nothing is moved for an offset that may be none.
 */
public final class Planner {

  /** Fewer arrows of each head than this make no sheet. */
  private static final int FEWEST_A_SHEET = 3;

  private final Trials trials;
  private final BowModel bow;
  private final PlanWords words;
  private final MoveChoice choice;

  private Planner(Visit visit, BowSetup setup, ShopPrior prior, Trials trials, Scatter scatter) {
    this.trials = trials;
    this.bow = trials.learnt(BowModel.start(MoveChoice.levers(setup, trials), prior, scatter));
    this.words = new PlanWords(visit, setup, trials, bow, prior);
    this.choice = new MoveChoice(setup, trials, bow);
  }

  /**
   * The next step.
   *
   * @param visit what was shot and changed so far
   * @param setup what there is to move
   * @param prior what earlier bows taught
   */
  public static Plan plan(Visit visit, BowSetup setup, ShopPrior prior) {
    if (!visit.notSound().isEmpty()) {
      return Plan.without(
          Plan.Kind.DO_NOT_SHOOT,
          "Do not shoot this bow before every part that was not found sound has been seen to.");
    }
    Trials trials = Trials.of(visit);
    if (trials.trials().isEmpty()) {
      return TearPlan.of(visit, setup);
    }
    if (!trials.since().isEmpty()) {
      return Plan.without(
          Plan.Kind.SHOOT_FIRST,
          "Something was changed after the last pair sheet: shoot a pair sheet to see what it did.");
    }
    return trials
        .scatter()
        .map(scatter -> new Planner(visit, setup, prior, trials, scatter).plan())
        .orElseGet(
            () ->
                Plan.without(
                    Plan.Kind.MORE_ARROWS,
                    "One arrow of each head says nothing of their scatter: shoot three or more of"
                        + " each at the same setting."));
  }

  /**
   * Whether the sheets since the last change show broadheads and field points at the same point,
   * with the scatter of all of the visit's pair sheets, taken to be round.
   */
  public static boolean isShown(Visit visit) {
    return isShown(Trials.of(visit));
  }

  private static boolean isShown(Trials trials) {
    return trials
        .here()
        .filter(
            offset ->
                Equivalence.judge(offset, SamePoint.toleranceAt(trials.last().distance()))
                    == Equivalence.SHOWN)
        .isPresent();
  }

  private Plan plan() {
    Comparison here = here();
    double tolerance = SamePoint.toleranceAt(last().distance());
    if (isShown(trials)) {
      return plan(
          Plan.Kind.SAME_POINT,
          OptionalInt.empty(),
          words.samePoint(sheetsHere(), lastAlone(), here.moreOfEach(tolerance)));
    }
    double scale = last().toReference() * last().toReference();
    OptionalInt more =
        here.moreOfEach(tolerance, bow.scatter().variance() / scale, bow.scatter().freedom());
    if (bow.region().contains(new MmVector(0, 0)) || moreArrowsSettleIt(more)) {
      return plan(Plan.Kind.MORE_ARROWS, more, words.moreArrows(more));
    }
    return move().orElseGet(() -> withoutMove(more));
  }

  /** Where the offset may be small enough already, one more sheet beats another move. */
  private boolean moreArrowsSettleIt(OptionalInt more) {
    double tolerance = SamePoint.toleranceAt(Trial.REFERENCE);
    int sheetful =
        Math.max(
            FEWEST_A_SHEET,
            Math.min(last().shots().reference().size(), last().shots().compared().size()));
    return bow.offset().length() <= tolerance && more.isPresent() && more.getAsInt() <= sheetful;
  }

  private Plan withoutMove(OptionalInt more) {
    boolean within = bow.offset().length() <= SamePoint.toleranceAt(Trial.REFERENCE);
    return within
        ? plan(Plan.Kind.MORE_ARROWS, more, words.moreArrows(more))
        : plan(Plan.Kind.NO_LEVER, OptionalInt.empty(), words.noLever());
  }

  private Optional<Plan> move() {
    return choice.axes().stream().flatMap(axis -> move(axis).stream()).findFirst();
  }

  private Optional<Plan> move(Axis axis) {
    Optional<Lever> chosen = choice.lever(axis);
    if (chosen.isEmpty()) {
      return Optional.empty();
    }
    Lever lever = chosen.get();
    boolean known = bow.response(lever).directionKnown(axis);
    if (!known && choice.scatterHides(lever)) {
      OptionalInt none = OptionalInt.empty();
      return Optional.of(plan(Plan.Kind.MORE_ARROWS, none, words.scatterHides(lever)));
    }
    return known
        ? choice.computed(lever).map(this::computedMove)
        : Optional.of(startingMove(choice.starting(lever)));
  }

  private Plan computedMove(Move move) {
    BowModel after = bow.after(move);
    return new Plan(
        Plan.Kind.COMPUTED_MOVE,
        Optional.of(move),
        Optional.of(now()),
        Optional.of(new Plan.Forecast(after.offset(), after.region())),
        OptionalInt.empty(),
        learnt(),
        words.computed(move, after));
  }

  private Plan startingMove(Move move) {
    return new Plan(
        Plan.Kind.STARTING_MOVE,
        Optional.of(move),
        Optional.of(now()),
        Optional.empty(),
        OptionalInt.empty(),
        learnt(),
        words.starting(move));
  }

  private Plan plan(Plan.Kind kind, OptionalInt more, List<String> remarks) {
    return new Plan(
        kind, Optional.empty(), Optional.of(now()), Optional.empty(), more, learnt(), remarks);
  }

  private List<Plan.Learnt> learnt() {
    return trials.moved().stream()
        .map(lever -> new Plan.Learnt(lever, bow.response(lever)))
        .toList();
  }

  private Plan.Forecast now() {
    return new Plan.Forecast(bow.offset(), bow.region());
  }

  private Trial last() {
    return trials.last();
  }

  private Comparison here() {
    return new Comparison(trials.atThisSetting().stream().map(Trial::shots).toList());
  }

  /** Whether the last sheet shows it by itself, with no shape of the scatter assumed. */
  private boolean lastAlone() {
    double tolerance = SamePoint.toleranceAt(last().distance());
    return Equivalence.judge(last().comparison().offset(), tolerance) == Equivalence.SHOWN;
  }

  private List<Integer> sheetsHere() {
    return trials.atThisSetting().stream().map(Trial::sheet).toList();
  }
}
