package sheaf.desk.watch;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;

/**
 * How a file looked from outside: when this has not changed, nor has the file.
 *
 * @param bytes its size
 * @param changed when it was written last
 */
record Stamp(long bytes, FileTime changed) {

  /** Looks at a file. */
  static Stamp of(Path file) throws IOException {
    BasicFileAttributes now =
        Files.readAttributes(file, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
    return new Stamp(now.size(), now.lastModifiedTime());
  }
}
