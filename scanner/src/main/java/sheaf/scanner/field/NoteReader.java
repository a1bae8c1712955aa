package sheaf.scanner.field;

import java.util.Base64;
import java.util.Optional;
import org.opencv.core.Core;
import org.opencv.core.CvType;
import org.opencv.core.Mat;
import org.opencv.core.MatOfByte;
import org.opencv.core.MatOfInt;
import org.opencv.core.Rect;
import org.opencv.core.Scalar;
import org.opencv.core.Size;
import org.opencv.imgcodecs.Imgcodecs;
import org.opencv.imgproc.Imgproc;
import sheaf.core.layout.Layout;
import sheaf.core.page.MmRect;
import sheaf.core.reading.NotePicture;
import sheaf.scanner.opencv.Mats;
import sheaf.scanner.sheet.FlatSheet;

/** Takes what is written freely on a sheet as a picture: trimmed, its background cleaned. */
public final class NoteReader {

  /** The room's own line and what its place is unsure by, in millimetres. */
  private static final double LINE = 1;

  /** Wider than the widest stroke, in millimetres: brings out the paper's own tone. */
  private static final double STROKE = 4;

  /** Lighter than this is paper, darker than that full ink, as shares of the paper's tone. */
  private static final double PAPER = 0.9;

  private static final double INK = 0.4;

  /** A stroke is somewhere at least this dark, 0 to 1; the edge of a stain is not. */
  private static final double STROKE_DARK = 0.3;

  /** Smaller pieces are specks, in square millimetres: a full stop has twice that. */
  private static final double SPECK = 0.12;

  /** Less ink than this is no note but stray dots, in square millimetres. */
  private static final double NOTHING = 1.5;

  /** Left around strokes, in millimetres, so that their soft edges stay. */
  private static final double EDGE = 0.5;

  private static final double MARGIN = 1.5;

  /** As fine as handwriting needs: 150 dots an inch. */
  private static final double PIXELS_PER_MM = 6;

  /** So many greys are enough, and make the file a third as large. */
  private static final int GREYS = 15;

  private static final int WHITE = 255;

  private NoteReader() {}

  /** The note on a sheet; empty when nothing is written there, or there is no room for any. */
  public static Optional<NotePicture> read(FlatSheet sheet, Layout layout) {
    return layout.notes().flatMap(room -> read(sheet, room.grow(-LINE)));
  }

  private static Optional<NotePicture> read(FlatSheet sheet, MmRect room) {
    try (Mats mats = new Mats()) {
      Mat ink = ink(mats.own(sheet.grey().submat(sheet.pixels(room))), mats);
      Mat strokes = strokes(ink, mats);
      double area = Core.countNonZero(strokes) / square(FlatSheet.PIXELS_PER_MM);
      if (area < NOTHING) {
        return Optional.empty();
      }
      Rect trimmed = trimmed(strokes);
      Mat wide = mats.mat();
      Imgproc.dilate(strokes, wide, mats.disc(odd(2 * EDGE)));
      Mat kept = mats.own(Mat.zeros(ink.size(), CvType.CV_32F));
      ink.copyTo(kept, wide);
      return Optional.of(picture(mats.own(kept.submat(trimmed)), mats));
    }
  }

  private static double square(double number) {
    return number * number;
  }

  private static int odd(double mm) {
    return (int) Math.round(mm * FlatSheet.PIXELS_PER_MM) | 1;
  }

  /** How much ink each place has, 0 to 1, whatever the paper's tone; closing by Serra 1982. */
  private static Mat ink(Mat grey, Mats mats) {
    Mat paper = mats.mat();
    Size size = new Size(odd(STROKE), odd(STROKE));
    Mat square = mats.own(Imgproc.getStructuringElement(Imgproc.MORPH_RECT, size));
    Imgproc.morphologyEx(grey, paper, Imgproc.MORPH_CLOSE, square);
    Mat share = mats.mat();
    Core.divide(grey, paper, share, 1, CvType.CV_32F);
    Mat ink = mats.mat();
    double gain = 1 / (PAPER - INK);
    share.convertTo(ink, CvType.CV_32F, -gain, PAPER * gain);
    Core.max(ink, new Scalar(0), ink);
    Core.min(ink, new Scalar(1), ink);
    return ink;
  }

  /** Where there are strokes, 255, and nowhere else, 0. */
  private static Mat strokes(Mat ink, Mats mats) {
    Mat dark = mats.mat();
    Imgproc.threshold(ink, dark, STROKE_DARK, WHITE, Imgproc.THRESH_BINARY);
    dark.convertTo(dark, CvType.CV_8U);
    Mat labels = mats.mat();
    Mat stats = mats.mat();
    int count =
        Imgproc.connectedComponentsWithStats(dark, labels, stats, mats.mat(), 8, CvType.CV_32S);
    double least = SPECK * square(FlatSheet.PIXELS_PER_MM);
    int[] label = new int[(int) labels.total()];
    labels.get(0, 0, label);
    byte[] kept = new byte[label.length];
    boolean[] large = new boolean[count];
    for (int i = 1; i < count; i++) {
      large[i] = stats.get(i, Imgproc.CC_STAT_AREA)[0] >= least;
    }
    for (int i = 0; i < label.length; i++) {
      kept[i] = (byte) (large[label[i]] ? WHITE : 0);
    }
    dark.put(0, 0, kept);
    return dark;
  }

  private static Rect trimmed(Mat strokes) {
    Rect around = Imgproc.boundingRect(strokes);
    int margin = (int) Math.round(MARGIN * FlatSheet.PIXELS_PER_MM);
    int left = Math.max(0, around.x - margin);
    int top = Math.max(0, around.y - margin);
    int right = Math.min(strokes.cols(), around.x + around.width + margin);
    int bottom = Math.min(strokes.rows(), around.y + around.height + margin);
    return new Rect(left, top, right - left, bottom - top);
  }

  private static NotePicture picture(Mat ink, Mats mats) {
    double scale = PIXELS_PER_MM / FlatSheet.PIXELS_PER_MM;
    Mat small = mats.mat();
    Imgproc.resize(ink, small, new Size(), scale, scale, Imgproc.INTER_AREA);
    small.convertTo(small, CvType.CV_8U, GREYS);
    small.convertTo(small, CvType.CV_8U, -(double) WHITE / GREYS, WHITE);
    MatOfByte png = mats.own(new MatOfByte());
    MatOfInt best = mats.own(new MatOfInt(Imgcodecs.IMWRITE_PNG_COMPRESSION, 9));
    Imgcodecs.imencode(".png", small, png, best);
    return new NotePicture(
        ink.cols() / FlatSheet.PIXELS_PER_MM,
        ink.rows() / FlatSheet.PIXELS_PER_MM,
        Base64.getEncoder().encodeToString(png.toArray()));
  }
}
