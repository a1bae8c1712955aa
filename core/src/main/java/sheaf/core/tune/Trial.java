package sheaf.core.tune;

import java.util.List;
import java.util.Optional;
import sheaf.core.group.Comparison;
import sheaf.core.measure.Distance;
import sheaf.core.measure.Unit;
import sheaf.core.page.MmVector;

/**
 * A pair sheet at which both heads were shot, and what was done to the bow before it.
 *
 * @param sheet its number
 * @param before what was changed since the trial before, in order; empty for what cannot be counted
 * @param shots on it, in true millimetres
 * @param distance that it was shot from
 */
record Trial(int sheet, List<Optional<Move>> before, Comparison.Sheet shots, Distance distance) {

  /** Where responses are told. */
  static final Distance REFERENCE = new Distance(20, Unit.YARD);

  Trial {
    before = List.copyOf(before);
  }

  /** The levers that were moved before it, as far as that was counted. */
  List<Lever> moved() {
    return before.stream().flatMap(Optional::stream).map(Move::lever).distinct().toList();
  }

  /** What millimetres here come to at 20 yd, as the same angle. */
  double toReference() {
    return REFERENCE.millimetres() / distance.millimetres();
  }

  /** The sheet by itself. */
  Comparison comparison() {
    return Comparison.of(shots.reference(), shots.compared());
  }

  /** How much it counts: the offset's variance is that of the shots over this. */
  double weight() {
    return comparison().weight();
  }

  /** The offset in millimetres at 20 yd. */
  MmVector offset() {
    return comparison().shift().times(toReference());
  }
}
