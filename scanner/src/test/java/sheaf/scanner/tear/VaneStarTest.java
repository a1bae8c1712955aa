package sheaf.scanner.tear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import sheaf.scanner.hole.Slit;

class VaneStarTest {

  private static final double RADIUS = 3;

  /** Slits at even angles that end so many millimetres from the axis. */
  private static List<Slit> slits(int vanes, double turn, double end) {
    return IntStream.range(0, vanes)
        .mapToObj(i -> new Slit(turn + 2 * Math.PI * i / vanes, 10 * end, 1))
        .toList();
  }

  private static VaneStar star(List<Slit> lines, double way) {
    return VaneStar.of(lines, way, 20, RADIUS);
  }

  @Test
  void threeEvenSlitsAreThreeVanesAndFourAreFour() {
    assertThat(star(slits(3, 0.3, 11), 3).vanes()).isEqualTo(3);
    assertThat(star(slits(4, 0.3, 11), 3).vanes()).isEqualTo(4);
  }

  @Property
  void aTurnedTearHasTheSameStar(@ForAll @DoubleRange(min = -6, max = 6) double turn) {
    VaneStar straight = star(slits(3, 0.3, 11), 2);
    VaneStar turned = star(slits(3, 0.3 + turn, 11), 2 + turn);
    assertThat(turned.quality()).isEqualTo(straight.quality(), within(1e-6));
    assertThat(turned.vanes()).isEqualTo(3);
  }

  @Property
  void aMirroredTearHasTheSameStar(@ForAll @DoubleRange(min = -3, max = 3) double turn) {
    VaneStar star = star(slits(4, turn, 12), 1);
    List<Slit> mirrored =
        slits(4, turn, 12).stream()
            .map(slit -> new Slit(-slit.angle(), slit.length(), slit.strength()))
            .toList();
    assertThat(star(mirrored, -1).quality()).isEqualTo(star.quality(), within(1e-6));
  }

  @Test
  void theShortTearsOfAPointAreNoStar() {
    assertThat(star(slits(3, 0.3, RADIUS + 2), 3).quality()).isNotPositive();
  }

  @Test
  void aSlitThatTheTearItselfHidesIsNotMissed() {
    List<Slit> two = slits(3, 0, 11).subList(1, 3);
    double hidden = star(two, 0).quality();
    double missing = star(two, Math.PI).quality();
    assertThat(hidden).isEqualTo(16, within(1e-6));
    assertThat(missing).isEqualTo(12, within(1e-6));
  }

  @Test
  void aStarThatFitsOneNumberOnlySpeaksForIt() {
    assertThat(star(slits(3, 0, 11), Math.PI).forThree()).isPositive();
    assertThat(star(slits(4, 0, 11), 2.4).forThree()).isNegative();
  }
}
