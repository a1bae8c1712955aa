package sheaf.scanner.picture;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import sheaf.core.reading.ReasonCode;

/**
 * Walks the markers of a JPEG file: size, stated resolution, whether a camera made it, and whether
 * it is whole, since decoders fill what is missing with grey and say nothing.
 *
 * <p>Source of the format: ITU-T T.81, annex B; JFIF 1.02; Exif 2.3 for the camera's tags.
 */
final class JpegFile {

  private static final int START_OF_SCAN = 0xDA;
  private static final int END_OF_IMAGE = 0xD9;
  private static final int APP0 = 0xE0;
  private static final int APP1 = 0xE1;
  private static final int EXPOSURE_TIME = 0x829A;
  private static final int EXIF_IFD = 0x8769;
  private static final int IFD_ENTRY = 12;

  private final ByteBuffer file;
  private long width;
  private long height;
  private int components;
  private Optional<Resolution> stated = Optional.empty();
  private boolean camera;

  private JpegFile(byte[] content) {
    file = ByteBuffer.wrap(content);
  }

  static boolean looksLike(byte[] file) {
    return file.length > 3
        && (file[0] & 0xFF) == 0xFF
        && (file[1] & 0xFF) == 0xD8
        && (file[2] & 0xFF) == 0xFF;
  }

  /** Reads the header; throws when the file breaks off before its end marker. */
  static PictureHeader header(byte[] content) throws UnreadableException {
    JpegFile jpeg = new JpegFile(content);
    if (!jpeg.walk()) {
      throw new UnreadableException(
          ReasonCode.DAMAGED_FILE,
          "The JPEG file breaks off before its end: copy or scan it again.");
    }
    return new PictureHeader(
        jpeg.width, jpeg.height, jpeg.components > 1, jpeg.camera ? Optional.empty() : jpeg.stated);
  }

  /** Whether the end marker was reached. */
  private boolean walk() {
    int at = 2;
    while (at + 4 <= file.limit()) {
      if (unsigned(at) != 0xFF) {
        return false;
      }
      int marker = unsigned(at + 1);
      if (marker == 0xFF) {
        at++;
        continue;
      }
      int length = file.getShort(at + 2) & 0xFFFF;
      if (length < 2 || at + 2 + length > file.limit()) {
        return false;
      }
      segment(marker, at + 4, length - 2);
      at += 2 + length;
      if (marker == START_OF_SCAN) {
        at = endOfScan(at);
        if (at < 0) {
          return false;
        }
        if (unsigned(at + 1) == END_OF_IMAGE) {
          return width > 0;
        }
      }
    }
    return false;
  }

  /** Where the next marker stands after entropy-coded data; -1 when there is none. */
  private int endOfScan(int from) {
    for (int at = from; at + 1 < file.limit(); at++) {
      if (unsigned(at) == 0xFF) {
        int next = unsigned(at + 1);
        boolean partOfData = next == 0 || next == 0xFF || (next >= 0xD0 && next <= 0xD7);
        if (!partOfData) {
          return at;
        }
      }
    }
    return -1;
  }

  private void segment(int marker, int start, int length) {
    boolean frame =
        marker >= 0xC0 && marker <= 0xCF && marker != 0xC4 && marker != 0xC8 && marker != 0xCC;
    if (frame && length >= 6) {
      height = file.getShort(start + 1) & 0xFFFF;
      width = file.getShort(start + 3) & 0xFFFF;
      components = unsigned(start + 5);
    } else if (marker == APP0 && length >= 12 && text(start, 4).equals("JFIF")) {
      density(
          unsigned(start + 7),
          file.getShort(start + 8) & 0xFFFF,
          file.getShort(start + 10) & 0xFFFF);
    } else if (marker == APP1 && length > 14 && text(start, 4).equals("Exif")) {
      camera = saysExposure(file.slice(start + 6, length - 6));
    }
  }

  private void density(int unit, int across, int down) {
    if (across > 1 && down > 1 && unit == 1) {
      stated = Optional.of(Resolution.ofDpi(across, down));
    } else if (across > 1 && down > 1 && unit == 2) {
      stated = Optional.of(new Resolution(across / 10.0, down / 10.0));
    }
  }

  /** A scanner never states an exposure time; a camera always does. */
  private static boolean saysExposure(ByteBuffer tiff) {
    tiff.order(tiff.get(0) == 'I' ? ByteOrder.LITTLE_ENDIAN : ByteOrder.BIG_ENDIAN);
    int exif = entry(tiff, tiff.getInt(4), EXIF_IFD);
    return exif > 0 && entry(tiff, tiff.getInt(exif + 8), EXPOSURE_TIME) > 0;
  }

  /** Where a directory's entry of that tag stands; -1 when there is none or it is damaged. */
  private static int entry(ByteBuffer tiff, int directory, int tag) {
    if (directory < 8 || directory + 2 > tiff.limit()) {
      return -1;
    }
    int count = tiff.getShort(directory) & 0xFFFF;
    for (int i = 0; i < count; i++) {
      int at = directory + 2 + i * IFD_ENTRY;
      if (at + IFD_ENTRY > tiff.limit()) {
        return -1;
      }
      if ((tiff.getShort(at) & 0xFFFF) == tag) {
        return at;
      }
    }
    return -1;
  }

  private int unsigned(int at) {
    return file.get(at) & 0xFF;
  }

  private String text(int start, int length) {
    return new String(file.array(), start, length, StandardCharsets.ISO_8859_1);
  }
}
