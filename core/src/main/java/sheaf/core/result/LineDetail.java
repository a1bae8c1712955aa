package sheaf.core.result;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import sheaf.core.group.Drift;
import sheaf.core.group.LineShot;
import sheaf.core.measure.Distance;
import sheaf.core.measure.Inches;
import sheaf.core.measure.Unit;

/** What else a line sheet tells, in plain sentences. */
public final class LineDetail {

  private LineDetail() {}

  /** The drift by the median of slopes, and from where on it matters; empty without a drift. */
  public static List<String> sentences(List<LineShot> shots) {
    Optional<Drift> found = Drift.of(shots);
    if (found.isEmpty()) {
      return List.of();
    }
    Drift drift = found.get();
    Unit step = shots.get(0).distance().unit();
    List<String> sentences = new ArrayList<>();
    sentences.add(
        "By the median of slopes (Theil-Sen), which a wild arrow hardly moves: %s for each %s, with 95 %% confidence %s to %s."
            .formatted(
                side(drift.robust().mmPerMetre(), step),
                step == Unit.YARD ? "yard" : "metre",
                side(drift.robust().low(), step),
                side(drift.robust().high(), step)));
    drift
        .mattersFrom()
        .map(from -> "The drift comes to 1 in (25 mm) at " + whole(from, step) + ".")
        .ifPresent(sentences::add);
    return sentences;
  }

  private static String whole(Distance from, Unit step) {
    return Math.round(from.unit().convert(from.value(), step)) + " " + step.symbol();
  }

  private static String side(double mmPerMetre, Unit step) {
    double mm = mmPerMetre * step.convert(1, Unit.METRE);
    String length =
        step == Unit.YARD
            ? Inches.decimal(Math.abs(mm))
            : String.format(Locale.ROOT, "%.1f mm", Math.abs(mm));
    return length + (mm < 0 ? " left" : " right");
  }
}
