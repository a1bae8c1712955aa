package sheaf.core.job;

import static org.assertj.core.api.Assertions.assertThat;

import java.security.SecureRandom;
import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.Test;

class RecordKeyTest {

  @Test
  void aKeyCarriesAtLeast128BitsAndNeverRepeats() {
    Set<String> seen = new HashSet<>();
    SecureRandom random = new SecureRandom();
    for (int i = 0; i < 10_000; i++) {
      String key = RecordKey.random(random).text();
      // Five bits a symbol of base 32. W3C "Good Practices for Capability URLs" asks for 120.
      assertThat(key.length() * 5).isGreaterThanOrEqualTo(128);
      assertThat(seen.add(key)).isTrue();
    }
  }

  @Test
  void aKeyNeverShowsItselfInALog() {
    RecordKey key = RecordKey.random(new SecureRandom());

    assertThat(key.toString()).doesNotContain(key.text());
  }
}
