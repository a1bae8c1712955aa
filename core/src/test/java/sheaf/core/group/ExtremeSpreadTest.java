package sheaf.core.group;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import sheaf.core.Oracles;

class ExtremeSpreadTest {

  private static final int GROUPS = 100_000;

  /** Means from two independent simulations of millions of groups; see the README beside them. */
  @Test
  @Tag("slow")
  void isOnAverageWhatTheTableSaysForTwoToTenShots() {
    for (List<Double> row : Oracles.rows(getClass(), "extreme_spread.csv")) {
      int shots = row.get(0).intValue();
      if (shots > 10) {
        break;
      }
      Random random = new Random(shots);
      double sum = 0;
      for (int i = 0; i < GROUPS; i++) {
        sum += Shots.round(random, shots).extremeSpread();
      }
      assertThat(sum / GROUPS).as(shots + " shots").isCloseTo(row.get(1), within(0.01));
    }
  }
}
