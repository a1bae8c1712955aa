package sheaf.samples.tear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import sheaf.core.page.MmPoint;

class FurrowTest {

  @Property(tries = 200)
  void aFurrowLeadsFromThePointStraightToTheTail(
      @ForAll long seed,
      @ForAll @DoubleRange(min = 1, max = 60) double length,
      @ForAll @DoubleRange(min = -3, max = 3) double angle) {
    Furrow furrow = Furrow.draw(angle, length, 3, new SplittableRandom(seed));

    MmPoint begin = furrow.place(0, furrow.middle()[0]);
    MmPoint end = furrow.place(furrow.steps(), furrow.middle()[furrow.steps()]);
    assertThat(Math.hypot(begin.x(), begin.y())).isEqualTo(0, within(1e-9));
    assertThat(end.x()).isEqualTo(length * Math.cos(angle), within(1e-9));
    assertThat(end.y()).isEqualTo(length * Math.sin(angle), within(1e-9));
  }

  @Property(tries = 200)
  void itsSidesFoldAboutWhereTheShaftPassed(
      @ForAll long seed, @ForAll @DoubleRange(min = 2.4, max = 4.7) double radius) {
    Furrow furrow = Furrow.draw(0, 30, radius, new SplittableRandom(seed));

    for (Furrow.Side side : furrow.sides()) {
      for (int i = 0; i <= furrow.steps(); i++) {
        assertThat(side.fold()[i]).isBetween(0.65 * radius, 1.35 * radius);
        assertThat(side.edge()[i]).isLessThan(1.35 * radius + 1);
      }
    }
  }
}
