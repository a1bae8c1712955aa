package sheaf.samples.scan;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;

/** The little Exif that tells a phone's photo from a scan. Source: Exif 2.3 (JEITA CP-3451). */
final class Exif {

  private static final int ORIENTATION = 0x0112;
  private static final int EXIF_DIRECTORY = 0x8769;
  private static final int EXPOSURE_TIME = 0x829A;
  private static final int SHORT = 3;
  private static final int LONG = 4;
  private static final int RATIONAL = 5;

  /** Offsets are counted from the TIFF header: 8 bytes, then a directory of two entries. */
  private static final int FIRST_DIRECTORY = 8;

  private static final int SECOND_DIRECTORY = FIRST_DIRECTORY + 2 + 2 * 12 + 4;
  private static final int EXPOSURE = SECOND_DIRECTORY + 2 + 12 + 4;
  private static final int LENGTH = EXPOSURE + 8;

  /** Start of image, then the JFIF segment's marker. */
  private static final int SEGMENTS = 2;

  private Exif() {}

  /** The same JPEG file with an Exif segment in place of its JFIF segment. */
  static byte[] instead(byte[] jpeg, int orientation) {
    int jfif = 2 + (jpeg[SEGMENTS + 2] & 0xFF) * 256 + (jpeg[SEGMENTS + 3] & 0xFF);
    byte[] exif = segment(orientation);
    ByteBuffer file = ByteBuffer.allocate(jpeg.length - jfif + exif.length);
    file.put(jpeg, 0, SEGMENTS).put(exif);
    file.put(jpeg, SEGMENTS + jfif, jpeg.length - SEGMENTS - jfif);
    return file.array();
  }

  private static byte[] segment(int orientation) {
    ByteBuffer segment = ByteBuffer.allocate(4 + 6 + LENGTH);
    segment.putShort((short) 0xFFE1).putShort((short) (2 + 6 + LENGTH));
    segment.put("Exif\0\0".getBytes(StandardCharsets.US_ASCII));
    segment.put("MM".getBytes(StandardCharsets.US_ASCII)).putShort((short) 42);
    segment.putInt(FIRST_DIRECTORY);
    segment.putShort((short) 2);
    entry(segment, ORIENTATION, SHORT, orientation << 16);
    entry(segment, EXIF_DIRECTORY, LONG, SECOND_DIRECTORY);
    segment.putInt(0);
    segment.putShort((short) 1);
    entry(segment, EXPOSURE_TIME, RATIONAL, EXPOSURE);
    segment.putInt(0);
    segment.putInt(1).putInt(120);
    return segment.array();
  }

  private static void entry(ByteBuffer segment, int tag, int type, int value) {
    segment.putShort((short) tag).putShort((short) type).putInt(1).putInt(value);
  }
}
