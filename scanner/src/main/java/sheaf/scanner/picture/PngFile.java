package sheaf.scanner.picture;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import sheaf.core.reading.ReasonCode;

/**
 * Walks the chunks of a PNG file: size, stated resolution, and whether it is whole.
 *
 * <p>Source of the format: W3C Portable Network Graphics (PNG) Specification, second edition.
 */
final class PngFile {

  private static final long SIGNATURE = 0x89504E470D0A1A0AL;
  private static final int CHUNK_OVERHEAD = 12;

  /** The bit of the colour type that says colour is used. */
  private static final int COLOUR_USED = 2;

  private static final double MM_PER_METRE = 1000;

  private PngFile() {}

  static boolean looksLike(byte[] file) {
    return file.length >= 8 && ByteBuffer.wrap(file).getLong() == SIGNATURE;
  }

  /** Reads the header; throws when the file breaks off before its end chunk. */
  static PictureHeader header(byte[] content) throws UnreadableException {
    ByteBuffer file = ByteBuffer.wrap(content);
    long width = 0;
    long height = 0;
    boolean colour = true;
    Optional<Resolution> stated = Optional.empty();
    int at = 8;
    while (at + CHUNK_OVERHEAD <= file.limit()) {
      long length = file.getInt(at) & 0xFFFFFFFFL;
      String type = new String(content, at + 4, 4, StandardCharsets.ISO_8859_1);
      if (type.equals("IEND")) {
        return new PictureHeader(width, height, colour, stated);
      }
      if (type.equals("IHDR") && at + 18 <= file.limit()) {
        width = file.getInt(at + 8) & 0xFFFFFFFFL;
        height = file.getInt(at + 12) & 0xFFFFFFFFL;
        colour = (file.get(at + 17) & COLOUR_USED) != 0;
        new PictureHeader(width, height, colour, stated).refuseUnlessReasonable();
      }
      if (type.equals("pHYs") && at + 17 <= file.limit() && file.get(at + 16) == 1) {
        stated =
            Optional.of(
                new Resolution(
                    file.getInt(at + 8) / MM_PER_METRE, file.getInt(at + 12) / MM_PER_METRE));
      }
      at = (int) Math.min(file.limit(), at + length + CHUNK_OVERHEAD);
    }
    throw new UnreadableException(
        ReasonCode.DAMAGED_FILE, "The PNG file breaks off before its end: copy or scan it again.");
  }
}
