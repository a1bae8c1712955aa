package sheaf.samples;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import sheaf.core.job.SheetCode;

class MixTest {

  @Test
  void aSeedAlwaysGivesTheSameScan() {
    Sample once = FlatbedMix.make(28);
    Sample again = FlatbedMix.make(28);
    assertThat(again.file()).isEqualTo(once.file());
    assertThat(again.truth()).isEqualTo(once.truth());
  }

  @Test
  void anotherSeedGivesAnotherSheet() {
    Sample one = FlatbedMix.make(28);
    Sample other = FlatbedMix.make(45);
    assertThat(other.truth().code()).isNotEqualTo(one.truth().code());
    assertThat(SheetCode.parse(other.truth().code())).isPresent();
  }
}
