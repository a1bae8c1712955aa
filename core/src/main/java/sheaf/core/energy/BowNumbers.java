package sheaf.core.energy;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import sheaf.core.measure.Unit;
import sheaf.core.record.BowRecord;

/**
 * All that a record's measures come to, as far as they were taken and make sense together.
 *
 * @param figures in the order in which people read them
 * @param cautions whole sentences: where a hazard is, and what cannot be right
 */
public record BowNumbers(List<Figure> figures, List<String> cautions) {

  private static final String FOOT_POUNDS = "ft lbf";

  /** Two scales may differ by so much: our own assumption. */
  private static final double PEAK_POUNDS = 3;

  /** A pull every inch ends up to an inch before full draw. */
  private static final double STROKE_INCHES = 1.25;

  /** Copies the lists. */
  public BowNumbers {
    figures = List.copyOf(figures);
    cautions = List.copyOf(cautions);
  }

  /**
   * The numbers of a record's last visit.
   *
   * @param pulls how the bow pulls, where that was measured
   */
  public static BowNumbers of(BowRecord record, Pulls pulls) {
    Maker maker = new Maker(record);
    maker.cautions.addAll(pulls.doubts());
    maker.arrow(pulls.curve());
    maker.weights();
    maker.shaft();
    maker.rated();
    return new BowNumbers(maker.figures, maker.cautions);
  }

  /** Collects one group of numbers after the other. */
  private static final class Maker {
    private final BowRecord record;
    private final List<Figure> figures = new ArrayList<>();
    private final List<String> cautions = new ArrayList<>();
    private final OptionalDouble grains;
    private final OptionalDouble peak;
    private final Optional<ArrowNumbers> arrow;

    Maker(BowRecord record) {
      this.record = record;
      this.grains = above("arrow_mass", Unit.GRAIN);
      this.peak = above("peak_weight", Unit.POUND_FORCE);
      OptionalDouble speed = above("speed", Unit.FEET_PER_SECOND);
      this.arrow =
          grains.isPresent() && speed.isPresent()
              ? Optional.of(new ArrowNumbers(grains.getAsDouble(), speed.getAsDouble()))
              : Optional.empty();
    }

    private OptionalDouble above(String key, Unit unit) {
      OptionalDouble value = record.measured(key, unit);
      return value.orElse(0) > 0 ? value : OptionalDouble.empty();
    }

    private void add(String key, String label, double value, int decimals, String unit) {
      figures.add(new Figure(key, label, value, decimals, unit));
    }

    private void arrow(Optional<DrawCurve> curve) {
      arrow.ifPresent(
          a -> {
            add("kinetic_energy", "Kinetic energy", a.footPounds(), 1, FOOT_POUNDS);
            add("kinetic_energy_joules", "", a.joules(), 1, "J");
            add("momentum", "Momentum", a.poundSeconds(), 3, "lbf s");
            add("momentum_si", "", a.kilogramMetresPerSecond(), 2, "kg m/s");
          });
      curve.ifPresent(this::stored);
    }

    private void stored(DrawCurve curve) {
      double stored = curve.joules() / ArrowNumbers.JOULES_PER_FOOT_POUND;
      add("stored_energy", "Stored energy", stored, 1, FOOT_POUNDS);
      try {
        arrow.ifPresent(a -> add("efficiency", "Efficiency", curve.efficiencyPercent(a), 0, "%"));
      } catch (IllegalArgumentException e) {
        cautions.add(sentence(e));
      }
      againstTheCard(curve);
    }

    /** What was pulled and what stands on the card must be of one and the same bow. */
    private void againstTheCard(DrawCurve curve) {
      if (peak.isPresent() && Math.abs(curve.peakPounds() - peak.getAsDouble()) > PEAK_POUNDS) {
        cautions.add(
            String.format(
                Locale.ROOT,
                "The highest pull is %.1f lb, but the card's peak weight %.1f lb: measure again.",
                curve.peakPounds(),
                peak.getAsDouble()));
      }
      OptionalDouble draw = above("draw_length", Unit.MILLIMETRE);
      OptionalDouble brace = above("brace_height", Unit.MILLIMETRE);
      if (draw.isPresent() && brace.isPresent()) {
        double stroke =
            Unit.MILLIMETRE.convert(
                DrawLength.powerStrokeMm(draw.getAsDouble(), brace.getAsDouble()), Unit.INCH);
        if (Math.abs(curve.strokeInches() - stroke) > STROKE_INCHES) {
          cautions.add(
              String.format(
                  Locale.ROOT,
                  "The pulls end %.1f in from rest, but draw length and brace height make it %.1f in: measure again.",
                  curve.strokeInches(),
                  stroke));
        }
      }
    }

    private void weights() {
      if (grains.isPresent() && peak.isPresent()) {
        perPound(ArrowNumbers.grainsPerPound(grains.getAsDouble(), peak.getAsDouble()));
      }
      OptionalDouble holding = record.measured("holding_weight", Unit.POUND_FORCE);
      if (peak.isPresent() && holding.isPresent()) {
        try {
          double percent = LetOff.percent(peak.getAsDouble(), holding.getAsDouble());
          add("let_off", "Let-off", percent, 0, "%");
        } catch (IllegalArgumentException e) {
          cautions.add(sentence(e));
        }
      }
    }

    private void perPound(double perPound) {
      add("grains_per_pound", "Arrow for peak weight", perPound, 1, "gr/lb");
      if (perPound < ArrowNumbers.LEAST_GRAINS_PER_POUND) {
        cautions.add(
            "The arrow is lighter than 5 gr for each pound of peak weight, which is close to a dry"
                + " fire and can break the bow: do not shoot it unless the bow maker's manual"
                + " allows so light an arrow.");
      }
    }

    private void shaft() {
      OptionalDouble balance = record.measured("balance_point", Unit.MILLIMETRE);
      OptionalDouble length = above("arrow_length", Unit.MILLIMETRE);
      if (balance.isPresent() && length.isPresent()) {
        try {
          double percent =
              Balance.frontOfCentrePercent(balance.getAsDouble(), length.getAsDouble());
          add("front_of_centre", "Front of centre (ATA length)", percent, 1, "%");
        } catch (IllegalArgumentException e) {
          cautions.add(sentence(e));
        }
      }
      record
          .trait("arrow_spine")
          .filter(spine -> spine.value().orElse(0) > 0)
          .ifPresent(
              spine ->
                  add(
                      "older_spine",
                      "Spine by the older AMO method, if marked by ASTM",
                      Balance.olderSpine(spine.value().getAsDouble()),
                      0,
                      ""));
    }

    private void rated() {
      OptionalDouble draw = above("draw_length", Unit.MILLIMETRE);
      OptionalDouble brace = above("brace_height", Unit.MILLIMETRE);
      if (arrow.isEmpty() || peak.isEmpty() || draw.isEmpty() || brace.isEmpty()) {
        return;
      }
      try {
        RatedSpeed speed =
            RatedSpeed.of(arrow.get(), peak.getAsDouble(), draw.getAsDouble(), brace.getAsDouble());
        String label = "Speed at 70 lb, 30 in, 350 gr, from";
        add("rated_speed_low", label, speed.lowFeetPerSecond(), 0, "ft/s");
        add("rated_speed_high", "to", speed.highFeetPerSecond(), 0, "ft/s");
      } catch (IllegalArgumentException e) {
        cautions.add(sentence(e));
      }
    }

    private static String sentence(IllegalArgumentException e) {
      String words = e.getMessage();
      return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1) + ".";
    }
  }
}
