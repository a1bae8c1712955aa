package sheaf.desk.store;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.UUID;
import sheaf.desk.outcome.Trouble;

/**
 * The files that were read, byte for byte, each under the SHA-256 digest of its content.
 *
 * @param folder of all of them
 */
record Originals(Path folder) {

  /** The digest of a file's content, in hexadecimal. */
  static String digest(byte[] content) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(content));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }

  /** Where the file with a digest is kept, two levels deep so that no folder grows too large. */
  Path place(String digest) {
    return folder
        .resolve(digest.substring(0, 2))
        .resolve(digest.substring(2, 4))
        .resolve(digest.substring(4));
  }

  /** Keeps a file; when this returns, it is safely on the disk under its digest. */
  void keep(String digest, byte[] content) {
    Path place = place(digest);
    try {
      if (Files.exists(place) && Files.size(place) == content.length) {
        return;
      }
      Files.createDirectories(place.getParent());
      Path partial = place.resolveSibling("." + UUID.randomUUID());
      try {
        write(partial, content);
        Files.move(partial, place, StandardCopyOption.ATOMIC_MOVE);
        force(place.getParent());
      } finally {
        Files.deleteIfExists(partial);
      }
    } catch (IOException e) {
      throw Trouble.cannotWrite(place, e);
    }
  }

  private static void write(Path file, byte[] content) throws IOException {
    try (FileChannel channel =
            FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
        OutputStream out = Channels.newOutputStream(channel)) {
      out.write(content);
      channel.force(true);
    }
  }

  /** Makes a renaming outlast a loss of power, on systems where a folder can be opened. */
  private static void force(Path folder) {
    try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
      channel.force(true);
    } catch (IOException e) {
      // Windows opens no folders; there the file system's own journal has to do.
      return;
    }
  }
}
