package sheaf.core.group;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class CentreTest {

  @Test
  void hasTheMarginOfAMean() {
    // By hand: 1, 2, 3 have s = 1; t for two degrees of freedom is 4.302653 (NIST/SEMATECH table).
    Centre centre = Centre.of(Shots.at(1, 10, 2, 10, 3, 10));

    assertThat(centre.right().value()).isEqualTo(2);
    assertThat(centre.right().margin().orElseThrow())
        .isCloseTo(4.302652729911 / Math.sqrt(3), within(1e-9));
    assertThat(centre.down()).isEqualTo(new Estimate(10, OptionalDouble.of(0)));
  }

  @Test
  void ofOneShotHasNoMargin() {
    assertThat(Centre.of(Shots.at(3, 4)).right().margin()).isEmpty();
  }
}
