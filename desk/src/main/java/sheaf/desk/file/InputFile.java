package sheaf.desk.file;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import sheaf.desk.outcome.Trouble;

/** Takes in a file that a person named. */
public final class InputFile {

  /**
   * The largest file taken in, in bytes: 200 MB. A stack of a hundred colour scans at 300 dots an
   * inch is about half of that.
   */
  public static final long MOST_BYTES = 200_000_000;

  private InputFile() {}

  /**
   * The file's content; empty for an empty file.
   *
   * @throws Trouble a misuse when there is no such file, it is a folder, may not be read or is
   *     larger than {@link #MOST_BYTES}
   */
  public static byte[] content(Path file) {
    try {
      if (Files.isDirectory(file)) {
        throw Trouble.misuse(
            file + " is a folder: name the files in it, such as " + file.resolve("*.jpg") + ".");
      }
      return taken(file);
    } catch (NoSuchFileException e) {
      throw Trouble.misuse("There is no file " + file + ".");
    } catch (AccessDeniedException e) {
      throw Trouble.misuse(file + " may not be read: permission denied.");
    } catch (IOException e) {
      throw Trouble.cannotRead(file, e);
    }
  }

  private static byte[] taken(Path file) throws IOException {
    if (Files.size(file) > MOST_BYTES) {
      throw tooLarge(file);
    }
    // What is no regular file, such as a pipe, has no size before its end.
    try (InputStream in = Files.newInputStream(file)) {
      byte[] content =
          Files.isRegularFile(file) ? in.readAllBytes() : in.readNBytes((int) MOST_BYTES + 1);
      if (content.length > MOST_BYTES) {
        throw tooLarge(file);
      }
      return content;
    }
  }

  private static Trouble tooLarge(Path file) {
    return Trouble.misuse(
        "%s has more than the %d MB that are taken in at once: scan fewer pages to a file."
            .formatted(file, MOST_BYTES / 1_000_000));
  }
}
