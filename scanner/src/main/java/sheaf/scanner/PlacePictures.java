package sheaf.scanner;

import java.util.ArrayList;
import java.util.List;
import org.opencv.core.Mat;
import org.opencv.core.MatOfByte;
import org.opencv.core.Rect;
import org.opencv.imgcodecs.Imgcodecs;
import sheaf.core.page.MmRect;
import sheaf.scanner.opencv.Mats;
import sheaf.scanner.opencv.NativeLibraries;
import sheaf.scanner.picture.Picture;
import sheaf.scanner.picture.PictureFile;
import sheaf.scanner.picture.UnreadableException;
import sheaf.scanner.sheet.FlatSheet;
import sheaf.scanner.sheet.SheetInPicture;

/** Pictures of places on a sheet that was read before, for a person to look at. */
public final class PlacePictures {

  private PlacePictures() {}

  /**
   * Cuts places out of the flattened sheet, ten pixels a millimetre.
   *
   * @param file its content
   * @param page of the file, from 1
   * @param places on the page as designed; what lies beyond its edge is left out
   * @return a PNG for each place, in their order; none when the page cannot be read
   */
  public static List<byte[]> png(byte[] file, int page, List<MmRect> places) {
    NativeLibraries.load();
    try (PictureFile pictures = PictureFile.open(file);
        Picture picture = pictures.page(page - 1);
        SheetInPicture sheet = SheetInPicture.find(picture)) {
      List<byte[]> cut = new ArrayList<>();
      for (MmRect place : places) {
        cut.add(png(sheet.flat(), place));
      }
      return cut;
    } catch (UnreadableException e) {
      return List.of();
    }
  }

  private static byte[] png(FlatSheet sheet, MmRect place) {
    try (Mats mats = new Mats()) {
      Rect pixels = sheet.pixels(place);
      Mat cut = mats.own(sheet.colour().orElse(sheet.grey()).submat(pixels));
      MatOfByte png = mats.own(new MatOfByte());
      Imgcodecs.imencode(".png", cut, png);
      return png.toArray();
    }
  }
}
