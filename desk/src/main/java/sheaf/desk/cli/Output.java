package sheaf.desk.cli;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import sheaf.desk.file.OutputFile;
import sheaf.desk.outcome.Trouble;

/** Writes a PDF to the file that a person named, or to standard output. */
final class Output {

  private static final Path STANDARD_OUTPUT = Path.of("-");

  private Output() {}

  /** What to call it in a sentence. */
  static String name(Path output) {
    return output.equals(STANDARD_OUTPUT) ? "standard output" : output.toString();
  }

  static void write(Console console, Path output, OutputFile.Content content) {
    if (!output.equals(STANDARD_OUTPUT)) {
      OutputFile.write(output, content);
      return;
    }
    try {
      content.writeTo(console.out());
    } catch (UncheckedIOException e) {
      throw Trouble.cannotWrite("Standard output", e.getCause());
    } catch (IOException e) {
      throw Trouble.cannotWrite("Standard output", e);
    }
    console.flush();
  }
}
