package sheaf.core.group;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.UnaryOperator;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.assertj.core.data.Percentage;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmVector;

class OffsetPropertiesTest {

  private static final double TOLERANCE_MM = 25.4;

  /** Shots read to a tenth of a millimetre. */
  @Provide
  Arbitrary<Group> groups() {
    Arbitrary<Double> place =
        Arbitraries.integers().between(-500, 500).map(tenths -> tenths / 10.0);
    return Combinators.combine(place, place)
        .as(MmPoint::new)
        .list()
        .ofMinSize(1)
        .ofMaxSize(6)
        .map(Group::new);
  }

  @Property(seed = "21", tries = 300)
  void mirroredShotsMirrorTheShiftAndNothingElse(
      @ForAll("groups") Group field, @ForAll("groups") Group broadhead) {
    UnaryOperator<MmPoint> mirror = shot -> new MmPoint(-shot.x(), shot.y());
    Group mirroredField = moved(field, mirror);
    Offset offset = Offset.between(field, broadhead);
    Offset mirrored = Offset.between(mirroredField, moved(broadhead, mirror));
    assertThat(mirrored.shift().dx()).isEqualTo(0.0 - offset.shift().dx());
    assertThat(mirrored.shift().dy()).isEqualTo(offset.shift().dy());
    assertThat(mirroredField.extremeSpread()).isEqualTo(field.extremeSpread());
    assertThat(mirroredField.meanRadius()).isEqualTo(field.meanRadius());
    assertThat(Equivalence.judge(mirrored, TOLERANCE_MM))
        .isEqualTo(Equivalence.judge(offset, TOLERANCE_MM));
    assertThat(mirrored.region().isPresent()).isEqualTo(offset.region().isPresent());
    offset
        .region()
        .ifPresent(
            region -> {
              Ellipse image = mirrored.region().orElseThrow();
              assertThat(image.semiMajor()).isEqualTo(region.semiMajor());
              assertThat(image.semiMinor()).isEqualTo(region.semiMinor());
              assertThat(Math.sin(image.angle() + region.angle())).isCloseTo(0, within(1e-12));
            });
  }

  @Property(seed = "22", tries = 300)
  void turnedShotsTurnTheShiftAndItsRegion(
      @ForAll("groups") Group field,
      @ForAll("groups") Group broadhead,
      @ForAll @DoubleRange(min = -3, max = 3) double turn) {
    UnaryOperator<MmPoint> turned = shot -> turned(shot, turn);
    Hotelling test = wellKnown(field, broadhead);
    Hotelling after =
        Hotelling.twoSample(moved(field, turned), moved(broadhead, turned)).orElseThrow();
    MmVector centre = test.region().centre();
    MmPoint expected = turned(new MmPoint(centre.dx(), centre.dy()), turn);
    assertThat(after.region().centre().dx()).isCloseTo(expected.x(), within(1e-10));
    assertThat(after.region().centre().dy()).isCloseTo(expected.y(), within(1e-10));
    assertSameShape(after, test, 1);
    double roundness = test.region().semiMinor() / test.region().semiMajor();
    if (roundness < 0.99) {
      double change = after.region().angle() - test.region().angle() - turn;
      assertThat(Math.sin(change)).isCloseTo(0, within(1e-9));
    }
  }

  @Property(seed = "23", tries = 300)
  void shotsOnALargerSheetHaveALargerRegionOfTheSameShape(
      @ForAll("groups") Group field,
      @ForAll("groups") Group broadhead,
      @ForAll @DoubleRange(min = 0.5, max = 50) double scale) {
    UnaryOperator<MmPoint> scaled = shot -> new MmPoint(shot.x() * scale, shot.y() * scale);
    Hotelling test = wellKnown(field, broadhead);
    Hotelling after =
        Hotelling.twoSample(moved(field, scaled), moved(broadhead, scaled)).orElseThrow();
    assertSameShape(after, test, scale);
  }

  @Property(seed = "24", tries = 300)
  void theRegionContainsZeroExactlyWhenTheTestDoesNotReject(
      @ForAll("groups") Group field, @ForAll("groups") Group broadhead) {
    Hotelling test = wellKnown(field, broadhead);
    assertThat(test.region().contains(new MmVector(0, 0))).isEqualTo(test.pValue() >= 0.05);
  }

  /** The test of two groups whose scatter is not so thin that rounding would show. */
  private static Hotelling wellKnown(Group field, Group broadhead) {
    Hotelling test = Hotelling.twoSample(field, broadhead).orElse(null);
    Assume.that(test != null);
    Assume.that(test.region().semiMinor() > 1e-2 * test.region().semiMajor());
    return test;
  }

  private static void assertSameShape(Hotelling after, Hotelling before, double scale) {
    Percentage close = Percentage.withPercentage(1e-7);
    assertThat(after.t2()).isCloseTo(before.t2(), close);
    assertThat(after.pValue()).isCloseTo(before.pValue(), close);
    assertThat(after.region().semiMajor()).isCloseTo(scale * before.region().semiMajor(), close);
    assertThat(after.region().semiMinor()).isCloseTo(scale * before.region().semiMinor(), close);
    assertThat(after.region().farthestReach())
        .isCloseTo(scale * before.region().farthestReach(), close);
  }

  private static Group moved(Group group, UnaryOperator<MmPoint> move) {
    return new Group(group.shots().stream().map(move).toList());
  }

  private static MmPoint turned(MmPoint p, double turn) {
    double cos = Math.cos(turn);
    double sin = Math.sin(turn);
    return new MmPoint(p.x() * cos - p.y() * sin, p.x() * sin + p.y() * cos);
  }
}
