package sheaf.desk.profile;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import sheaf.desk.file.InputFile;
import sheaf.desk.outcome.Trouble;

/** Reads and checks a shop profile. */
public final class ProfileFile {

  /** A profile with every comment has a tenth of it, in bytes; more is some other file. */
  private static final int MOST_BYTES = 50_000;

  /** Some editors put it at the beginning of a file. */
  private static final String BYTE_ORDER_MARK = "\uFEFF";

  private ProfileFile() {}

  /**
   * Reads a profile; what it leaves out has its usual value.
   *
   * @throws Trouble a misuse with a sentence for each thing that is wrong, one a line, each with
   *     the number of its line in the file
   */
  public static ShopProfile read(Path file) {
    TomlText text = TomlText.of(text(file));
    ProfileReader reader = new ProfileReader(text, file.toAbsolutePath().getParent());
    ShopProfile profile = reader.profile();
    List<Problem> problems = reader.problems();
    if (!problems.isEmpty()) {
      throw Trouble.misuse(
          problems.stream().map(problem -> problem.in(file)).collect(Collectors.joining("\n")));
    }
    return profile;
  }

  private static String text(Path file) {
    byte[] content = InputFile.content(file);
    if (content.length > MOST_BYTES) {
      throw Trouble.misuse(
          file + " is too large for a shop profile: more than " + MOST_BYTES / 1000 + " kB.");
    }
    try {
      String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(content)).toString();
      return text.startsWith(BYTE_ORDER_MARK) ? text.substring(1) : text;
    } catch (CharacterCodingException e) {
      throw Trouble.misuse(file + " must be saved as UTF-8 text.");
    }
  }
}
