package sheaf.desk.intake;

import java.util.List;
import sheaf.core.page.MmRect;

/** Cuts places out of sheets, as {@link sheaf.scanner.PlacePictures#png} does. */
@FunctionalInterface
public interface PlaceSource {

  /**
   * A picture of each place.
   *
   * @param file its content
   * @param page of the file, from 1
   * @param places on the page as designed, in millimetres
   * @return a PNG for each place, in their order; none when the page cannot be read
   */
  List<byte[]> pictures(byte[] file, int page, List<MmRect> places);
}
