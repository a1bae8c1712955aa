package sheaf.core.tune;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
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

  /** What counts as the same point, at the distance that all offsets are told at. */
  private static final double TOLERANCE_MM = SamePoint.toleranceAt(Trial.REFERENCE);

  private final Trials trials;
  private final BowModel bow;
  private final Trials.Course own;
  private final PlanWords words;
  private final MoveChoice choice;

  private Planner(Visit visit, BowSetup setup, ShopPrior prior, Trials trials, Scatter scatter) {
    List<Lever> levers = MoveChoice.levers(setup, trials);
    this.trials = trials;
    this.bow = trials.course(BowModel.start(levers, prior, scatter)).bow();
    this.own = own(trials, scatter);
    this.words = new PlanWords(visit, setup, trials, bow, own, prior);
    this.choice = new MoveChoice(setup, trials, bow);
  }

  /** What the bow's own sheets teach, without any earlier bow. */
  private static Trials.Course own(Trials trials, Scatter scatter) {
    return trials.course(BowModel.start(trials.moved(), ShopPrior.NONE, scatter));
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
   * Whether all of a visit's pair sheets, with the moves between them, show broadheads and field
   * points at the same point as the bow is now: the 95 % region lies within the tolerance, with the
   * scatter of all of these sheets, taken to be round. No earlier bow counts.
   */
  public static boolean isShown(Visit visit) {
    Trials trials = Trials.of(visit);
    return trials
        .scatter()
        .filter(scatter -> trials.since().isEmpty())
        .filter(scatter -> own(trials, scatter).isShown(TOLERANCE_MM))
        .isPresent();
  }

  private Plan plan() {
    if (own.isShown(TOLERANCE_MM)) {
      return plan(Plan.Kind.SAME_POINT, OptionalInt.empty(), words.samePoint(last().comparison()));
    }
    OptionalInt more = own.bow().moreOfEach(TOLERANCE_MM);
    if (own.bow().region().contains(new MmVector(0, 0)) || moreArrowsSettleIt(more)) {
      return plan(Plan.Kind.MORE_ARROWS, more, words.moreArrows(more));
    }
    return move().orElseGet(() -> withoutMove(more));
  }

  /** Where the offset may be small enough already, one more sheet beats another move. */
  private boolean moreArrowsSettleIt(OptionalInt more) {
    int sheetful =
        Math.max(
            FEWEST_A_SHEET,
            Math.min(last().shots().reference().size(), last().shots().compared().size()));
    return bow.offset().length() <= TOLERANCE_MM && more.isPresent() && more.getAsInt() <= sheetful;
  }

  private Plan withoutMove(OptionalInt more) {
    boolean within = bow.offset().length() <= TOLERANCE_MM;
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
}
