package sheaf.forms;

import java.util.Optional;

/**
 * Who prints: what papers and cards show of a shop. Each is empty where the shop says nothing.
 *
 * @param name one line of at most {@link #LONGEST_NAME} characters
 * @param contact how to reach it, one line of at most {@link #LONGEST_CONTACT} characters
 * @param logo its picture
 */
public record Shop(Optional<String> name, Optional<String> contact, Optional<Logo> logo) {

  /** The most characters: two lines of them stand beside a card's codes. */
  public static final int LONGEST_NAME = 60;

  /** The most characters: two lines of small print stand beside a card's codes. */
  public static final int LONGEST_CONTACT = 80;

  /** A shop that says nothing of itself. */
  public static final Shop NONE = new Shop(Optional.empty(), Optional.empty(), Optional.empty());

  /** Tidies both lines; throws when one of them is blank or too long. */
  public Shop {
    name = name.map(text -> line(text, LONGEST_NAME));
    contact = contact.map(text -> line(text, LONGEST_CONTACT));
  }

  /**
   * A shop of which only the name is told.
   *
   * @throws IllegalArgumentException when it is blank or too long
   */
  public static Shop named(String name) {
    return new Shop(Optional.of(name), Optional.empty(), Optional.empty());
  }

  /**
   * A text as one printed line: no control characters, one space between words.
   *
   * @param text as a person wrote it
   * @param longest the most characters it may have
   * @throws IllegalArgumentException when nothing is left or it is too long, in words that go
   *     behind what the text is called
   */
  public static String line(String text, int longest) {
    String line = text.replaceAll("[\\s\\p{Cntrl}]+", " ").strip();
    if (line.isEmpty() || line.codePointCount(0, line.length()) > longest) {
      throw new IllegalArgumentException("must have 1 to " + longest + " characters");
    }
    return line;
  }
}
