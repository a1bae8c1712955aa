package sheaf.samples;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import sheaf.scanner.picture.UnreadableException;

/** Photos of curled, tilted, rippled sheets come out flat. */
@Tag("slow")
class FlatnessTest {

  /** 103 and 104 are tilted by 39 degrees, 108 and 116 rippled, 102 has a folded corner. */
  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {102, 103, 104, 108, 116})
  void placesOfTheTargetAreFoundToAThirdOfAMillimetreOnTheAverage(long seed)
      throws UnreadableException {
    PhotoMix.Shoot shoot = PhotoMix.draw(seed);

    Flatness.Off off = Flatness.of(shoot, shoot.take().file());

    assertThat(off.rms()).isLessThan(0.33);
    assertThat(off.linesWithin()).isPresent();
  }
}
