package sheaf.desk.watch;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;

/** The end of a PNG file: its chunks, each with its length, to IEND (ISO/IEC 15948, clause 5). */
final class PngEnd {

  private static final int SIGNATURE = 8;

  /** Length, name and check sum of a chunk. */
  private static final int AROUND = 12;

  private PngEnd() {}

  static FileEnd of(byte[] file) {
    long at = SIGNATURE;
    while (at + AROUND <= file.length) {
      long length = Integer.toUnsignedLong(ByteBuffer.wrap(file).getInt((int) at));
      String name = new String(file, (int) at + 4, 4, StandardCharsets.US_ASCII);
      at += AROUND + length;
      if (name.equals("IEND")) {
        return FileEnd.endingAt(at, file);
      }
    }
    return FileEnd.UNFINISHED;
  }
}
