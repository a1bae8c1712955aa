package sheaf.desk.profile;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.Optional;
import javax.imageio.ImageIO;
import javax.imageio.ImageReader;
import javax.imageio.stream.ImageInputStream;
import javax.imageio.stream.MemoryCacheImageInputStream;
import sheaf.forms.Logo;

/** Reads the picture of a shop and makes sure that it can be printed. */
final class LogoFile {

  /** It is embedded in every card that is printed, in bytes. */
  private static final long MOST_BYTES = 2_000_000;

  /** The longer side, in pixels: on a card 25 mm wide, 200 are 200 dots an inch. */
  private static final int LEAST_PX = 200;

  /** Either side, in pixels: more is lost in print, and 16 million pixels take 64 MB to look at. */
  private static final int MOST_PX = 4000;

  /** How much longer one side may be; a thinner strip would be too small to be seen on a card. */
  private static final int MOST_OBLONG = 10;

  /** Red, green and blue; a fourth is black, and such colours cannot stand in an archival card. */
  private static final int MOST_JPEG_CHANNELS = 3;

  private LogoFile() {}

  /**
   * Reads a picture.
   *
   * @throws IllegalArgumentException when it cannot be used, in words that go behind {@code
   *     shop.logo}
   */
  static Logo read(Path file) {
    byte[] content = content(file);
    Logo.Format format =
        format(content)
            .orElseThrow(() -> new IllegalArgumentException("must be a PNG or JPEG file: " + file));
    Iterator<ImageReader> readers = ImageIO.getImageReadersByFormatName(format.name());
    ImageReader reader = readers.next();
    try (ImageInputStream in = new MemoryCacheImageInputStream(new ByteArrayInputStream(content))) {
      reader.setInput(in, true, true);
      Logo logo = new Logo(format, reader.getWidth(0), reader.getHeight(0), content);
      checkSize(logo, file);
      int channels = reader.read(0).getRaster().getNumBands();
      if (format == Logo.Format.JPEG && channels > MOST_JPEG_CHANNELS) {
        throw new IOException("a JPEG for a printing press");
      }
      return logo;
    } catch (SizeException e) {
      throw e;
    } catch (IOException | RuntimeException e) {
      // Java's decoders meet damage with many kinds of runtime exceptions.
      throw unreadable(format, file, e);
    } finally {
      reader.dispose();
    }
  }

  private static byte[] content(Path file) {
    try {
      if (!Files.isRegularFile(file)) {
        throw new IllegalArgumentException("names a file that is not there: " + file);
      }
      if (Files.size(file) > MOST_BYTES) {
        throw new IllegalArgumentException(
            "may have at most "
                + MOST_BYTES / 1_000_000
                + " MB: save "
                + file
                + " with fewer pixels");
      }
      return Files.readAllBytes(file);
    } catch (IOException e) {
      throw new IllegalArgumentException("names a file that may not be read: " + file, e);
    }
  }

  /** By the first bytes, since a name may lie: PNG, ISO/IEC 15948, 5.2; JPEG, ISO/IEC 10918-1. */
  private static Optional<Logo.Format> format(byte[] content) {
    if (startsWith(content, 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n')) {
      return Optional.of(Logo.Format.PNG);
    }
    return startsWith(content, 0xFF, 0xD8, 0xFF) ? Optional.of(Logo.Format.JPEG) : Optional.empty();
  }

  private static boolean startsWith(byte[] content, int... first) {
    for (int i = 0; i < first.length; i++) {
      if (i >= content.length || (content[i] & 0xFF) != first[i]) {
        return false;
      }
    }
    return true;
  }

  private static void checkSize(Logo logo, Path file) {
    int longer = Math.max(logo.widthPx(), logo.heightPx());
    int shorter = Math.min(logo.widthPx(), logo.heightPx());
    if (longer < LEAST_PX || longer > MOST_PX) {
      throw new SizeException(
          "must have "
              + LEAST_PX
              + " to "
              + MOST_PX
              + " pixels on its longer side, not "
              + longer
              + ": "
              + file);
    }
    if (longer > MOST_OBLONG * shorter) {
      throw new SizeException(
          "may be at most %d times as long as it is high, or as high as long: %s"
              .formatted(MOST_OBLONG, file));
    }
  }

  private static IllegalArgumentException unreadable(Logo.Format format, Path file, Exception why) {
    return new IllegalArgumentException(
        "is a " + format + " file that cannot be decoded; save it anew as PNG in RGB: " + file,
        why);
  }

  /** The header can be read, and its numbers will not do. */
  private static final class SizeException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    SizeException(String message) {
      super(message);
    }
  }
}
