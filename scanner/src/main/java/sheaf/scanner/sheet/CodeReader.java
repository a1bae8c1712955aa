package sheaf.scanner.sheet;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.Binarizer;
import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.LuminanceSource;
import com.google.zxing.PlanarYUVLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.common.GlobalHistogramBinarizer;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.opencv.core.CvException;
import org.opencv.core.Mat;
import org.opencv.core.Size;
import org.opencv.imgproc.Imgproc;
import org.opencv.objdetect.QRCodeDetector;
import sheaf.core.job.SheetCode;
import sheaf.core.page.MmRect;
import sheaf.core.reading.ReasonCode;
import sheaf.scanner.opencv.Mats;
import sheaf.scanner.picture.UnreadableException;

/** Reads the two printed codes where the marks say they are, and holds them against each other. */
final class CodeReader {

  private static final Map<DecodeHintType, Object> HINTS =
      Map.of(
          DecodeHintType.TRY_HARDER,
          Boolean.TRUE,
          DecodeHintType.POSSIBLE_FORMATS,
          List.of(BarcodeFormat.QR_CODE));

  /** Decoders often do better on a smaller picture, which is less noisy. */
  private static final double[] SCALES = {1, 0.6, 0.4};

  private static final List<Function<LuminanceSource, Binarizer>> BINARIZERS =
      List.of(HybridBinarizer::new, GlobalHistogramBinarizer::new);

  /** Looks beyond the code's own square, in millimetres: a curled sheet is not yet quite flat. */
  private static final double AROUND = 2;

  /** Pixels a millimetre at which codes are read: seven for each of their modules. */
  private static final double PIXELS_PER_MM = 10;

  private CodeReader() {}

  /**
   * What the codes say; one that is shot through does not matter.
   *
   * @throws UnreadableException when neither can be read or they differ
   */
  static SheetCode read(Mat picture, PageMap map, List<MmRect> codes) throws UnreadableException {
    List<SheetCode> read =
        codes.stream().flatMap(code -> decode(picture, map, code).stream()).distinct().toList();
    if (read.isEmpty()) {
      throw new UnreadableException(
          ReasonCode.CODE_UNREADABLE,
          "Neither of the sheet's two codes can be read: take a sharper picture; if both are torn or inked over, measure the sheet by hand.");
    }
    if (read.size() > 1) {
      throw new UnreadableException(
          ReasonCode.CODE_AGAINST_MARKS,
          "The sheet's two codes name different sheets: if two sheets lie over each other, take one picture of each.");
    }
    return read.get(0);
  }

  private static Optional<SheetCode> decode(Mat picture, PageMap map, MmRect code) {
    try (Mats mats = new Mats()) {
      Mat crop = mats.own(Flattening.part(picture, map, code.grow(AROUND), PIXELS_PER_MM));
      if (crop.channels() == 3) {
        Imgproc.cvtColor(crop, crop, Imgproc.COLOR_BGR2GRAY);
      }
      for (double scale : SCALES) {
        Mat scaled = mats.mat();
        Imgproc.resize(crop, scaled, new Size(), scale, scale, Imgproc.INTER_AREA);
        Optional<SheetCode> found = decode(scaled);
        if (found.isPresent()) {
          return found;
        }
      }
      return decodeOtherwise(mats, crop);
    }
  }

  /** OpenCV's decoder: one symbol in a thousand, though unharmed, escapes ZXing's search. */
  private static Optional<SheetCode> decodeOtherwise(Mats mats, Mat picture) {
    Mat corners = mats.mat();
    Mat straightened = mats.mat();
    try {
      return SheetCode.parse(new QRCodeDetector().detectAndDecode(picture, corners, straightened));
    } catch (CvException e) {
      // Over some harmed symbols OpenCV stumbles rather than say that it reads nothing.
      return Optional.empty();
    }
  }

  private static Optional<SheetCode> decode(Mat picture) {
    byte[] pixels = new byte[(int) picture.total()];
    picture.get(0, 0, pixels);
    int width = picture.cols();
    int height = picture.rows();
    LuminanceSource source =
        new PlanarYUVLuminanceSource(pixels, width, height, 0, 0, width, height, false);
    for (Function<LuminanceSource, Binarizer> binarizer : BINARIZERS) {
      try {
        String text =
            new QRCodeReader().decode(new BinaryBitmap(binarizer.apply(source)), HINTS).getText();
        Optional<SheetCode> code = SheetCode.parse(text);
        if (code.isPresent()) {
          return code;
        }
      } catch (ReaderException e) {
        // Not readable this way is the ordinary case: the next way is tried.
        continue;
      }
    }
    return Optional.empty();
  }
}
