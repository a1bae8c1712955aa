package sheaf.desk.watch;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.HashSet;
import java.util.Set;

/**
 * The end of a TIFF file: the directories of its pages, a chain that ends with zero, and all the
 * strips or tiles that they tell of (TIFF revision 6.0, sections 2, 3 and 15).
 */
final class TiffEnd {

  private static final int STRIP_OFFSETS = 273;
  private static final int STRIP_BYTES = 279;
  private static final int TILE_OFFSETS = 324;
  private static final int TILE_BYTES = 325;

  /** Bytes of a value, by the number of its kind. */
  private static final int[] SIZES = {0, 1, 1, 2, 4, 8, 1, 1, 2, 4, 8, 4, 8};

  private static final int SHORT = 3;
  private static final int ENTRY = 12;
  private static final int MAGIC = 42;

  private final ByteBuffer file;

  private TiffEnd(ByteBuffer file) {
    this.file = file;
  }

  static boolean isTiff(byte[] file) {
    return file[0] == file[1]
        && (file[0] == 'I' || file[0] == 'M')
        && ordered(file).getShort(2) == MAGIC;
  }

  static FileEnd of(byte[] file) {
    return new TiffEnd(ordered(file)).isWhole() ? FileEnd.COMPLETE : FileEnd.UNFINISHED;
  }

  private static ByteBuffer ordered(byte[] file) {
    return ByteBuffer.wrap(file)
        .order(file[0] == 'I' ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
  }

  private boolean isWhole() {
    Set<Long> seen = new HashSet<>();
    long directory = unsigned(4);
    // A chain without a page is none yet; one that bites its tail is for the reader to refuse.
    boolean whole = directory != 0;
    while (whole && directory != 0 && seen.add(directory)) {
      whole = reaches(directory + 2);
      if (whole) {
        int entries = Short.toUnsignedInt(file.getShort((int) directory));
        long end = directory + 2 + (long) entries * ENTRY;
        whole = reaches(end + 4) && isPageWhole((int) directory + 2, entries);
        directory = whole ? unsigned((int) end) : 0;
      }
    }
    return whole;
  }

  private boolean isPageWhole(int first, int entries) {
    int offsets = -1;
    int bytes = -1;
    for (int at = first; at < first + entries * ENTRY; at += ENTRY) {
      int tag = Short.toUnsignedInt(file.getShort(at));
      int kind = Short.toUnsignedInt(file.getShort(at + 2));
      long size = kind < SIZES.length ? unsigned(at + 4) * SIZES[kind] : 0;
      if (size > 4 && !reaches(unsigned(at + 8) + size)) {
        return false;
      }
      offsets = tag == STRIP_OFFSETS || tag == TILE_OFFSETS ? at : offsets;
      bytes = tag == STRIP_BYTES || tag == TILE_BYTES ? at : bytes;
    }
    return offsets >= 0 && bytes >= 0 && arePixelsThere(offsets, bytes);
  }

  private boolean arePixelsThere(int offsets, int bytes) {
    long count = Math.min(unsigned(offsets + 4), unsigned(bytes + 4));
    for (int i = 0; i < count; i++) {
      long offset = value(offsets, i);
      if (offset == 0 || !reaches(offset + value(bytes, i))) {
        return false;
      }
    }
    return true;
  }

  /** One of an entry's values, which stand in the entry itself where they fit. */
  private long value(int entry, int index) {
    int size = Short.toUnsignedInt(file.getShort(entry + 2)) == SHORT ? 2 : 4;
    boolean inside = unsigned(entry + 4) * size <= 4;
    int at = (inside ? entry + 8 : (int) unsigned(entry + 8)) + index * size;
    return size == 2 ? Short.toUnsignedLong(file.getShort(at)) : unsigned(at);
  }

  private long unsigned(int at) {
    return Integer.toUnsignedLong(file.getInt(at));
  }

  private boolean reaches(long end) {
    return end <= file.limit();
  }
}
