package sheaf.desk.cli;

import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import sheaf.desk.outcome.Trouble;

/**
 * Where a command writes.
 *
 * @param out results
 * @param err progress, and sentences about what went wrong
 * @param watched whether a person sees {@code err} as it is written
 * @param columns of the terminal
 */
public record Console(PrintStream out, PrintStream err, boolean watched, int columns) {

  private static final int USUAL_COLUMNS = 80;

  /** Narrower terminals, and those that know no width and say 0, get the usual one. */
  private static final int NARROWEST = 60;

  /** Longer lines are hard to read. */
  private static final int WIDEST = 120;

  /** Keeps the columns within what the tables can use. */
  public Console {
    columns = columns < NARROWEST ? USUAL_COLUMNS : Math.min(columns, WIDEST);
  }

  /**
   * The streams of this process. Java cannot tell whether standard error is a terminal, nor how
   * wide; the start script can and says so in {@code sheaf.watched} and {@code sheaf.columns}.
   */
  static Console ofProcess() {
    return new Console(
        System.out,
        System.err,
        Boolean.getBoolean("sheaf.watched"),
        Integer.getInteger("sheaf.columns", USUAL_COLUMNS));
  }

  /** Writes a line for programs, which is in UTF-8 whatever a person's terminal speaks. */
  void json(String line) {
    utf8(line + "\n");
  }

  /** Writes a text for programs, whose lines have their ends already. */
  void utf8(String text) {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    out.write(bytes, 0, bytes.length);
    out.flush();
  }

  /** Says a sentence beside the results. */
  void say(String sentence) {
    err.println(sentence);
  }

  /**
   * Makes sure that all results have arrived.
   *
   * @throws Trouble when they have not, as with a full disk or a closed pipe
   */
  void flush() {
    if (out.checkError()) {
      throw Trouble.environment("The results could not be written to standard output.");
    }
  }
}
