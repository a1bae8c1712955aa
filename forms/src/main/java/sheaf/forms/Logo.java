package sheaf.forms;

import java.io.IOException;
import java.util.Arrays;
import java.util.Objects;
import sheaf.forms.draw.Picture;

/** A shop's picture: the bytes of a PNG or JPEG file that is known to be readable. */
public final class Logo {

  /** The kind of picture file. */
  public enum Format {
    /** Portable Network Graphics, ISO/IEC 15948. */
    PNG,
    /** JPEG, ISO/IEC 10918. */
    JPEG
  }

  private final Format format;
  private final int widthPx;
  private final int heightPx;
  private final byte[] file;

  /**
   * A picture.
   *
   * @param format of the file
   * @param widthPx above zero, in pixels
   * @param heightPx above zero, in pixels
   * @param file the whole file; copied
   */
  public Logo(Format format, int widthPx, int heightPx, byte[] file) {
    if (widthPx < 1 || heightPx < 1) {
      throw new IllegalArgumentException("a picture has pixels: " + widthPx + " x " + heightPx);
    }
    this.format = format;
    this.widthPx = widthPx;
    this.heightPx = heightPx;
    this.file = file.clone();
  }

  /** The kind of file. */
  public Format format() {
    return format;
  }

  /** Pixels from left to right. */
  public int widthPx() {
    return widthPx;
  }

  /** Pixels from top to bottom. */
  public int heightPx() {
    return heightPx;
  }

  /** A copy of the whole file. */
  public byte[] file() {
    return file.clone();
  }

  /**
   * The picture as it is printed.
   *
   * @throws IOException when the file cannot be decoded
   */
  Picture picture() throws IOException {
    return Picture.of(file);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Logo logo
        && format == logo.format
        && widthPx == logo.widthPx
        && heightPx == logo.heightPx
        && Arrays.equals(file, logo.file);
  }

  @Override
  public int hashCode() {
    return Objects.hash(format, widthPx, heightPx, Arrays.hashCode(file));
  }

  /** For people: {@code PNG, 600 x 200 pixels}. */
  @Override
  public String toString() {
    return format + ", " + widthPx + " x " + heightPx + " pixels";
  }
}
