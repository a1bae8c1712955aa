package sheaf.core.group;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import sheaf.core.page.MmVector;

class EllipseTest {

  private static Ellipse upright(double x, double y, double a, double b) {
    return new Ellipse(new MmVector(x, y), a, b, 0);
  }

  @Nested
  class Reaches {

    // By hand. Centre (0, q) on the shorter axis: with s = sin t the squared distance is a² + q² +
    // 2 b q s - (a² - b²) s², greatest at s = b q/(a² - b²) where that is below 1. For (0, 3) that
    // is
    // 34.375, for (0, 0.5) it is 13/3.
    @ParameterizedTest(name = "centre ({0}, {1}), half axes {2}, {3}: from {4} to {5}")
    @CsvSource({
      "3, 4, 1, 1, 4, 6",
      "0, 0, 2, 1, 0, 2",
      "3, 0, 2, 1, 1, 5",
      "0, 3, 5, 1, 2, 5.863019699779287",
      "0, 0.5, 2, 1, 0, 2.0816659994661326",
      "0, -9, 2, 1, 8, 10",
      "-9, 0, 2, 1, 7, 11"
    })
    void areExactWhereGeometryIsEasy(
        double x, double y, double a, double b, double nearest, double farthest) {
      Ellipse ellipse = upright(x, y, a, b);
      assertThat(ellipse.nearestReach()).isCloseTo(nearest, within(1e-14));
      assertThat(ellipse.farthestReach()).isCloseTo(farthest, within(1e-14));
    }

    // Seen from the side, a needle of no width reaches from 7 to the hypotenuse of 7 and 3.
    @Test
    void areSureOfANeedle() {
      Ellipse needle = upright(0, 7, 3, 1e-12);
      assertThat(needle.nearestReach()).isCloseTo(7, within(1e-11));
      assertThat(needle.farthestReach()).isCloseTo(Math.sqrt(58), within(1e-11));
    }

    @Test
    void doNotDependOnWhichWayTheEllipseLies() {
      Ellipse upright = upright(3, 4, 5, 2);
      double turn = 0.7;
      MmVector centre =
          new MmVector(
              3 * Math.cos(turn) - 4 * Math.sin(turn), 3 * Math.sin(turn) + 4 * Math.cos(turn));
      Ellipse turned = new Ellipse(centre, 5, 2, turn);
      assertThat(turned.farthestReach()).isCloseTo(upright.farthestReach(), within(1e-13));
      assertThat(turned.nearestReach()).isCloseTo(upright.nearestReach(), within(1e-13));
    }
  }

  @Nested
  class Contents {

    private final Ellipse slanted = new Ellipse(new MmVector(10, 0), 5, 1, Math.PI / 4);

    @Test
    void includeTheCentreAndWhatLiesAlongTheLongerAxis() {
      assertThat(slanted.contains(new MmVector(10, 0))).isTrue();
      assertThat(slanted.contains(new MmVector(13, 3))).isTrue();
    }

    @Test
    void excludeAsMuchAcrossIt() {
      assertThat(slanted.contains(new MmVector(13, -3))).isFalse();
    }

    @Test
    void includeTheEdge() {
      assertThat(upright(0, 0, 2, 1).contains(new MmVector(2, 0))).isTrue();
      assertThat(upright(0, 0, 2, 1).contains(new MmVector(0, -1))).isTrue();
    }
  }

  @Nested
  class AnEllipse {

    @Test
    void needsItsAxesInOrder() {
      assertThatThrownBy(() -> upright(0, 0, 1, 2))
          .isInstanceOf(IllegalArgumentException.class)
          .hasMessageContaining("1.0, 2.0");
      assertThatThrownBy(() -> upright(0, 0, 1, 0)).isInstanceOf(IllegalArgumentException.class);
      assertThatThrownBy(() -> upright(0, 0, Double.POSITIVE_INFINITY, 1))
          .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void hasOneAngleForOneDirection() {
      MmVector zero = new MmVector(0, 0);
      assertThat(new Ellipse(zero, 2, 1, Math.PI / 2).angle()).isEqualTo(Math.PI / 2);
      assertThatThrownBy(() -> new Ellipse(zero, 2, 1, -Math.PI / 2))
          .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void needsAPlace() {
      assertThatThrownBy(() -> upright(Double.NaN, 0, 2, 1))
          .isInstanceOf(IllegalArgumentException.class);
    }
  }
}
