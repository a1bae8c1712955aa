package sheaf.scanner.proof;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.opencv.core.Core;
import org.opencv.core.Mat;
import org.opencv.core.MatOfByte;
import org.opencv.core.Point;
import org.opencv.core.Scalar;
import org.opencv.core.Size;
import org.opencv.imgcodecs.Imgcodecs;
import org.opencv.imgproc.Imgproc;
import sheaf.core.page.MmPoint;
import sheaf.core.reading.Head;
import sheaf.core.reading.Hole;
import sheaf.core.reading.PageReading;
import sheaf.core.reading.PrintScale;
import sheaf.core.reading.Reason;
import sheaf.core.reading.TearReading;
import sheaf.scanner.opencv.Mats;
import sheaf.scanner.sheet.FlatSheet;

/**
 * The flattened sheet with what was found drawn over it: a ring around each hole with its axis and
 * its head (F field point, B broadhead, ? unknown), a ring and a cross at the ends of each tear,
 * and a numbered box around each doubt.
 *
 * <p>Every mark is a dark line between two white ones, so that it shows on paper and on print, in
 * colour and in grey.
 */
public final class ProofPicture {

  /** Pixels for each millimetre of the proof: a letter page is then 1080 pixels wide. */
  private static final double PIXELS_PER_MM = 5;

  /** The ring around a tear's point, a little wider than a usual shaft, in millimetres. */
  private static final double POINT_RING = 3.8;

  private static final Scalar WHITE = new Scalar(255, 255, 255);
  private static final Scalar BLACK = new Scalar(0, 0, 0);

  /** Blue for what was found, orange-red for doubts; both dark in grey. In blue, green, red. */
  private static final Scalar FOUND = new Scalar(170, 70, 0);

  private static final Scalar DOUBT = new Scalar(0, 60, 210);

  private static final int FONT = Imgproc.FONT_HERSHEY_SIMPLEX;
  private static final int LINE_HEIGHT = 26;
  private static final int MARGIN = 12;
  private static final double TEXT = 0.6;
  private static final int CHARACTERS_A_LINE = 88;

  private final Mat canvas;

  private ProofPicture(Mat canvas) {
    this.canvas = canvas;
  }

  /** Draws the proof of a page as a PNG. */
  public static byte[] png(FlatSheet sheet, PageReading reading) {
    try (Mats mats = new Mats()) {
      Mat canvas = mats.mat();
      Mat source = sheet.colour().orElse(sheet.grey());
      double scale = PIXELS_PER_MM / FlatSheet.PIXELS_PER_MM;
      Imgproc.resize(source, canvas, new Size(), scale, scale, Imgproc.INTER_AREA);
      if (canvas.channels() == 1) {
        Imgproc.cvtColor(canvas, canvas, Imgproc.COLOR_GRAY2BGR);
      }
      ProofPicture proof = new ProofPicture(canvas);
      reading.holes().forEach(proof::hole);
      reading.tears().forEach(tear -> proof.tear(tear, reading.printScale()));
      proof.doubts(reading.reasons());
      Mat captioned = mats.own(proof.captioned(ProofCaption.of(reading, CHARACTERS_A_LINE)));
      MatOfByte png = mats.own(new MatOfByte());
      Imgcodecs.imencode(".png", captioned, png);
      return png.toArray();
    }
  }

  private void hole(Hole hole) {
    Point axis = at(hole.axis());
    int radius = (int) Math.round((hole.diameter() / 2 + 0.8) * PIXELS_PER_MM);
    outlined(FOUND, (colour, width) -> Imgproc.circle(canvas, axis, radius, colour, width));
    int arm = 6;
    outlined(
        FOUND,
        (colour, width) -> {
          Imgproc.line(canvas, moved(axis, -arm, 0), moved(axis, arm, 0), colour, width);
          Imgproc.line(canvas, moved(axis, 0, -arm), moved(axis, 0, arm), colour, width);
        });
    String head = hole.head() == Head.UNKNOWN ? "?" : hole.head().name().substring(0, 1);
    text(head, moved(axis, radius + 4.0, -radius * 0.6), 0.8, FOUND);
  }

  /** A ring at the point, an arrow to the tail with a cross on it, and how long it is. */
  private void tear(TearReading tear, Optional<PrintScale> scale) {
    Point point = at(tear.point());
    Point tail = at(tear.tail());
    int radius = (int) Math.round(POINT_RING * PIXELS_PER_MM);
    int arm = radius / 2;
    outlined(
        FOUND,
        (colour, width) -> {
          Imgproc.circle(canvas, point, radius, colour, width);
          Imgproc.line(canvas, point, tail, colour, width);
          Imgproc.line(canvas, moved(tail, -arm, -arm), moved(tail, arm, arm), colour, width);
          Imgproc.line(canvas, moved(tail, -arm, arm), moved(tail, arm, -arm), colour, width);
        });
    String length =
        tear.isBulletHole()
            ? "bullet hole"
            : String.format(Locale.ROOT, "%.1f mm", tear.pointToTail(scale).length());
    text(length, moved(tail, radius + 4.0, -radius * 0.6), 0.7, FOUND);
  }

  private void doubts(List<Reason> reasons) {
    int number = 0;
    for (Reason reason : reasons) {
      number++;
      if (reason.place().isPresent()) {
        Point place = at(reason.place().get());
        int half = (int) (6 * PIXELS_PER_MM);
        outlined(
            DOUBT,
            (colour, width) ->
                Imgproc.rectangle(
                    canvas, moved(place, -half, -half), moved(place, half, half), colour, width));
        text(String.valueOf(number), moved(place, -half + 4.0, -half + 22.0), 0.7, DOUBT);
      }
    }
  }

  /** The picture with a white band of text above it. */
  private Mat captioned(List<String> lines) {
    Mat whole = new Mat();
    int band = lines.size() * LINE_HEIGHT + 2 * MARGIN;
    Core.copyMakeBorder(canvas, whole, band, 0, 0, 0, Core.BORDER_CONSTANT, WHITE);
    int baseline = MARGIN + LINE_HEIGHT - 8;
    for (String line : lines) {
      Imgproc.putText(
          whole, line, new Point(MARGIN, baseline), FONT, TEXT, BLACK, 1, Imgproc.LINE_AA);
      baseline += LINE_HEIGHT;
    }
    return whole;
  }

  private void text(String text, Point at, double size, Scalar colour) {
    Imgproc.putText(canvas, text, at, FONT, size, WHITE, 6, Imgproc.LINE_AA);
    Imgproc.putText(canvas, text, at, FONT, size, colour, 2, Imgproc.LINE_AA);
  }

  private static void outlined(Scalar colour, Stroke stroke) {
    stroke.draw(WHITE, 5);
    stroke.draw(colour, 2);
  }

  private interface Stroke {
    void draw(Scalar colour, int width);
  }

  private static Point at(MmPoint place) {
    return new Point(place.x() * PIXELS_PER_MM - 0.5, place.y() * PIXELS_PER_MM - 0.5);
  }

  private static Point moved(Point from, double right, double down) {
    return new Point(from.x + right, from.y + down);
  }
}
