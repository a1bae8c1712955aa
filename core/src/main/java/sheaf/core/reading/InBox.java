package sheaf.core.reading;

/** What one box for a digit shows. */
public sealed interface InBox {

  /** Nothing is written in it. */
  record Blank() implements InBox {}

  /**
   * A digit.
   *
   * @param digit 0 to 9
   * @param confidence share of such boxes in which it is the digit meant, 0 to 1
   */
  record Digit(int digit, double confidence) implements InBox {
    /** Throws when it is no digit. */
    public Digit {
      if (digit < 0 || digit > 9) {
        throw new IllegalArgumentException("a digit is 0 to 9, not " + digit);
      }
    }
  }

  /** Something that is no digit: struck out, a letter, half a digit, a smudge. */
  record Unclear() implements InBox {}
}
