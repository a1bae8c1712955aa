package sheaf.desk.watch;

/** The end of a JPEG file: its segments, then the marker EOI (ITU-T T.81, annex B). */
final class JpegEnd {

  private static final int SOI = 0xD8;
  private static final int EOI = 0xD9;
  private static final int SOS = 0xDA;
  private static final int RST0 = 0xD0;
  private static final int RST7 = 0xD7;
  private static final int TEM = 0x01;
  private static final int MARKER = 0xFF;

  private JpegEnd() {}

  static FileEnd of(byte[] file) {
    int at = 2;
    while (at + 1 < file.length) {
      if (at(file, at) != MARKER) {
        // No marker where one must be: the reader says what is wrong with it.
        return FileEnd.FOLLOWED;
      }
      int marker = at(file, at + 1);
      if (marker == EOI) {
        return FileEnd.endingAt(at + 2L, file);
      } else if (marker == MARKER) {
        at++;
      } else if (standsAlone(marker)) {
        at += 2;
      } else if (at + 3 < file.length) {
        at += 2 + (at(file, at + 2) << 8 | at(file, at + 3));
        at = marker == SOS ? afterPixels(file, at) : at;
      } else {
        return FileEnd.UNFINISHED;
      }
    }
    return FileEnd.UNFINISHED;
  }

  private static boolean standsAlone(int marker) {
    return marker == TEM || marker >= RST0 && marker <= SOI;
  }

  /** Where the next marker is that does not belong to the pixels. */
  private static int afterPixels(byte[] file, int from) {
    for (int at = from; at + 1 < file.length; at++) {
      int next = at(file, at + 1);
      if (at(file, at) == MARKER
          && next != 0
          && next != MARKER
          && !(next >= RST0 && next <= RST7)) {
        return at;
      }
    }
    return file.length;
  }

  private static int at(byte[] file, int at) {
    return file[at] & 0xFF;
  }
}
