package sheaf.scanner.hole;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class RimOddsTest {

  @ParameterizedTest
  @EnumSource(Seeds.Kind.class)
  void everyKindOfOpeningHasWeightsThatAreNumbers(Seeds.Kind kind) {
    try (DrawnSurface sheet = new DrawnSurface().disc(200, 200, 30, 0.5)) {
      Closeup closeup = Closeup.of(sheet.surface(), Seeds.Kind.DARK, 200, 200, 120);
      RimProfile rim = RimProfile.around(closeup, 200, 200);

      for (float log : RimOdds.of(kind).where(rim, 20, 52)) {
        assertThat(log).isFinite();
      }
      assertThat(RimOdds.of(kind).off(0.1)).isFinite();
      assertThat(RimOdds.of(kind).whether(rim, 30, 0.1, 0.5)).isFinite();
    }
  }
}
