package sheaf.desk.home;

import static org.assertj.core.api.Assertions.assertThat;

import java.security.SecureRandom;
import org.junit.jupiter.api.Test;
import sheaf.core.job.RecordKey;

class RecordAddressTest {

  @Test
  void linkIsTheAddressAndTheKey() {
    RecordKey key = RecordKey.random(new SecureRandom());
    assertThat(new RecordAddress("https://records.example/b/").link(key))
        .isEqualTo("https://records.example/b/" + key.text());
    assertThat(new RecordAddress("https://records.example/?r=").link(key))
        .isEqualTo("https://records.example/?r=" + key.text());
  }

  @Test
  void plainHttpCanBeReadOnTheWay() {
    assertThat(new RecordAddress("http://desk.example/b/").isOpen()).isTrue();
    assertThat(new RecordAddress("https://desk.example/b/").isOpen()).isFalse();
  }
}
