package sheaf.scanner.hole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class HeadingTest {

  @Test
  void aTrailHeadsFromItsFirstPlacesToItsLast() {
    Heading heading = trail(60, 0).heading(60).orElseThrow();

    assertThat(heading.angle()).isCloseTo(Math.atan2(1, 2), within(1e-9));
    assertThat(heading.axisAt(100, 50)).isGreaterThan(heading.axisAt(100, 53));
  }

  @Test
  void aTrailThatWandersALittleStillHeadsAtTheAxis() {
    Heading heading = trail(60, 2).heading(60).orElseThrow();

    assertThat(heading.axisAt(100, 50)).isGreaterThan(heading.axisAt(100, 60));
    assertThat(heading.axisAt(100, 50)).isGreaterThan(heading.axisAt(100, 40));
  }

  @Test
  void alongItsOwnLineEveryPlaceIsAsLikely() {
    Heading heading = new Heading(10, 20, Math.PI / 2);

    assertThat(heading.axisAt(10, -300)).isCloseTo(heading.axisAt(10, 20), within(1e-6));
  }

  @Test
  void aFewPlacesHeadNowhere() {
    assertThat(trail(60, 0).heading(5)).isEmpty();
  }

  /** From an axis at 100, 50 outward, two to the right for one down. */
  private static Trail trail(int places, double wander) {
    SplittableRandom random = new SplittableRandom(7);
    Trail trail = new Trail(places);
    for (int i = 20; i < 20 + places; i++) {
      double aside = wander == 0 ? 0 : random.nextDouble(-wander, wander);
      trail.add(100 + 2 * i - aside, 50 + i + 2 * aside);
    }
    return trail;
  }
}
