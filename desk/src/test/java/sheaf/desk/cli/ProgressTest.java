package sheaf.desk.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import org.junit.jupiter.api.Test;

class ProgressTest {

  private final ByteArrayOutputStream shown = new ByteArrayOutputStream();
  private final HandClock clock = new HandClock();

  @Test
  void watcherSeesABarThatLeavesNothingBehind() {
    Progress progress = progress(true, 4);
    progress.show(1, 3);
    assertThat(shown()).isEqualTo("\r[#####...............] 1 of 4 files, 3 pages");
    progress.clear();
    assertThat(shown()).endsWith("\r" + " ".repeat(44) + "\r");
    progress.clear();
    assertThat(shown()).endsWith("pages\r" + " ".repeat(44) + "\r");
  }

  @Test
  void logHearsNothingOfAShortRun() {
    Progress progress = progress(false, 4);
    progress.show(1, 1);
    clock.now = clock.now.plusSeconds(19);
    progress.show(2, 2);
    progress.clear();
    assertThat(shown()).isEmpty();
  }

  @Test
  void logHearsNowAndThenOfALongRun() {
    Progress progress = progress(false, 1);
    clock.now = clock.now.plusSeconds(20);
    progress.show(0, 30);
    progress.show(0, 31);
    clock.now = clock.now.plusSeconds(20);
    progress.show(0, 60);
    assertThat(shown().lines())
        .containsExactly("Reading: 0 of 1 file, 30 pages", "Reading: 0 of 1 file, 60 pages");
  }

  private Progress progress(boolean watched, int files) {
    PrintStream err = new PrintStream(shown, true, StandardCharsets.UTF_8);
    return new Progress(new Console(err, err, watched, 80), clock, files);
  }

  private String shown() {
    return shown.toString(StandardCharsets.UTF_8);
  }

  /** A clock that is moved by hand. */
  private static final class HandClock extends Clock {

    private Instant now = Instant.parse("2026-09-14T16:30:00Z");

    @Override
    public Instant instant() {
      return now;
    }

    @Override
    public ZoneId getZone() {
      return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
      return this;
    }
  }
}
