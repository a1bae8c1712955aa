package sheaf.core.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class JobIdTest {

  @Property(seed = "1")
  void anIdReadOutAndTypedInIsTheSameId(@ForAll long seed) {
    JobId id = JobId.random(new SplittableRandom(seed));

    assertThat(JobId.parse(id.spoken())).contains(id);
    assertThat(JobId.parse(id.spoken().toLowerCase().replace('-', ' '))).contains(id);
  }

  @Property(seed = "1")
  void oneWrongSymbolIsAlwaysNoticed(
      @ForAll long seed, @ForAll @IntRange(min = 0, max = 9) int place, @ForAll char wrong) {
    String text = JobId.random(new SplittableRandom(seed)).text();
    int value = Crockford.value(wrong);
    if (value < 0 || value >= 32 || value == Crockford.value(text.charAt(place))) {
      return;
    }

    String typed = text.substring(0, place) + wrong + text.substring(place + 1);

    assertThat(JobId.parse(typed)).isEmpty();
  }

  @Property(seed = "1")
  void onlyDigitsAndLettersAreEverDrawn(@ForAll long seed) {
    assertThat(JobId.random(new SplittableRandom(seed)).text()).matches("[0-9A-Z]{11}");
  }

  @Test
  void theUsualMisreadingsAreForgiven() {
    JobId id = JobId.random(new SplittableRandom(7));
    String typed = id.text().replace('0', 'o').replace('1', 'l');

    assertThat(JobId.parse(typed)).contains(id);
  }

  @Test
  void theCheckSymbolIsTheNumberModulo37() {
    // Crockford, "Base 32": the check symbol is the number modulo 37 in the extended alphabet.
    assertThat(Crockford.checkSymbol(36)).isEqualTo('U');
    assertThat(Crockford.checkSymbol(32)).isEqualTo('*');
    assertThat(Crockford.checkSymbol(1234)).isEqualTo('D');
  }

  @Test
  void whatIsNoIdIsRefusedAndNamed() {
    assertThat(JobId.parse("")).isEmpty();
    assertThat(JobId.parse("7G4KQ2M8XD")).isEmpty();
    assertThatThrownBy(() -> new JobId("nonsense")).hasMessageContaining("nonsense");
  }
}
