package sheaf.samples;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/** Where the measuring programs print. */
public final class Terminal {

  private Terminal() {}

  /** Standard output, in UTF-8 whatever the machine's own encoding. */
  public static PrintStream out() {
    return new PrintStream(new FileOutputStream(FileDescriptor.out), true, StandardCharsets.UTF_8);
  }
}
