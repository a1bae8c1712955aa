package sheaf.desk.web.http;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.concurrent.atomic.AtomicLong;
import org.junit.jupiter.api.Test;

class PatientStreamTest {

  private static final long SECOND = 1_000_000_000L;

  private final AtomicLong now = new AtomicLong();

  @Test
  void whoeverTricklesIsRefused() {
    PatientStream slow = stream();

    assertThatThrownBy(
            () -> {
              while (slow.read() >= 0) {
                now.addAndGet(SECOND);
              }
            })
        .isInstanceOfSatisfying(
            Refusal.class, refusal -> assertThat(refusal.status()).isEqualTo(408));
    assertThat(now.get()).isLessThan(13 * SECOND);
  }

  @Test
  void slowWirelessNetworkIsFastEnough() throws IOException {
    PatientStream stream = stream();
    byte[] second = new byte[20_000];
    int some = 0;
    while (some >= 0) {
      some = stream.read(second);
      now.addAndGet(SECOND);
    }
    assertThat(now.get()).isGreaterThan(20 * SECOND);
  }

  private PatientStream stream() {
    return new PatientStream(new ByteArrayInputStream(new byte[500_000]), now::get);
  }
}
