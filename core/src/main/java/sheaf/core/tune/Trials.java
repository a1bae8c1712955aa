package sheaf.core.tune;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import sheaf.core.group.Comparison;
import sheaf.core.measure.Distance;
import sheaf.core.record.Change;
import sheaf.core.record.Visit;
import sheaf.core.result.PairResult;

/**
 * A visit as one trial after the other. Sheets are taken to have been shot in the order of their
 * numbers, and what was changed before a sheet of any kind counts for the next trial.
 *
 * @param trials in order
 * @param since what was changed after the last of them
 */
record Trials(List<Trial> trials, List<Optional<Move>> since) {

  Trials {
    trials = List.copyOf(trials);
    since = List.copyOf(since);
  }

  static Trials of(Visit visit) {
    List<PairResult> pairs =
        visit.pairs().stream()
            .filter(pair -> pair.offset().isPresent() && pair.distance().isPresent())
            .sorted(Comparator.comparingInt(pair -> pair.sheet().number()))
            .toList();
    List<Trial> trials = new ArrayList<>();
    int last = 0;
    for (PairResult pair : pairs) {
      int sheet = pair.sheet().number();
      Comparison.Sheet shots =
          new Comparison.Sheet(pair.field().orElseThrow(), pair.broadhead().orElseThrow());
      Distance distance = pair.distance().orElseThrow();
      trials.add(new Trial(sheet, moves(visit, last, sheet), shots, distance));
      last = sheet;
    }
    return new Trials(trials, moves(visit, last, Integer.MAX_VALUE));
  }

  /**
   * What was changed before the sheets behind one and up to another; sight moves change nothing.
   */
  private static List<Optional<Move>> moves(Visit visit, int behind, int upTo) {
    return visit.changes().stream()
        .filter(change -> change.beforeSheet() > behind && change.beforeSheet() <= upTo)
        .filter(change -> !movesSightOnly(change))
        .map(Move::of)
        .toList();
  }

  private static boolean movesSightOnly(Change change) {
    return Part.of(change.what().text()).filter(part -> !part.movesOffset()).isPresent();
  }

  /** The last trial, of which there must be one. */
  Trial last() {
    return trials.get(trials.size() - 1);
  }

  /** All levers that were moved. */
  List<Lever> moved() {
    return Stream.concat(
            trials.stream().flatMap(trial -> trial.moved().stream()),
            since.stream().flatMap(Optional::stream).map(Move::lever))
        .distinct()
        .toList();
  }

  /** The last move, where it was the only change since the trial before and could be counted. */
  Optional<Move> lastMove() {
    if (trials.size() < 2 || !since.isEmpty()) {
      return Optional.empty();
    }
    List<Optional<Move>> before = trials.get(trials.size() - 1).before();
    return before.size() == 1 ? before.get(0) : Optional.empty();
  }

  /** How all shots scatter about their centres, at 20 yd; empty when that cannot be told. */
  Optional<Scatter> scatter() {
    double squares = 0;
    int freedom = 0;
    for (Trial trial : trials) {
      Comparison one = trial.comparison();
      if (one.freedom() > 0) {
        double scale = trial.toReference() * trial.toReference();
        squares += one.variance() * 2 * one.freedom() * scale;
        freedom += one.freedom();
      }
    }
    return freedom > 0 && squares > 0
        ? Optional.of(new Scatter(squares / (2 * freedom), freedom))
        : Optional.empty();
  }

  /**
   * What a bow is known to do after all this.
   *
   * @param bow as it is known now
   * @param counting the trials that say where broadheads go now: those since something was changed
   *     that cannot be counted
   * @param unexpected the trials that lie farther from where those before them and the moves
   *     between should have led than scatter explains, although the bow had answered to such moves
   *     before
   */
  record Course(BowModel bow, List<Trial> counting, List<Trial> unexpected) {

    Course {
      counting = List.copyOf(counting);
      unexpected = List.copyOf(unexpected);
    }

    /**
     * Whether both heads are shown to hit the same point; not by a last sheet that was not
     * expected.
     */
    boolean isShown(double toleranceMm) {
      boolean trusted =
          unexpected.isEmpty()
              || !unexpected.get(unexpected.size() - 1).equals(counting.get(counting.size() - 1))
              || counting.size() == 1;
      return trusted && bow.isShown(toleranceMm);
    }
  }

  /**
   * All trials, one after the other. Where nothing is noted as changed before an unexpected one,
   * something was, and what was known of the offset counts no more; else either the answer or the
   * amount is not what it was taken for, and the bow's answer is learnt from it as from any other.
   *
   * @param start of a bow with some knowledge of its levers
   */
  Course course(BowModel start) {
    BowModel bow = start;
    Set<Lever> answered = new HashSet<>();
    List<Trial> counting = new ArrayList<>();
    List<Trial> unexpected = new ArrayList<>();
    for (Trial trial : trials) {
      bow = moved(bow, trial.before());
      boolean foreseen = answered.containsAll(trial.moved());
      boolean surprise = foreseen && !bow.expects(trial.offset(), trial.weight());
      if (surprise) {
        unexpected.add(trial);
      }
      if (surprise && trial.before().isEmpty()) {
        bow = bow.afterSomething();
        counting.clear();
      }
      if (trial.before().contains(Optional.<Move>empty())) {
        counting.clear();
      }
      counting.add(trial);
      answered.addAll(trial.moved());
      bow = bow.seen(trial.offset(), trial.weight());
    }
    return new Course(moved(bow, since), counting, unexpected);
  }

  private static BowModel moved(BowModel bow, List<Optional<Move>> moves) {
    BowModel after = bow;
    for (Optional<Move> move : moves) {
      after = move.isPresent() ? after.after(move.get()) : after.afterSomething();
    }
    return after;
  }
}
