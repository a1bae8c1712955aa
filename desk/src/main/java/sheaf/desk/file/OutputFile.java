package sheaf.desk.file;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.UUID;
import sheaf.desk.outcome.Trouble;

/** Writes a file whole or not at all: under another name beside it first, then renamed. */
public final class OutputFile {

  /** What goes into the file. */
  @FunctionalInterface
  public interface Content {
    /** Writes all of it; the stream is closed by the caller. */
    void writeTo(OutputStream out) throws IOException;
  }

  private OutputFile() {}

  /**
   * Writes a file, in place of an older one of that name.
   *
   * @throws Trouble when it cannot be written; an older file is then as it was
   */
  public static void write(Path file, Content content) {
    if (Files.isDirectory(file)) {
      throw Trouble.environment(file + " is a folder: name a file in it.");
    }
    try {
      if (Files.exists(file) && !Files.isRegularFile(file)) {
        writeInto(file, content, StandardOpenOption.WRITE);
      } else {
        writeBeside(Files.exists(file) ? file.toRealPath() : file.toAbsolutePath(), content);
      }
    } catch (UncheckedIOException e) {
      throw Trouble.cannotWrite(file, e.getCause());
    } catch (IOException e) {
      throw Trouble.cannotWrite(file, e);
    }
  }

  private static void writeBeside(Path file, Content content) throws IOException {
    Path partial = file.resolveSibling("." + file.getFileName() + "." + UUID.randomUUID());
    partial.toFile().deleteOnExit(); // for a command that is broken off by the keyboard
    try {
      writeInto(partial, content, StandardOpenOption.CREATE_NEW);
      Files.move(partial, file, StandardCopyOption.ATOMIC_MOVE);
    } finally {
      Files.deleteIfExists(partial);
    }
  }

  private static void writeInto(Path file, Content content, StandardOpenOption how)
      throws IOException {
    try (FileChannel channel = FileChannel.open(file, StandardOpenOption.WRITE, how);
        OutputStream out = new BufferedOutputStream(Channels.newOutputStream(channel))) {
      content.writeTo(out);
      out.flush();
      if (how == StandardOpenOption.CREATE_NEW) {
        channel.force(true);
      }
    }
  }

  /**
   * Makes a folder unless it is there.
   *
   * @throws Trouble when it cannot be made
   */
  public static Path folder(Path folder) {
    try {
      return Files.createDirectories(folder);
    } catch (IOException e) {
      throw Trouble.cannotWrite(folder, e);
    }
  }
}
