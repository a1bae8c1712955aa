package sheaf.scanner.tear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class TwoPlacesTest {

  private static TwoPlaces apart(double mm, double netSpread, double fitSpread) {
    EndMap.End net = new EndMap.End(10, 20, netSpread, 0.9, 0, 0, 0.1, 0.1);
    return new TwoPlaces(net, new TearFit.End(10 + mm, 20, fitSpread));
  }

  @Property
  void theMeanLiesBetweenBoth(
      @ForAll @DoubleRange(min = 0, max = 9) double mm,
      @ForAll @DoubleRange(min = 0.1, max = 3) double one,
      @ForAll @DoubleRange(min = 0.1, max = 3) double other) {
    TearFit.End mean = apart(mm, one, other).mean();
    assertThat(mean.x()).isBetween(10 - 1e-9, 10 + mm + 1e-9);
    assertThat(mean.y()).isEqualTo(20, within(1e-9));
  }

  @Test
  void theSurerOneCountsForMore() {
    assertThat(apart(2, 0.4, 2).mean().x()).isLessThan(11);
    assertThat(apart(2, 2, 0.4).mean().x()).isGreaterThan(11);
  }

  @Property
  void theFartherApartBothAreTheLessSureIsTheirMean(
      @ForAll @DoubleRange(min = 0, max = 5) double mm) {
    assertThat(apart(mm + 1, 0.5, 0.5).mean().spread())
        .isGreaterThan(apart(mm, 0.5, 0.5).mean().spread());
  }
}
