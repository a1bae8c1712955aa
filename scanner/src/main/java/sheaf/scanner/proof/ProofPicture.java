package sheaf.scanner.proof;

import java.util.List;
import org.opencv.core.Core;
import org.opencv.core.Mat;
import org.opencv.core.MatOfByte;
import org.opencv.core.MatOfInt;
import org.opencv.core.Size;
import org.opencv.imgcodecs.Imgcodecs;
import org.opencv.imgproc.Imgproc;
import sheaf.core.layout.Layout;
import sheaf.core.reading.PageReading;
import sheaf.scanner.hole.SlitLine;
import sheaf.scanner.opencv.Mats;
import sheaf.scanner.sheet.FlatSheet;

/**
 * The flattened sheet with what was found drawn over it, how the reading ended above it, and every
 * doubt in words below: to be looked at on a phone or printed in black and white.
 */
public final class ProofPicture {

  /** Width in pixels of every proof, whatever the paper. */
  static final int WIDTH = 1080;

  /** Keeps a proof well below 400 kB and hairline slits visible. */
  private static final int JPEG_QUALITY = 75;

  private ProofPicture() {}

  /**
   * Draws the proof of a page as a JPEG.
   *
   * @param slits of the holes in the reading
   */
  public static byte[] jpeg(
      FlatSheet sheet, Layout layout, PageReading reading, List<SlitLine> slits) {
    ProofLegend legend = ProofLegend.of(layout, reading);
    try (Mats mats = new Mats()) {
      Mat drawn = mats.own(small(sheet));
      ProofCanvas canvas = new ProofCanvas(drawn, WIDTH / layout.page().width());
      // A word or number there would cover what a person must see.
      layout.boxes().forEach(canvas::keepOff);
      ProofMarks.labels(layout).forEach(canvas::ratherKeepOff);
      canvas.draw(ProofMarks.of(layout, reading, slits, legend));
      Mat whole = mats.mat();
      Core.vconcat(List.of(mats.own(above(legend)), drawn, mats.own(below(legend))), whole);
      MatOfByte jpeg = mats.own(new MatOfByte());
      MatOfInt quality = mats.own(new MatOfInt(Imgcodecs.IMWRITE_JPEG_QUALITY, JPEG_QUALITY));
      Imgcodecs.imencode(".jpg", whole, jpeg, quality);
      return jpeg.toArray();
    }
  }

  /** The words above the sheet; the caller releases it. */
  static Mat above(ProofLegend legend) {
    ProofBand band = new ProofBand().say(ProofText.HEADING, legend.ending());
    legend.heading().forEach(line -> band.say(ProofText.SENTENCE, line));
    return band.draw();
  }

  private static Mat below(ProofLegend legend) {
    ProofBand band = new ProofBand();
    legend.entries().forEach(entry -> band.list(entry).gap());
    legend.key().forEach(line -> band.say(ProofText.SENTENCE, line));
    return band.draw();
  }

  /** The sheet at a proof's size, in colour so that coloured marks can be drawn on it. */
  private static Mat small(FlatSheet sheet) {
    Mat source = sheet.colour().orElse(sheet.grey());
    Mat small = new Mat();
    Size size = new Size(WIDTH, Math.round(source.rows() * (double) WIDTH / source.cols()));
    Imgproc.resize(source, small, size, 0, 0, Imgproc.INTER_AREA);
    if (small.channels() == 1) {
      Imgproc.cvtColor(small, small, Imgproc.COLOR_GRAY2BGR);
    }
    return small;
  }
}
