package sheaf.core.energy;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import sheaf.core.layout.PullsLayout;
import sheaf.core.layout.SheetKind;
import sheaf.core.layout.UnitSystem;
import sheaf.core.measure.Unit;
import sheaf.core.reading.FieldReading;
import sheaf.core.reading.PageReading;
import sheaf.core.result.JobSummary;

/**
 * How a bow was found to pull, as far as that was measured.
 *
 * @param curve from rest to full draw; empty without pulls, or while any of them is in doubt
 * @param doubts whole sentences: what keeps the pulls from being a curve
 */
public record Pulls(Optional<DrawCurve> curve, List<String> doubts) {

  /** Nobody measured any. */
  public static final Pulls NONE = new Pulls(Optional.empty(), List.of());

  /** Copies the list. */
  public Pulls {
    doubts = List.copyOf(doubts);
  }

  /** Pulls that a person told. */
  public static Pulls of(DrawCurve curve) {
    return new Pulls(Optional.of(curve), List.of());
  }

  /** What the last force-draw sheet of a job says. */
  public static Pulls of(JobSummary job) {
    return job.sheets().stream()
        .filter(page -> page.sheet().orElseThrow().layout().kind() == SheetKind.FORCE_DRAW)
        .reduce((earlier, later) -> later)
        .map(page -> new Sheet(page).pulls())
        .orElse(NONE);
  }

  /** Collects a sheet's pulls. */
  private static final class Sheet {
    private final PageReading page;
    private final UnitSystem units;
    private final List<DrawCurve.Pull> pulls = new ArrayList<>();
    private final List<String> doubts = new ArrayList<>();

    Sheet(PageReading page) {
      this.page = page;
      this.units = page.sheet().orElseThrow().layout().units();
      // At rest the string pulls nowhere.
      pulls.add(new DrawCurve.Pull(0, 0));
    }

    Pulls pulls() {
      for (int step = 1; step <= PullsLayout.PULLS; step++) {
        add(step);
      }
      addFullDraw();
      boolean measured = doubts.isEmpty() && pulls.stream().anyMatch(pull -> pull.pounds() > 0);
      return new Pulls(measured ? Optional.of(new DrawCurve(pulls)) : Optional.empty(), doubts);
    }

    private void add(int step) {
      double drawn = PullsLayout.inchesDrawn(step, units);
      sure(PullsLayout.key(step), Unit.POUND_FORCE, "The pull at " + words(drawn))
          .ifPresent(
              pounds -> {
                if (pulls.size() < step && doubts.isEmpty()) {
                  doubts.add(
                      "A pull before %s is left out on the force-draw sheet: every one is needed."
                          .formatted(words(drawn)));
                }
                pulls.add(new DrawCurve.Pull(drawn, pounds));
              });
    }

    private void addFullDraw() {
      OptionalDouble drawn = number(PullsLayout.FULL_DRAW, Unit.INCH, "Full draw");
      OptionalDouble pounds =
          number(PullsLayout.FULL_DRAW_PULL, Unit.POUND_FORCE, "The pull at full draw");
      double last = pulls.get(pulls.size() - 1).inches();
      if (drawn.isPresent() && drawn.getAsDouble() < last) {
        doubts.add(
            "Full draw is nearer than the last pull on the force-draw sheet: one of them is wrong.");
      } else if (drawn.isPresent() && pounds.isPresent() && drawn.getAsDouble() > last) {
        pulls.add(new DrawCurve.Pull(drawn.getAsDouble(), pounds.getAsDouble()));
      }
    }

    private OptionalDouble number(String key, Unit unit, String what) {
      return sure(key, unit, what).map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }

    private Optional<Double> sure(String key, Unit unit, String what) {
      Optional<FieldReading> field =
          page.field(key).filter(said -> said.state() != FieldReading.State.BLANK);
      if (field.filter(said -> said.state() == FieldReading.State.CHECK).isPresent()) {
        doubts.add(what + " on the force-draw sheet is not read surely: look at the sheet.");
        return Optional.empty();
      }
      return field
          .filter(said -> said.value().isPresent() && said.unit().isPresent())
          .map(said -> said.unit().get().convert(said.value().getAsDouble(), unit));
    }

    private String words(double inches) {
      return units == UnitSystem.INCHES
          ? String.format(Locale.ROOT, "%.0f in", inches)
          : String.format(Locale.ROOT, "%.0f mm", Unit.INCH.convert(inches, Unit.MILLIMETRE));
    }
  }
}
