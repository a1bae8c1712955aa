package sheaf.desk.watch;

import java.nio.charset.StandardCharsets;

/**
 * Whether a file is there to its end, judged by its own structure: scanners make an empty file and
 * fill it for a minute, and copies over a network stop and go on.
 */
public enum FileEnd {
  /** All that the file announces is there. */
  COMPLETE,
  /** All is there and something else follows, which may be the beginning of more. */
  FOLLOWED,
  /** Something that the file announces is not there yet. */
  UNFINISHED,
  /** No scan by its first bytes. */
  NO_SCAN;

  private static final byte[] PNG = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'};

  /** Fewer bytes tell no kind of file. */
  private static final int LEAST = 8;

  /** Judges a file by its content. */
  public static FileEnd of(byte[] file) {
    // Some programs reserve a file's whole length before they fill it.
    if (file.length < LEAST || startsWith(file, new byte[LEAST])) {
      return UNFINISHED;
    }
    if ((file[0] & 0xFF) == 0xFF && (file[1] & 0xFF) == 0xD8) {
      return JpegEnd.of(file);
    }
    if (startsWith(file, PNG)) {
      return PngEnd.of(file);
    }
    if (startsWith(file, "%PDF-".getBytes(StandardCharsets.US_ASCII))) {
      return PdfEnd.of(file);
    }
    return TiffEnd.isTiff(file) ? TiffEnd.of(file) : NO_SCAN;
  }

  private static boolean startsWith(byte[] file, byte[] start) {
    for (int i = 0; i < start.length; i++) {
      if (file[i] != start[i]) {
        return false;
      }
    }
    return true;
  }

  /** What it is when all that was announced ends at a place. */
  static FileEnd endingAt(long end, byte[] file) {
    if (end > file.length) {
      return UNFINISHED;
    }
    for (int i = (int) end; i < file.length; i++) {
      if (file[i] != 0 && !Character.isWhitespace(file[i])) {
        return FOLLOWED;
      }
    }
    return COMPLETE;
  }
}
