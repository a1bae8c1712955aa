package sheaf.scanner.picture;

import java.util.Optional;
import org.opencv.core.Mat;

/**
 * A decoded picture, upright as its file says.
 *
 * @param pixels 8 bit, one channel (grey) or three (blue, green, red); released by closing
 * @param stated the resolution that the file states; empty when it states none or is a camera's
 */
public record Picture(Mat pixels, Optional<Resolution> stated) implements AutoCloseable {

  /** Whether it has colours. */
  public boolean isColour() {
    return pixels.channels() == 3;
  }

  @Override
  public void close() {
    pixels.release();
  }
}
