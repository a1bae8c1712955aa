package sheaf.core.result;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import sheaf.core.group.Claim;
import sheaf.core.group.Drift;
import sheaf.core.group.Estimate;
import sheaf.core.group.LineShot;
import sheaf.core.measure.Inches;
import sheaf.core.measure.Unit;

/** A line sheet's result in plain sentences. */
public final class LineVerdict {

  private LineVerdict() {}

  /** What the sheet shows, and which of its bands are left out. */
  public static String of(LineResult result) {
    String shown = of(result.shots());
    List<Integer> without = result.withoutDistance();
    return without.isEmpty() ? shown : shown + " " + leftOut(without);
  }

  private static String leftOut(List<Integer> bands) {
    String numbers = bands.stream().map(String::valueOf).collect(Collectors.joining(" and "));
    return bands.size() == 1
        ? "Band %s has no distance that is known, so its shots are left out.".formatted(numbers)
        : "Bands %s have no distance that is known, so their shots are left out."
            .formatted(numbers);
  }

  /** What shots at the line show, in the units of their distances. */
  public static String of(List<LineShot> shots) {
    if (shots.isEmpty()) {
      return "No hole with a known distance was found, so no drift can be told.";
    }
    Optional<Drift> drift = Drift.of(shots);
    if (drift.isEmpty()) {
      return "All shots are from one distance: a drift needs two distances or more.";
    }
    return drift(drift.get(), step(shots)) + " " + offset(drift.get(), step(shots));
  }

  /** What to move next, as common practice; empty where nothing is shown that speaks for a move. */
  public static Optional<String> practice(List<LineShot> shots) {
    return Drift.of(shots).flatMap(LineVerdict::practice);
  }

  /** The unit that a drift is told by: as the first distance was. */
  private static Unit step(List<LineShot> shots) {
    return shots.get(0).distance().unit();
  }

  private static String drift(Drift drift, Unit step) {
    Estimate perStep = drift.mmPerMetre().times(step.convert(1, Unit.METRE));
    String found = side(perStep.value(), step) + " for each " + word(step);
    return switch (drift.drifts()) {
      case SHOWN ->
          "Impact drifts with distance, by %s (with 95 %% confidence %s): this speaks of the rest."
              .formatted(found, range(perStep, step));
      case NOT_SHOWN ->
          "Impact is not shown to drift with distance: with 95 %% confidence by at most %s for each %s."
              .formatted(length(Math.max(-perStep.low(), perStep.high()), step), word(step));
      case NOT_ENOUGH_ARROWS ->
          "These are too few arrows to show whether impact drifts with distance: they went %s%s."
              .formatted(found, doubt(perStep, step));
    };
  }

  private static String offset(Drift drift, Unit step) {
    Estimate offset = drift.mmAtZero();
    return switch (drift.isOff()) {
      case SHOWN ->
          "It is %soff by the same at every distance, by %s (with 95 %% confidence %s): this speaks of the sight."
              .formatted(
                  drift.drifts() == Claim.SHOWN ? "also " : "",
                  side(offset.value(), step),
                  range(offset, step));
      case NOT_SHOWN -> "It is not shown to be off by the same at every distance.";
      case NOT_ENOUGH_ARROWS ->
          "Whether it is off by the same at every distance, these arrows do not show.";
    };
  }

  private static Optional<String> practice(Drift drift) {
    boolean drifts = drift.drifts() == Claim.SHOWN;
    boolean off = drift.isOff() == Claim.SHOWN;
    if (drifts) {
      return Optional.of(
          "Common practice, no published standard: move the rest sideways by 1/32 in (1 mm) or"
              + " less, nothing else, and shoot a new line sheet. Sources disagree which way; keep"
              + " the one that makes the line straighter."
              + (off ? " See to the sight only when the drift is gone." : ""));
    }
    return off
        ? Optional.of(
            "Common practice, no published standard: leave the rest and move the sight the way the"
                + " arrows went, to the "
                + (drift.mmAtZero().value() < 0 ? "left" : "right")
                + "; then shoot a new line sheet.")
        : Optional.empty();
  }

  private static String doubt(Estimate estimate, Unit step) {
    return estimate.margin().isEmpty()
        ? ""
        : ", but with 95 % confidence anything " + range(estimate, step) + " is possible";
  }

  /** {@code from 0.02 in to 0.10 in right}, {@code from 0.10 in left to 0.02 in right}. */
  private static String range(Estimate estimate, Unit step) {
    double low = estimate.low();
    double high = estimate.high();
    if (low >= 0 || high <= 0) {
      double near = low >= 0 ? low : high;
      double far = low >= 0 ? high : low;
      return "from " + length(near, step) + " to " + side(far, step);
    }
    return "from " + side(low, step) + " to " + side(high, step);
  }

  private static String side(double mm, Unit step) {
    return length(mm, step) + (mm < 0 ? " left" : " right");
  }

  /** In hundredths of an inch with yards, in tenths of a millimetre with metres. */
  private static String length(double mm, Unit step) {
    return step == Unit.YARD
        ? Inches.decimal(Math.abs(mm))
        : String.format(Locale.ROOT, "%.1f mm", Math.abs(mm));
  }

  private static String word(Unit step) {
    return step == Unit.YARD ? "yard" : "metre";
  }
}
