package sheaf.desk.intake;

import java.util.Optional;

/** Flattens sheets to look at, as {@link sheaf.scanner.FlatPicture#jpeg} does. */
@FunctionalInterface
public interface FlatSource {

  /**
   * A picture of a whole sheet, from edge to edge of the page as designed.
   *
   * @param file its content
   * @param page of the file, from 1
   * @return a JPEG; empty when the page cannot be read
   */
  Optional<byte[]> jpeg(byte[] file, int page);
}
