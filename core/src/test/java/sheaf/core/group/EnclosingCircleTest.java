package sheaf.core.group;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.apache.commons.math3.geometry.enclosing.EnclosingBall;
import org.apache.commons.math3.geometry.enclosing.WelzlEncloser;
import org.apache.commons.math3.geometry.euclidean.twod.DiskGenerator;
import org.apache.commons.math3.geometry.euclidean.twod.Euclidean2D;
import org.apache.commons.math3.geometry.euclidean.twod.Vector2D;
import sheaf.core.page.MmPoint;

class EnclosingCircleTest {

  /** On a coarse grid, so that many shots lie on one line, one circle or one another. */
  @Provide
  Arbitrary<Group> groups() {
    Arbitrary<Double> place = Arbitraries.integers().between(-5, 5).map(Integer::doubleValue);
    return Combinators.combine(place, place)
        .as(MmPoint::new)
        .list()
        .ofMinSize(1)
        .ofMaxSize(12)
        .map(Group::new);
  }

  /** Reference: WelzlEncloser of Apache Commons Math 3.6.1. */
  @Property(tries = 400)
  void isThatOfAnIndependentLibrary(@ForAll("groups") Group group) {
    List<Vector2D> places =
        group.shots().stream().map(shot -> new Vector2D(shot.x(), shot.y())).toList();
    EnclosingBall<Euclidean2D, Vector2D> expected =
        new WelzlEncloser<>(1e-10, new DiskGenerator()).enclose(places);
    EnclosingCircle circle = EnclosingCircle.of(group);
    assertThat(circle.radius()).isCloseTo(expected.getRadius(), within(1e-8));
    assertThat(circle.centre().x()).isCloseTo(expected.getCenter().getX(), within(1e-6));
    assertThat(circle.centre().y()).isCloseTo(expected.getCenter().getY(), within(1e-6));
  }

  @Property(tries = 400)
  void holdsAllShotsAndKeepsToJungsTheorem(@ForAll("groups") Group group) {
    EnclosingCircle circle = EnclosingCircle.of(group);
    assertThat(group.shots())
        .allSatisfy(
            shot ->
                assertThat(shot.distanceTo(circle.centre()))
                    .isLessThanOrEqualTo(circle.radius() + 1e-9));
    double spread = group.extremeSpread();
    assertThat(circle.radius()).isBetween(spread / 2 - 1e-9, spread / Math.sqrt(3) + 1e-9);
  }
}
