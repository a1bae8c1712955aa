package sheaf.desk.cli;

/** Shows how far some work is, on a line that is written over, while a person watches. */
final class Counted {

  /** Often enough to see that it goes on, in milliseconds. */
  private static final long BETWEEN = 200;

  private final Console console;
  private long last;
  private int shown;

  Counted(Console console) {
    this.console = console;
  }

  void show(String text) {
    long now = System.nanoTime() / 1_000_000;
    if (console.watched() && (shown == 0 || now - last >= BETWEEN)) {
      last = now;
      console.err().print("\r" + text + " ".repeat(Math.max(0, shown - text.length())));
      console.err().flush();
      shown = text.length();
    }
  }

  void clear() {
    if (shown > 0) {
      console.err().print("\r" + " ".repeat(shown) + "\r");
      console.err().flush();
      shown = 0;
    }
  }
}
