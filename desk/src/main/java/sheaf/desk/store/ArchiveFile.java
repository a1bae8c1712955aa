package sheaf.desk.store;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.zip.ZipEntry;
import java.util.zip.ZipException;
import java.util.zip.ZipFile;
import sheaf.desk.outcome.Trouble;

/** An archive to be taken in: lines, and the files beside them where it is a ZIP file. */
final class ArchiveFile implements AutoCloseable {

  private final Path file;
  private final Optional<ZipFile> zip;

  private ArchiveFile(Path file, Optional<ZipFile> zip) {
    this.file = file;
    this.zip = zip;
  }

  /** Whether a file is an archive by its first bytes. */
  static boolean isArchive(Path file) {
    try (InputStream in = Files.newInputStream(file)) {
      String start = new String(in.readNBytes(64), StandardCharsets.ISO_8859_1);
      return start.startsWith("PK") || start.startsWith("{\"is\":\"" + Archive.FORMAT);
    } catch (IOException e) {
      return false;
    }
  }

  /**
   * Opens an archive.
   *
   * @throws Trouble when there is none or it is damaged
   */
  static ArchiveFile open(Path file) {
    try (InputStream in = Files.newInputStream(file)) {
      boolean zipped = in.read() == 'P';
      return new ArchiveFile(
          file, zipped ? Optional.of(new ZipFile(file.toFile())) : Optional.empty());
    } catch (NoSuchFileException e) {
      throw Trouble.misuse("There is no file " + file + ".");
    } catch (ZipException e) {
      throw Trouble.refused(file + " is damaged: its end is missing or was changed.");
    } catch (IOException e) {
      throw Trouble.cannotRead(file, e);
    }
  }

  /** The lines; the caller closes them. */
  BufferedReader lines() throws IOException {
    InputStream in = zip.isEmpty() ? Files.newInputStream(file) : entry(Archive.LINES);
    return new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8));
  }

  private InputStream entry(String name) throws IOException {
    ZipEntry entry = zip.orElseThrow().getEntry(name);
    if (entry == null) {
      throw Trouble.refused(file + " is no archive of a store: it has no " + name + " in it.");
    }
    return zip.get().getInputStream(entry);
  }

  /** A file's content; empty when the archive does not hold it. */
  Optional<byte[]> original(String digest) throws IOException {
    return content(Archive.ORIGINALS + digest);
  }

  /** The shop profile; empty when the archive does not hold it. */
  Optional<byte[]> profile() throws IOException {
    return content(Archive.PROFILE);
  }

  private Optional<byte[]> content(String name) throws IOException {
    if (zip.filter(beside -> beside.getEntry(name) != null).isEmpty()) {
      return Optional.empty();
    }
    try (InputStream in = entry(name)) {
      return Optional.of(in.readAllBytes());
    }
  }

  @Override
  public void close() throws IOException {
    if (zip.isPresent()) {
      zip.get().close();
    }
  }

  @Override
  public String toString() {
    return file.toString();
  }
}
