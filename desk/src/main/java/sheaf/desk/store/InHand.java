package sheaf.desk.store;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import sheaf.desk.outcome.Trouble;

/**
 * A scan that this process has in hand, by a lock on a file named after it. The system gives locks
 * back when their process dies, however it dies.
 */
final class InHand implements AutoCloseable {

  /** Locks keep processes apart; threads of one are kept apart by this. */
  private static final Set<Path> OURS = ConcurrentHashMap.newKeySet();

  private final Path file;
  private final Optional<FileChannel> channel;

  private InHand(Path file, Optional<FileChannel> channel) {
    this.file = file;
    this.channel = channel;
  }

  /** Takes a scan, unless somebody else has it. */
  static InHand take(Path folder, String digest) {
    Path file = folder.resolve(digest);
    if (!OURS.add(file)) {
      return new InHand(file, Optional.empty());
    }
    Optional<FileChannel> channel = Optional.empty();
    try {
      Files.createDirectories(folder);
      channel = locked(file);
    } catch (IOException e) {
      throw Trouble.cannotWrite(file, e);
    } finally {
      if (channel.isEmpty()) {
        OURS.remove(file);
      }
    }
    return new InHand(file, channel);
  }

  private static Optional<FileChannel> locked(Path file) throws IOException {
    FileChannel channel =
        FileChannel.open(file, StandardOpenOption.CREATE, StandardOpenOption.WRITE);
    try {
      FileLock lock = channel.tryLock();
      if (lock != null) {
        return Optional.of(channel);
      }
    } catch (IOException e) {
      channel.close();
      throw e;
    }
    channel.close();
    return Optional.empty();
  }

  boolean isTaken() {
    return channel.isPresent();
  }

  /**
   * Lets go. Whoever opened the file before it was removed, and locks it now, finds that the scan
   * waits no longer.
   */
  @Override
  public void close() {
    if (channel.isEmpty()) {
      return;
    }
    try {
      Files.deleteIfExists(file);
      channel.get().close();
    } catch (IOException e) {
      throw Trouble.cannotWrite(file, e);
    } finally {
      OURS.remove(file);
    }
  }
}
