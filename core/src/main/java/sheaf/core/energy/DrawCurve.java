package sheaf.core.energy;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import sheaf.core.measure.Unit;

/**
 * A bow's pull at several draws, from brace height to full draw.
 *
 * <p>The energy that it stores is the area under the pull (ASTM F1832-07, section 3), here by
 * trapezoids between the pulls: with a pull every inch that is within about a percent.
 *
 * @param pulls at least two, by draw, no two at one draw
 */
public record DrawCurve(List<Pull> pulls) {

  /**
   * One pull.
   *
   * @param inches that the string has been drawn, from any fixed place
   * @param pounds on the scale, zero or more
   */
  public record Pull(double inches, double pounds) {
    /** Throws when the pull is negative or anything is not finite. */
    public Pull {
      if (!Double.isFinite(inches) || !(pounds >= 0) || !Double.isFinite(pounds)) {
        throw new IllegalArgumentException(
            "a pull must be finite and not negative: " + inches + ", " + pounds);
      }
    }
  }

  /** Sorts the pulls; throws when there are less than two, or two at one draw. */
  public DrawCurve {
    List<Pull> sorted = new ArrayList<>(pulls);
    sorted.sort(Comparator.comparingDouble(Pull::inches));
    if (sorted.stream().mapToDouble(Pull::inches).distinct().count() < Math.max(2, pulls.size())) {
      throw new IllegalArgumentException("a curve needs two pulls or more, one at each draw");
    }
    pulls = List.copyOf(sorted);
  }

  /** The energy stored from the first pull to the last, in joules. */
  public double joules() {
    double inchPounds = 0;
    for (int i = 1; i < pulls.size(); i++) {
      Pull from = pulls.get(i - 1);
      Pull to = pulls.get(i);
      inchPounds += (to.inches() - from.inches()) * (from.pounds() + to.pounds()) / 2;
    }
    return Unit.INCH.convert(1, Unit.METRE) * Unit.POUND_FORCE.convert(1, Unit.NEWTON) * inchPounds;
  }

  /** From the first pull to the last, in inches. */
  public double strokeInches() {
    return pulls.get(pulls.size() - 1).inches() - pulls.get(0).inches();
  }

  /** The highest pull, in pounds. */
  public double peakPounds() {
    return pulls.stream().mapToDouble(Pull::pounds).max().orElseThrow();
  }

  /**
   * How much of the stored energy the arrow carries away, in percent.
   *
   * @throws IllegalArgumentException when that is more than was stored, so that something was
   *     measured wrong
   */
  public double efficiencyPercent(ArrowNumbers arrow) {
    double percent = 100 * arrow.joules() / joules();
    if (percent > 100) {
      throw new IllegalArgumentException(
          "an arrow cannot carry %.0f %% of what the bow stores: check pulls, mass and speed"
              .formatted(percent));
    }
    return percent;
  }
}
