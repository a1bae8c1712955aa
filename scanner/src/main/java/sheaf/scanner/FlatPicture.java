package sheaf.scanner;

import java.util.Optional;
import org.opencv.core.Mat;
import org.opencv.core.MatOfByte;
import org.opencv.core.MatOfInt;
import org.opencv.core.Size;
import org.opencv.imgcodecs.Imgcodecs;
import org.opencv.imgproc.Imgproc;
import sheaf.scanner.opencv.Mats;
import sheaf.scanner.opencv.NativeLibraries;
import sheaf.scanner.picture.Picture;
import sheaf.scanner.picture.PictureFile;
import sheaf.scanner.picture.UnreadableException;
import sheaf.scanner.sheet.FlatSheet;
import sheaf.scanner.sheet.SheetInPicture;

/** A whole sheet that was read before, flattened, for a person to look at on a screen. */
public final class FlatPicture {

  /** Enough to tell a hairline slit when the picture is enlarged, in pixels a millimetre. */
  private static final double PIXELS_PER_MM = 8;

  private static final int JPEG_QUALITY = 82;

  private FlatPicture() {}

  /**
   * The sheet from edge to edge of the page as designed.
   *
   * @param file its content
   * @param page of the file, from 1
   * @return a JPEG; empty when the page cannot be read
   */
  public static Optional<byte[]> jpeg(byte[] file, int page) {
    NativeLibraries.load();
    try (PictureFile pictures = PictureFile.open(file);
        Picture picture = pictures.page(page - 1);
        SheetInPicture sheet = SheetInPicture.find(picture);
        Mats mats = new Mats()) {
      Mat flat = sheet.flat().colour().orElse(sheet.flat().grey());
      double scale = PIXELS_PER_MM / FlatSheet.PIXELS_PER_MM;
      Mat small = mats.own(new Mat());
      Imgproc.resize(flat, small, new Size(), scale, scale, Imgproc.INTER_AREA);
      MatOfByte jpeg = mats.own(new MatOfByte());
      MatOfInt quality = mats.own(new MatOfInt(Imgcodecs.IMWRITE_JPEG_QUALITY, JPEG_QUALITY));
      Imgcodecs.imencode(".jpg", small, jpeg, quality);
      return Optional.of(jpeg.toArray());
    } catch (UnreadableException e) {
      return Optional.empty();
    }
  }
}
