package sheaf.samples;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/** Where the measuring programs print. */
final class Terminal {

  private Terminal() {}

  /** Standard output, in UTF-8 whatever the machine's own encoding. */
  static PrintStream out() {
    return new PrintStream(new FileOutputStream(FileDescriptor.out), true, StandardCharsets.UTF_8);
  }
}
