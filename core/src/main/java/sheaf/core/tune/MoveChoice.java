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

  /** Whether the difference of two sheets scatters more than the largest starting move may do. */
  boolean scatterHides(Lever lever) {
    double noise = Math.sqrt(2 * bow.scatter().variance() / trials.last().weight());
    return noise > largestStart(lever.step()) * lever.step().usualMm();
  }

  private static double largestStart(Step step) {
    return 2 * step.small();
  }

  /**
   * The move that leaves the least offset to be expected; empty when that is none. A lever that
   * this bow was never moved by goes no farther than a first move: bows differ.
   */
  Optional<Move> computed(Lever lever) {
    Step step = lever.step();
    double most = trials.moved().contains(lever) ? step.most() : largestStart(step);
    double steps = rounded(bow.bestSteps(lever), step, most);
    return steps == 0 ? Optional.empty() : Optional.of(new Move(lever, steps));
  }

  /**
   * The first move takes the arrow toward the field points, by half of what the usual response
   * would need; once begun, it follows what was learnt, however little. A nocking point goes the
   * other way than a rest does.
   */
  Move starting(Lever lever) {
    Step step = lever.step();
    double off = lever.axis().along(bow.offset()) / (2 * step.usualMm());
    double learnt = bow.bestSteps(lever);
    double wanted = learnt != 0 ? learnt : lever.part() == Part.NOCKING ? off : -off;
    double size = Math.max(Math.abs(rounded(wanted, step, largestStart(step))), step.small());
    return new Move(lever, Math.copySign(size, wanted));
  }

  private static double rounded(double steps, Step step, double most) {
    double whole = Math.round(Math.abs(steps) / step.finest()) * step.finest();
    return Math.copySign(Math.min(whole, most), steps) + 0.0;
  }
}
