package sheaf.scanner.hole;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.opencv.core.CvType;
import org.opencv.core.Mat;
import org.opencv.core.Point;
import org.opencv.core.Scalar;
import org.opencv.imgproc.Imgproc;
import sheaf.scanner.opencv.Mats;
import sheaf.scanner.opencv.NativeLibraries;

/** Lines are drawn upright through a sheet of 40 mm, 20 mm from its left edge. */
class PenInkTest {

  private static final int SIDE = 400;

  private static final Scalar PAPER = new Scalar(240, 240, 240);

  /**
   * A slit of a pixel's width in front of the backing, as bright and as colourful as scans show.
   */
  private static final Scalar HAIRLINE = new Scalar(125, 95, 150);

  private static final Scalar BLUE_PEN = new Scalar(140, 55, 40);

  private static final Scalar BLACK_PEN = new Scalar(50, 48, 46);

  @Test
  void aPensLineIsInk() {
    assertThat(isInk(BLUE_PEN, 6)).isTrue();
    assertThat(isInk(BLACK_PEN, 6)).isTrue();
  }

  @Test
  void aHairlineOfTheBackingIsNone() {
    assertThat(isInk(HAIRLINE, 1)).isFalse();
  }

  private static boolean isInk(Scalar colour, int width) {
    NativeLibraries.load();
    try (Mats mats = new Mats()) {
      Mat sheet = mats.own(new Mat(SIDE, SIDE, CvType.CV_8UC3, PAPER));
      Imgproc.line(sheet, new Point(200, 0), new Point(200, SIDE), colour, width);
      Square all = Square.around(200, 200, 150);
      Square tile = Square.around(200, 250, 20);
      boolean[] ink = new boolean[tile.pixels()];
      PenInk.in(sheet, all, Optional.of(BehindColour.BACKING)).addTo(ink, tile);
      return ink[ink.length / 2];
    }
  }
}
