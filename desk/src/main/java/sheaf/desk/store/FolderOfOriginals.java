package sheaf.desk.store;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.UUID;
import sheaf.desk.outcome.Trouble;

/**
 * Keeps the files that were read in a folder of this computer or of a network.
 *
 * @param folder of all of them
 */
record FolderOfOriginals(Path folder) implements Originals {

  @Override
  public String kind() {
    return "folder";
  }

  /** Where the file with a digest is kept, two levels deep so that no folder grows too large. */
  Path place(String digest) {
    return folder
        .resolve(digest.substring(0, 2))
        .resolve(digest.substring(2, 4))
        .resolve(digest.substring(4));
  }

  @Override
  public InputStream open(String digest) throws IOException {
    return Files.newInputStream(place(digest));
  }

  /** All is done here: others need not wait for this disk. */
  @Override
  public void keepWithin(String digest, byte[] content) {}

  @Override
  public boolean isIntact(String digest) {
    try (InputStream in = open(digest)) {
      return Originals.digest(in, bytes -> {}).equals(digest);
    } catch (NoSuchFileException e) {
      return false;
    } catch (IOException e) {
      throw Trouble.cannotRead(place(digest), e);
    }
  }

  @Override
  public void restore(String digest, byte[] content) {
    put(digest, content);
  }

  @Override
  public void keepBefore(String digest, byte[] content) {
    Path place = place(digest);
    try {
      if (Files.exists(place) && Files.size(place) == content.length) {
        return;
      }
    } catch (IOException e) {
      throw Trouble.cannotRead(place, e);
    }
    put(digest, content);
  }

  private void put(String digest, byte[] content) {
    Path place = place(digest);
    try {
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
