package sheaf.desk.cli;

import java.io.PrintStream;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import sheaf.desk.report.Text;

/**
 * Shows how far a command is: a bar for a person who watches, now and then a line for a log.
 *
 * <p>The bar is drawn over itself, so it must be cleared before anything else is written.
 */
final class Progress {

  /** A log gets a line only when this has passed since the last. */
  private static final Duration QUIET = Duration.ofSeconds(20);

  private static final int BAR = 20;

  private final Console console;
  private final Clock clock;
  private final int files;
  private Instant last;
  private int drawn;

  Progress(Console console, Clock clock, int files) {
    this.console = console;
    this.clock = clock;
    this.files = files;
    this.last = clock.instant();
  }

  /**
   * Shows the state.
   *
   * @param done files that are finished
   * @param pages that were read so far
   */
  void show(int done, int pages) {
    String state =
        "%d of %s, %s".formatted(done, Text.count(files, "file"), Text.count(pages, "page"));
    if (console.watched()) {
      int full = BAR * done / Math.max(1, files);
      draw("[" + "#".repeat(full) + ".".repeat(BAR - full) + "] " + state);
    } else if (Duration.between(last, clock.instant()).compareTo(QUIET) >= 0) {
      last = clock.instant();
      console.say("Reading: " + state);
    }
  }

  /** Takes the bar away. */
  void clear() {
    if (drawn > 0) {
      PrintStream err = console.err();
      err.print("\r" + " ".repeat(drawn) + "\r");
      err.flush();
      drawn = 0;
    }
  }

  private void draw(String line) {
    PrintStream err = console.err();
    err.print("\r" + line + " ".repeat(Math.max(0, drawn - line.length())));
    err.flush();
    drawn = line.length();
  }
}
