package sheaf.scanner.picture;

import java.util.Optional;
import sheaf.core.reading.ReasonCode;

/**
 * What a file says of its picture before any pixel is decoded.
 *
 * @param width in pixels
 * @param height in pixels
 * @param colour whether it has more than one channel
 * @param stated the resolution it states
 */
record PictureHeader(long width, long height, boolean colour, Optional<Resolution> stated) {

  /**
   * The most pixels a sheet can need: letter at 600 dpi has 34 million, the largest phones 108
   * million. More is a mistake or an attack, and is refused before memory is taken.
   */
  private static final long MAX_PIXELS = 120_000_000;

  /** Throws when no sheet can be that large or that small. */
  void refuseUnlessReasonable() throws UnreadableException {
    if (width < 1 || height < 1) {
      throw new UnreadableException(
          ReasonCode.DAMAGED_FILE, "The picture has no size: copy or scan it again.");
    }
    if (width > MAX_PIXELS || height > MAX_PIXELS || width * height > MAX_PIXELS) {
      throw new UnreadableException(
          ReasonCode.TOO_LARGE,
          "The picture says it is %,d x %,d pixels; a sheet needs %,d million at most: scan at 600 dpi or less."
              .formatted(width, height, MAX_PIXELS / 1_000_000));
    }
  }
}
