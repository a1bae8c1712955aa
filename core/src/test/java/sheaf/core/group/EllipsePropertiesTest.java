package sheaf.core.group;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import sheaf.core.page.MmVector;

class EllipsePropertiesTest {

  private static final int STEPS = 3600;

  @Provide
  Arbitrary<Ellipse> ellipses() {
    Arbitrary<Double> place = Arbitraries.doubles().between(-200, 200);
    Arbitrary<Double> axis = Arbitraries.doubles().between(0.01, 300);
    Arbitrary<Double> angle = Arbitraries.doubles().between(-1.57, 1.57);
    return Combinators.combine(place, place, axis, axis, angle)
        .as(
            (x, y, a, b, turn) ->
                new Ellipse(new MmVector(x, y), Math.max(a, b), Math.min(a, b), turn));
  }

  @Property(seed = "11", tries = 300)
  void noPlaceOnTheEdgeIsOutOfReach(@ForAll("ellipses") Ellipse ellipse) {
    double[] distances = edge(ellipse);
    double step = 2 * Math.PI / STEPS;
    double missed = (ellipse.centre().length() + ellipse.semiMajor()) * step;
    double farthest = IntStream.range(0, STEPS).mapToDouble(i -> distances[i]).max().orElseThrow();
    assertThat(ellipse.farthestReach()).isBetween(farthest - 1e-10, farthest + missed * step);
    if (ellipse.nearestReach() > 0) {
      double nearest = IntStream.range(0, STEPS).mapToDouble(i -> distances[i]).min().orElseThrow();
      assertThat(ellipse.nearestReach()).isBetween(nearest - missed, nearest + 1e-10);
    }
  }

  @Property(seed = "12", tries = 300)
  void zeroIsInsideExactlyWhenTheNearestReachIsZero(@ForAll("ellipses") Ellipse ellipse) {
    assertThat(ellipse.nearestReach() == 0).isEqualTo(ellipse.contains(new MmVector(0, 0)));
  }

  @Property(seed = "13", tries = 300)
  void theReachesLieBetweenWhatTheAxesAllow(@ForAll("ellipses") Ellipse ellipse) {
    double centre = ellipse.centre().length();
    assertThat(ellipse.farthestReach())
        .isBetween(
            Math.hypot(centre, ellipse.semiMinor()) - 1e-10, centre + ellipse.semiMajor() + 1e-10);
    assertThat(ellipse.nearestReach())
        .isBetween(
            Math.max(0, centre - ellipse.semiMajor()) - 1e-10,
            Math.max(0, centre - ellipse.semiMinor()) + 1e-10);
  }

  @Property(seed = "14", tries = 300)
  void turningAllAroundZeroKeepsTheReaches(@ForAll("ellipses") Ellipse ellipse) {
    Ellipse opposite =
        new Ellipse(
            ellipse.centre().times(-1), ellipse.semiMajor(), ellipse.semiMinor(), ellipse.angle());
    assertThat(opposite.farthestReach()).isCloseTo(ellipse.farthestReach(), within(1e-10));
    assertThat(opposite.nearestReach()).isCloseTo(ellipse.nearestReach(), within(1e-10));
  }

  private static double[] edge(Ellipse e) {
    return IntStream.range(0, STEPS)
        .mapToDouble(
            i -> {
              double along = e.semiMajor() * Math.cos(2 * Math.PI * i / STEPS);
              double across = e.semiMinor() * Math.sin(2 * Math.PI * i / STEPS);
              double cos = Math.cos(e.angle());
              double sin = Math.sin(e.angle());
              return Math.hypot(
                  e.centre().dx() + along * cos - across * sin,
                  e.centre().dy() + along * sin + across * cos);
            })
        .toArray();
  }
}
