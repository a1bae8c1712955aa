package sheaf.core.tune;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import sheaf.core.group.Comparison;
import sheaf.core.group.Hotelling;
import sheaf.core.group.Offset;
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
 * @param unnoted the trials that differ from the one before by more than their scatter, though
 *     nothing was noted as changed in between: something was, or something moved by itself
 */
record Trials(List<Trial> trials, List<Optional<Move>> since, List<Trial> unnoted) {

  /** Of sheets between which truly nothing changed, one in a hundred is taken to differ. */
  private static final double DIFFERS = 0.01;

  Trials {
    trials = List.copyOf(trials);
    since = List.copyOf(since);
    unnoted = List.copyOf(unnoted);
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
    return withUnnoted(trials, moves(visit, last, Integer.MAX_VALUE));
  }

  /** Puts a change that cannot be counted before every trial that something unnoted lies before. */
  private static Trials withUnnoted(List<Trial> trials, List<Optional<Move>> since) {
    Optional<Scatter> scatter = scatter(trials);
    List<Trial> all = new ArrayList<>();
    List<Trial> unnoted = new ArrayList<>();
    for (int i = 0; i < trials.size(); i++) {
      Trial trial = trials.get(i);
      boolean noted = i == 0 || !trial.before().isEmpty() || scatter.isEmpty();
      if (noted || !differ(trials.get(i - 1), trial, scatter.get())) {
        all.add(trial);
      } else {
        List<Optional<Move>> something = List.of(Optional.empty());
        all.add(new Trial(trial.sheet(), something, trial.shots(), trial.distance()));
        unnoted.add(trial);
      }
    }
    return new Trials(all, since, unnoted);
  }

  /**
   * Half the square of their distance, over its variance, follows F(2, 2v) where nothing changed.
   */
  private static boolean differ(Trial one, Trial other, Scatter scatter) {
    double dx = other.offset().dx() - one.offset().dx();
    double dy = other.offset().dy() - one.offset().dy();
    double variance = scatter.variance() * (1 / one.weight() + 1 / other.weight());
    double f = (dx * dx + dy * dy) / (2 * variance);
    return f > Hotelling.fQuantile(2 * scatter.freedom(), DIFFERS);
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
    return Stream.concat(trials.stream().flatMap(t -> t.before().stream()), since.stream())
        .flatMap(Optional::stream)
        .map(Move::lever)
        .distinct()
        .toList();
  }

  /** The trials since the last change, all at the last one's distance; empty without any. */
  List<Trial> atThisSetting() {
    List<Trial> same = new ArrayList<>();
    if (!since.isEmpty()) {
      return same;
    }
    for (int i = trials.size() - 1; i >= 0; i--) {
      if (trials.get(i).distance().equals(trials.get(trials.size() - 1).distance())) {
        same.add(0, trials.get(i));
      }
      if (!trials.get(i).before().isEmpty()) {
        break;
      }
    }
    return same;
  }

  /**
   * What the sheets since the last change show of where broadheads go, in true millimetres at their
   * distance, with the scatter of all of the job's sheets, taken to be round; empty without such a
   * sheet, or where scatter is not known.
   */
  Optional<Offset> here() {
    List<Trial> here = atThisSetting();
    return here.isEmpty() ? Optional.empty() : scatter().map(scatter -> here(here, scatter));
  }

  private static Offset here(List<Trial> here, Scatter scatter) {
    double scale = here.get(0).toReference();
    return new Comparison(here.stream().map(Trial::shots).toList())
        .roundOffset(scatter.variance() / (scale * scale), scatter.freedom());
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
    return scatter(trials);
  }

  private static Optional<Scatter> scatter(List<Trial> trials) {
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

  /** What a bow that began with some knowledge of its levers is known to do after all this. */
  BowModel learnt(BowModel start) {
    BowModel bow = start;
    for (Trial trial : trials) {
      bow = moved(bow, trial.before());
      bow = bow.seen(trial.offset(), trial.weight());
    }
    return moved(bow, since);
  }

  private static BowModel moved(BowModel bow, List<Optional<Move>> moves) {
    BowModel after = bow;
    for (Optional<Move> move : moves) {
      after = move.isPresent() ? after.after(move.get()) : after.afterSomething();
    }
    return after;
  }
}
