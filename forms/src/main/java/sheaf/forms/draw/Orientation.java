package sheaf.forms.draw;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.plugins.tiff.BaselineTIFFTagSet;
import javax.imageio.plugins.tiff.TIFFDirectory;
import javax.imageio.plugins.tiff.TIFFField;
import javax.imageio.stream.MemoryCacheImageInputStream;

/**
 * How a camera stored a picture, by the orientation tag of Exif (CIPA DC-008, 4.6.5.1.6): where the
 * pixel of a place in the upright picture is found.
 *
 * @param turned whether the picture's rows are stored as columns
 * @param fromRight whether stored columns are counted from the right
 * @param fromBottom whether stored rows are counted from the bottom
 */
record Orientation(boolean turned, boolean fromRight, boolean fromBottom) {

  private static final Orientation UPRIGHT = new Orientation(false, false, false);

  /** The tag's values 1 to 8, in order. */
  private static final Orientation[] BY_TAG = {
    UPRIGHT,
    new Orientation(false, true, false),
    new Orientation(false, true, true),
    new Orientation(false, false, true),
    new Orientation(true, false, false),
    new Orientation(true, false, true),
    new Orientation(true, true, true),
    new Orientation(true, true, false)
  };

  private static final int START = 0xFFD8;
  private static final int APP1 = 0xFFE1;
  private static final int START_OF_SCAN = 0xFFDA;
  private static final byte[] EXIF = "Exif\0\0".getBytes(StandardCharsets.US_ASCII);

  /** What the tag of a JPEG says; upright where there is none, or for another file. */
  static Orientation of(byte[] file) {
    return exif(ByteBuffer.wrap(file))
        .flatMap(Orientation::tag)
        .filter(tag -> tag >= 1 && tag <= BY_TAG.length)
        .map(tag -> BY_TAG[tag - 1])
        .orElse(UPRIGHT);
  }

  /** The Exif part among a JPEG's segments (ISO/IEC 10918-1, annex B), without its name. */
  private static Optional<byte[]> exif(ByteBuffer jpeg) {
    if (jpeg.remaining() < 2 || word(jpeg) != START) {
      return Optional.empty();
    }
    while (jpeg.remaining() >= 4) {
      int marker = word(jpeg);
      int length = word(jpeg) - 2;
      if (marker == START_OF_SCAN || length < 0 || length > jpeg.remaining()) {
        return Optional.empty();
      }
      byte[] segment = new byte[length];
      jpeg.get(segment);
      int begins = Arrays.mismatch(segment, EXIF);
      if (marker == APP1 && begins == EXIF.length) {
        return Optional.of(Arrays.copyOfRange(segment, EXIF.length, length));
      }
    }
    return Optional.empty();
  }

  private static int word(ByteBuffer bytes) {
    return Short.toUnsignedInt(bytes.getShort());
  }

  /** The tag, which stands in what is a TIFF file without a picture. */
  private static Optional<Integer> tag(byte[] exif) {
    ImageReader reader = ImageIO.getImageReadersByFormatName("tiff").next();
    try (MemoryCacheImageInputStream in =
        new MemoryCacheImageInputStream(new ByteArrayInputStream(exif))) {
      reader.setInput(in);
      TIFFField field =
          TIFFDirectory.createFromMetadata(reader.getImageMetadata(0))
              .getTIFFField(BaselineTIFFTagSet.TAG_ORIENTATION);
      return Optional.ofNullable(field).map(f -> f.getAsInt(0));
    } catch (IOException | RuntimeException e) {
      // A damaged tag says nothing, and Java's reader meets damage with exceptions of many kinds.
      return Optional.empty();
    } finally {
      reader.dispose();
    }
  }
}
