package sheaf.desk.profile;

import java.nio.file.Path;

/**
 * Something in a profile that makes no sense.
 *
 * @param line where it stands, from 1
 * @param sentence what is wrong and what to do
 */
record Problem(int line, String sentence) {

  /** The sentence for a person, with its place. */
  String in(Path file) {
    return file + ", line " + line + ": " + sentence;
  }
}
