package sheaf.core;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

class OraclesTest {

  private static final Set<String> OF_GROUPS =
      Set.of(
          "H1", "H2", "H3", "H4", "H5", "H6", "N1", "N4", "N5", "N6", "R1", "R2", "R3", "M1", "M2",
          "M3", "M4");
  private static final Set<String> OF_NUMBERS =
      Set.of("U1", "U2", "K1", "K2", "K3", "S1", "D1", "L1", "F1");
  private static final Set<String> OF_RESPONSES = Set.of("N2", "N3");
  private static final Set<String> OF_PICTURES = Set.of("G1");

  /** GroupOraclesTest, NumberOraclesTest, GaussianTest and this class hold them. */
  @Test
  void everyOneIsHeldBySomeTest() {
    Set<String> held = new TreeSet<>(OF_GROUPS);
    held.addAll(OF_NUMBERS);
    held.addAll(OF_RESPONSES);
    held.addAll(OF_PICTURES);
    assertThat(held).isEqualTo(Oracles.ids());
  }

  /**
   * Why pages are flattened before a hole's centre is fitted: the middle of the ellipse that a
   * tilted circle looks like is not where the circle's middle looks to be. No formula of ours is in
   * this; it holds the reference itself against the exact picture of two ends of a diameter.
   */
  @Test
  void aTiltedCirclesEllipseIsOffItsMiddleAsPublished() {
    double focal = 3000;
    double distance = 400;
    double radius = 10;
    double tilt = Math.toRadians(30);
    double near = radius * Math.cos(tilt) / (distance - radius * Math.sin(tilt));
    double far = -radius * Math.cos(tilt) / (distance + radius * Math.sin(tilt));
    double middleOfEllipse = focal * (near + far) / 2;
    assertThat(middleOfEllipse).isCloseTo(Oracles.expected("G1").doubleValue(), within(1e-9));
  }
}
