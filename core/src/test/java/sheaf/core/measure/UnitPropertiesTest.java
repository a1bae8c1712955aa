package sheaf.core.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

class UnitPropertiesTest {

  @Property(seed = "1", tries = 300)
  void everyUnitConvertsThereAndBack(
      @ForAll Unit from,
      @ForAll Unit to,
      @ForAll @DoubleRange(min = -1e6, max = 1e6) double value) {
    if (from.dimension() == to.dimension()) {
      double back = to.convert(from.convert(value, to), from);
      assertThat(back).isCloseTo(value, within(Math.abs(value) * 1e-15));
    }
  }

  @Property(seed = "2", tries = 300)
  void sixteenthsSurviveTheWayThroughMillimetres(@ForAll @IntRange(max = 2000) int sixteenths) {
    double mm = Unit.INCH.convert(sixteenths / 16.0, Unit.MILLIMETRE);
    assertThat(Unit.MILLIMETRE.convert(mm, Unit.INCH)).isEqualTo(sixteenths / 16.0);
  }

  @Property(seed = "3", tries = 300)
  void aLengthAndItsOppositeReadAlike(@ForAll @DoubleRange(min = 0.8, max = 1000) double mm) {
    assertThat(Inches.nearestSixteenth(-mm)).isEqualTo("-" + Inches.nearestSixteenth(mm));
    assertThat(Inches.decimal(-mm)).isEqualTo("-" + Inches.decimal(mm));
  }
}
