package sheaf.core.tune;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Stream;
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

  /** An axis needs a component of so many standard deviations before something is moved for it. */
  private static final double TOLD = 2;

  /** A lever that would need more of its largest moves than this is left alone. */
  private static final int MOST_MOVES = 4;

  /** Fewer arrows of each head than this make no sheet. */
  private static final int FEWEST_A_SHEET = 3;

  private final BowSetup setup;
  private final Trials trials;
  private final BowModel bow;
  private final PlanWords words;

  private Planner(Visit visit, BowSetup setup, ShopPrior prior, Trials trials, Scatter scatter) {
    this.setup = setup;
    this.trials = trials;
    this.bow = trials.learnt(BowModel.start(levers(setup, trials), prior, scatter));
    this.words = new PlanWords(visit, setup, trials, bow, prior);
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

  private static List<Lever> levers(BowSetup setup, Trials trials) {
    Stream<Lever> usual = Stream.of(Axis.values()).flatMap(axis -> setup.first(axis).stream());
    return Stream.concat(trials.moved().stream(), usual).distinct().toList();
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
    List<Axis> axes = new ArrayList<>(List.of(Axis.values()));
    axes.sort(Comparator.comparingDouble(axis -> -Math.abs(axis.along(bow.offset()))));
    return axes.stream()
        .filter(axis -> axis == axes.get(0) || isTold(axis))
        .flatMap(axis -> move(axis).stream())
        .findFirst();
  }

  private boolean isTold(Axis axis) {
    return Math.abs(axis.along(bow.offset())) > TOLD * bow.offsetDeviation(axis);
  }

  private Optional<Plan> move(Axis axis) {
    Optional<Lever> lever = lever(axis);
    if (lever.isEmpty()) {
      return Optional.empty();
    }
    boolean known = bow.response(lever.get()).directionKnown(axis);
    if (!known && scatterHides(lever.get())) {
      OptionalInt none = OptionalInt.empty();
      return Optional.of(plan(Plan.Kind.MORE_ARROWS, none, words.scatterHides(lever.get())));
    }
    double steps = known ? computed(lever.get()) : starting(lever.get(), axis);
    return steps == 0
        ? Optional.empty()
        : Optional.of(
            known
                ? computedMove(new Move(lever.get(), steps))
                : startingMove(new Move(lever.get(), steps)));
  }

  /**
   * The lever for an axis: one whose answer is known, else one that was begun with, else a first.
   */
  private Optional<Lever> lever(Axis axis) {
    List<Lever> candidates =
        levers(setup, trials).stream()
            .filter(lever -> lever.axis() == axis && canHelp(lever))
            .toList();
    return candidates.stream()
        .filter(lever -> bow.response(lever).directionKnown(axis))
        .max(
            Comparator.comparingDouble(
                lever -> Math.abs(axis.along(bow.response(lever).perStep()))))
        .or(() -> candidates.stream().findFirst());
  }

  /** Whether a few of the largest moves may well do what is needed. */
  private boolean canHelp(Lever lever) {
    double most = bow.response(lever).mostAlong(lever.axis()) * lever.step().most();
    return MOST_MOVES * most >= Math.abs(lever.axis().along(bow.offset()));
  }

  /** Whether the difference of two sheets scatters more than the largest starting move may do. */
  private boolean scatterHides(Lever lever) {
    double noise = Math.sqrt(2 * bow.scatter().variance() / last().weight());
    return noise > largestStart(lever.step()) * lever.step().usualMm();
  }

  private static double largestStart(Step step) {
    return 2 * step.small();
  }

  /** A lever that this bow was never moved by goes no farther than a first move: bows differ. */
  private double computed(Lever lever) {
    Step step = lever.step();
    double most = trials.moved().contains(lever) ? step.most() : largestStart(step);
    return rounded(bow.bestSteps(lever), step, most);
  }

  /**
   * The first move goes toward the field points, by half of what the usual response would need;
   * once begun, it follows what was learnt, however little.
   */
  private double starting(Lever lever, Axis axis) {
    Step step = lever.step();
    boolean begun = trials.moved().contains(lever) || bow.bestSteps(lever) != 0;
    double wanted = begun ? bow.bestSteps(lever) : -axis.along(bow.offset()) / (2 * step.usualMm());
    double size = Math.max(Math.abs(rounded(wanted, step, largestStart(step))), step.small());
    return Math.copySign(size, wanted);
  }

  private static double rounded(double steps, Step step, double most) {
    double whole = Math.round(Math.abs(steps) / step.finest()) * step.finest();
    return Math.copySign(Math.min(whole, most), steps) + 0.0;
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
