package sheaf.desk.web.http;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.fileupload.FileItemIterator;
import org.apache.commons.fileupload.FileItemStream;
import org.apache.commons.fileupload.FileUpload;
import org.apache.commons.fileupload.FileUploadBase.FileSizeLimitExceededException;
import org.apache.commons.fileupload.FileUploadBase.FileUploadIOException;
import org.apache.commons.fileupload.FileUploadBase.SizeLimitExceededException;
import org.apache.commons.fileupload.FileUploadException;
import org.apache.commons.fileupload.UploadContext;
import org.apache.commons.fileupload.util.Streams;

/**
 * Files that somebody sent, on the disk under names of our own, so that neither their size nor
 * their names can do harm. Closing removes them.
 */
public final class Uploads implements AutoCloseable {

  /** The largest file, in bytes: a stack of twenty colour scans, or any photo. */
  public static final long LARGEST_FILE = 60_000_000;

  private static final long LARGEST_ALL = 200_000_000;
  private static final int MOST_FILES = 50;
  private static final int LONGEST_FIELD = 4096;
  private static final int LONGEST_NAME = 100;

  private final Path folder;
  private final List<Uploaded> files = new ArrayList<>();

  /**
   * A file that was sent.
   *
   * @param name that its sender gave it, made harmless: only to be shown
   * @param content where it lies
   */
  public record Uploaded(String name, Path content) {}

  private Uploads(Path folder) {
    this.folder = folder;
  }

  /**
   * Takes in a form with files.
   *
   * @param temporary folder in which a folder for them is made
   * @param token that a field of this name must have before any file is taken
   */
  public static Uploads of(Request request, Path temporary, Token token) {
    if (request.length() > LARGEST_ALL) {
      throw tooLarge();
    }
    try {
      Uploads uploads = new Uploads(Files.createTempDirectory(temporary, "upload"));
      try {
        uploads.take(request, token);
        return uploads;
      } catch (IOException | FileUploadException | RuntimeException e) {
        uploads.close();
        throw refusal(e);
      }
    } catch (IOException e) {
      throw new Refusal(507, "The desk has no room for the picture: " + e.getMessage());
    }
  }

  private void take(Request request, Token token) throws IOException, FileUploadException {
    FileUpload upload = new FileUpload();
    upload.setSizeMax(LARGEST_ALL);
    upload.setFileSizeMax(LARGEST_FILE);
    upload.setFileCountMax(MOST_FILES);
    boolean trusted = request.header(Token.HEADER).filter(token::is).isPresent();
    FileItemIterator items = upload.getItemIterator(new Context(request));
    while (items.hasNext()) {
      FileItemStream item = items.next();
      if (item.isFormField()) {
        trusted |= item.getFieldName().equals(Token.FIELD) && token.is(text(item));
      } else if (!trusted) {
        throw Token.refusal();
      } else if (item.getName() != null && !item.getName().isEmpty()) {
        keep(item);
      }
    }
  }

  private static String text(FileItemStream item) throws IOException {
    try (InputStream in = item.openStream()) {
      return new String(in.readNBytes(LONGEST_FIELD), UTF_8);
    }
  }

  private void keep(FileItemStream item) throws IOException {
    if (files.size() >= MOST_FILES) {
      throw new Refusal(413, "At most " + MOST_FILES + " files at a time: send the rest after.");
    }
    Path to = folder.resolve("file-" + files.size());
    try (InputStream in = item.openStream();
        OutputStream out = Files.newOutputStream(to)) {
      Streams.copy(in, out, false);
    }
    files.add(new Uploaded(harmless(item.getName()), to));
  }

  /**
   * The end of a path, without anything that a terminal, a page or a file system could take amiss.
   */
  static String harmless(String sent) {
    String end = sent.substring(Math.max(sent.lastIndexOf('/'), sent.lastIndexOf('\\')) + 1);
    String plain = end.replaceAll("[^\\p{L}\\p{N}._ ()+-]", "_").replaceAll("\\.{2,}", ".").strip();
    String visible = plain.replaceFirst("^\\.+", "");
    String name = visible.isEmpty() ? "picture" : visible;
    return name.length() <= LONGEST_NAME ? name : name.substring(name.length() - LONGEST_NAME);
  }

  /** What an upload library needs to know of a request. */
  private record Context(Request request) implements UploadContext {
    @Override
    public String getCharacterEncoding() {
      return "UTF-8";
    }

    @Override
    public String getContentType() {
      return request.header("Content-Type").orElse("");
    }

    @Override
    @Deprecated
    public int getContentLength() {
      return (int) Math.min(Integer.MAX_VALUE, contentLength());
    }

    @Override
    public long contentLength() {
      return request.length();
    }

    @Override
    public InputStream getInputStream() {
      return request.body();
    }
  }

  private static RuntimeException refusal(Exception e) {
    Throwable cause = e instanceof FileUploadIOException wrapped ? wrapped.getCause() : e;
    if (cause instanceof Refusal refusal) {
      return refusal;
    }
    if (cause instanceof FileSizeLimitExceededException
        || cause instanceof SizeLimitExceededException) {
      return tooLarge();
    }
    if (cause instanceof FileUploadException) {
      return new Refusal(400, "The form with the pictures is damaged: send them again.");
    }
    if (cause instanceof RuntimeException other) {
      return other;
    }
    return new Refusal(400, "What was sent broke off: send it again.");
  }

  private static Refusal tooLarge() {
    return new Refusal(
        413,
        "A file is larger than %d MB, or all are larger than %d MB together: send fewer pages at a time."
            .formatted(LARGEST_FILE / 1_000_000, LARGEST_ALL / 1_000_000));
  }

  /** The files, in the order in which they came. */
  public List<Uploaded> files() {
    return List.copyOf(files);
  }

  @Override
  public void close() {
    try {
      for (Uploaded file : files) {
        Files.deleteIfExists(file.content());
      }
      // The one that broke off is in no list.
      Files.deleteIfExists(folder.resolve("file-" + files.size()));
      Files.deleteIfExists(folder);
    } catch (IOException e) {
      folder.toFile().deleteOnExit();
    }
  }
}
