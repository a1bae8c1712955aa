package sheaf.samples.scan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;

class StreakTest {

  @Property(tries = 100)
  void noLightIsLostAndTheMiddleStaysWhereItIs(
      @ForAll @DoubleRange(min = -4, max = 4) double dx,
      @ForAll @DoubleRange(min = -4, max = 4) double dy) {
    Streak streak = Streak.of(dx, dy);
    double sum = 0;
    double x = 0;
    double y = 0;
    for (int row = -streak.reach(); row <= streak.reach(); row++) {
      for (int column = -streak.reach(); column <= streak.reach(); column++) {
        sum += streak.share(column, row);
        x += column * streak.share(column, row);
        y += row * streak.share(column, row);
      }
    }

    assertThat(sum).isCloseTo(1, within(1e-5));
    assertThat(x).isCloseTo(0, within(1e-5));
    assertThat(y).isCloseTo(0, within(1e-5));
  }
}
