package sheaf.core.group;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;
import sheaf.core.page.MmVector;

class CovarianceTest {

  @Nested
  class TheLongerAxis {

    @Test
    void ofATallScatterPointsStraightDownNeverStraightUp() {
      assertThat(new Covariance(1, 0.0, 4).angle()).isEqualTo(Math.PI / 2);
      assertThat(new Covariance(1, -0.0, 4).angle()).isEqualTo(Math.PI / 2);
    }

    @Test
    void ofAScatterThatFallsToTheRightHasAPositiveAngle() {
      assertThat(new Covariance(2, 1, 2).angle()).isEqualTo(Math.PI / 4);
    }
  }

  // Three Fibonacci numbers in a row: the outer product less the middle square is 1 (Cassini's
  // identity), sixteen digits below either.
  @Test
  void theDeterminantOfALongThinScatterKeepsItsDigits() {
    assertThat(new Covariance(165580141, 102334155, 63245986).determinant()).isEqualTo(1);
  }

  @Test
  void roundingNeverMakesTheSmallerAxisOfACircleTheLargerOne() {
    MmVector centre = new MmVector(0, 0);
    IntStream.rangeClosed(1, 1000)
        .mapToObj(i -> new Covariance(i / 10.0, 0, i / 10.0))
        .forEach(circle -> assertThat(circle.ellipse(centre, 1).semiMajor()).isPositive());
  }
}
