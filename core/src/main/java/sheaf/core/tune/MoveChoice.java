package sheaf.core.tune;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What to move, and how far.
 *
 * @param setup what there is to move
 * @param trials so far, at least one
 * @param bow what they taught
 */
record MoveChoice(BowSetup setup, Trials trials, BowModel bow) {

  /** An axis needs a component of so many standard deviations before something is moved for it. */
  private static final double TOLD = 2;

  /** A first move may need to be so many times the usual small one before it shows. */
  private static final double USUAL_STARTS = 2;

  /** A lever that would need more of its largest moves than this is left alone. */
  private static final int MOST_MOVES = 4;

  /** All levers of a bow: those that were moved, and those that are moved first. */
  static List<Lever> levers(BowSetup setup, Trials trials) {
    Stream<Lever> usual = Stream.of(Axis.values()).flatMap(axis -> setup.first(axis).stream());
    return Stream.concat(trials.moved().stream(), usual).distinct().toList();
  }

  /**
   * The axes that something may be moved along: the one that is more off, and the other if told.
   */
  List<Axis> axes() {
    List<Axis> axes = new ArrayList<>(List.of(Axis.values()));
    axes.sort(Comparator.comparingDouble(axis -> -Math.abs(axis.along(bow.offset()))));
    Axis first = axes.get(0);
    axes.removeIf(axis -> axis != first && !isTold(axis));
    return axes;
  }

  private boolean isTold(Axis axis) {
    return Math.abs(axis.along(bow.offset())) > TOLD * bow.offsetDeviation(axis);
  }

  /**
   * The lever for an axis: one whose answer is known, else one that was begun with, else a first.
   */
  Optional<Lever> lever(Axis axis) {
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

  /** Whether the difference of two sheets scatters more than the usual first move may do. */
  boolean scatterHides(Lever lever) {
    double noise = Math.sqrt(2 * bow.scatter().variance() / trials.last().weight());
    return noise > USUAL_STARTS * lever.step().small() * lever.step().usualMm();
  }

  /** The move that leaves the least offset to be expected; empty when that is none. */
  Optional<Move> computed(Lever lever) {
    double steps = rounded(bow.bestSteps(lever), lever.step());
    return steps == 0 ? Optional.empty() : Optional.of(within(lever, steps));
  }

  /**
   * The first move takes the arrow toward the field points, as far as the usual response would
   * need; once begun, it follows what was learnt, however little. A nocking point goes the other
   * way than a rest does.
   */
  Move starting(Lever lever) {
    Step step = lever.step();
    double learnt = bow.bestSteps(lever);
    double usual = lever.axis().along(bow.offset()) / step.usualMm();
    double wanted = learnt != 0 ? learnt : away(lever) ? usual : -usual;
    double most = step.most() / 2;
    double size = Math.min(Math.max(Math.abs(rounded(wanted, step)), step.small()), most);
    return within(lever, Math.copySign(size, wanted));
  }

  /**
   * Whether a first move goes the other way than toward the field points: with a nocking point, and
   * where this bow answered so to the same part along the other axis, since one and the same turn
   * of the arrow is behind both.
   */
  private boolean away(Lever lever) {
    Axis other = lever.axis().other();
    boolean answersAgainst =
        trials.moved().stream()
            .filter(moved -> moved.part() == lever.part() && moved.axis() == other)
            .map(bow::response)
            .anyMatch(
                response -> response.directionKnown(other) && other.along(response.perStep()) < 0);
    return lever.part() == Part.NOCKING || answersAgainst;
  }

  private Move within(Lever lever, double steps) {
    double most = new Reach(trials, bow).most(lever);
    return new Move(lever, Math.copySign(Math.min(Math.abs(steps), most), steps));
  }

  private static double rounded(double steps, Step step) {
    return Math.round(steps / step.finest()) * step.finest();
  }
}
