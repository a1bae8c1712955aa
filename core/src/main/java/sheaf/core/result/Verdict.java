package sheaf.core.result;

import java.util.ArrayList;
import java.util.List;
import sheaf.core.group.Offset;
import sheaf.core.layout.UnitSystem;
import sheaf.core.measure.Distance;
import sheaf.core.measure.Inches;
import sheaf.core.page.MmVector;

/** A pair sheet's result in one plain sentence. */
public final class Verdict {

  /** Below this many millimetres a direction is not worth a word: half a sixteenth of an inch. */
  private static final double NOTHING = 0.8;

  private Verdict() {}

  /** The sentence, in the sheet's own units. */
  public static String of(PairResult result) {
    UnitSystem units = result.sheet().layout().units();
    if (result.offset().isEmpty()) {
      return result.field().isEmpty()
          ? "No field point was found on this sheet, so there is nothing to compare with."
          : "No broadhead was found on this sheet, so there is nothing to compare with.";
    }
    String where = direction(result.offset().get().shift(), units);
    if (result.distance().isEmpty()) {
      return "Broadheads hit " + where + "; the distance is not known, so it cannot be judged.";
    }
    return judged(result, where, units);
  }

  private static String judged(PairResult result, String where, UnitSystem units) {
    Distance distance = result.distance().orElseThrow();
    double tolerance = result.tolerance().orElseThrow();
    String within = "the same point within " + length(tolerance, units);
    return switch (result.equivalence().orElseThrow()) {
      case SHOWN ->
          "Broadheads and field points hit %s at %s: shown, with 95 %% confidence."
              .formatted(within, distance);
      case NOT_SHOWN ->
          "Broadheads hit %s at %s: %s %s."
              .formatted(where, distance, provenApart(result, tolerance), within);
      case NOT_ENOUGH_ARROWS ->
          "Broadheads hit %s at %s, but these are too few arrows to show %s."
              .formatted(where, distance, within);
    };
  }

  /** Only a region that lies wholly outside the tolerance proves a difference. */
  private static String provenApart(PairResult result, double tolerance) {
    boolean proven =
        result
            .offset()
            .flatMap(Offset::region)
            .filter(r -> r.nearestReach() > tolerance)
            .isPresent();
    return proven ? "not" : "not shown to be";
  }

  /**
   * A move in words a shooter uses: {@code 1 3/8 in right and 5/8 in low of the field points}.
   *
   * @param shift in true millimetres, x right, y down
   */
  public static String direction(MmVector shift, UnitSystem units) {
    String away = away(shift, units);
    return away.isEmpty() ? "where the field points hit" : away + " of the field points";
  }

  /** How far a place is off, {@code 1 3/8 in right and 5/8 in low}; empty when hardly at all. */
  static String away(MmVector shift, UnitSystem units) {
    List<String> parts = new ArrayList<>();
    if (Math.abs(shift.dx()) >= NOTHING) {
      parts.add(length(Math.abs(shift.dx()), units) + (shift.dx() > 0 ? " right" : " left"));
    }
    if (Math.abs(shift.dy()) >= NOTHING) {
      parts.add(length(Math.abs(shift.dy()), units) + (shift.dy() > 0 ? " low" : " high"));
    }
    return String.join(" and ", parts);
  }

  /** A length for people: to the nearest sixteenth of an inch, or to the millimetre. */
  public static String length(double mm, UnitSystem units) {
    return units == UnitSystem.INCHES ? Inches.nearestSixteenth(mm) : Math.round(mm) + " mm";
  }
}
