package sheaf.core.record;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;
import sheaf.core.measure.Distance;
import sheaf.core.measure.Unit;

class LineFitTest {

  @Property
  void theFitIsThatOfAnIndependentLibrary(
      @ForAll @Size(min = 3, max = 9) List<@DoubleRange(min = 1, max = 80) Double> metres,
      @ForAll @Size(value = 9) List<@DoubleRange(min = -200, max = 200) Double> right) {
    // Reference: SimpleRegression of Apache Commons Math 3.6.1.
    SimpleRegression reference = new SimpleRegression();
    List<LineShot> shots = new ArrayList<>();
    for (int i = 0; i < metres.size(); i++) {
      double whole = Math.round(metres.get(i)) + i;
      shots.add(new LineShot(new Distance(whole, Unit.METRE), right.get(i)));
      reference.addData(whole, right.get(i));
    }
    LineFit.of(shots)
        .ifPresent(
            fit -> {
              assertThat(fit.mmPerMetre()).isEqualTo(reference.getSlope(), within(1e-6));
              assertThat(fit.mmAtZero()).isEqualTo(reference.getIntercept(), within(1e-4));
            });
  }

  @Test
  void aStraightDriftIsFoundInAnyUnit() {
    // By hand: 2 mm right at 10 yd and 4 mm at 20 yd is 2 mm for 9.144 m, through zero.
    LineFit fit = LineFit.of(List.of(shot(10, 2), shot(20, 4))).orElseThrow();

    assertThat(fit.mmPerMetre()).isEqualTo(2 / 9.144, within(1e-12));
    assertThat(fit.mmAtZero()).isEqualTo(0, within(1e-12));
    assertThat(fit.at(9.144)).isEqualTo(2, within(1e-12));
  }

  @Test
  void shotsFromOneDistanceTellNoDrift() {
    assertThat(LineFit.of(List.of(shot(20, 1), shot(20, 3)))).isEmpty();
    assertThat(LineFit.of(List.of())).isEmpty();
  }

  private static LineShot shot(double yards, double rightMm) {
    return new LineShot(new Distance(yards, Unit.YARD), rightMm);
  }
}
