package sheaf.scanner.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.opencv.core.CvType;
import org.opencv.core.Mat;
import org.opencv.core.Point;
import org.opencv.core.Rect;
import org.opencv.core.Scalar;
import org.opencv.imgproc.Imgproc;
import sheaf.core.page.MmPoint;
import sheaf.scanner.opencv.Mats;
import sheaf.scanner.opencv.NativeLibraries;

class LineFinderTest {

  private static final double PER_MM = 10;
  private static final PageMap TEN_PIXELS =
      place -> new Point(place.x() * PER_MM - 0.5, place.y() * PER_MM - 0.5);
  private static final List<PrintedLines.Place> LEVEL =
      List.of(new PrintedLines.Place(new MmPoint(20, 10), 1, 0, 0.3, 0));

  @BeforeAll
  static void load() {
    NativeLibraries.load();
  }

  /** White paper with level lines of 0.3 mm, each from {@code top} pixels down. */
  private static Mat paper(Mats mats, int tone, int... tops) {
    Mat paper = mats.own(new Mat(200, 400, CvType.CV_8UC1, new Scalar(240)));
    for (int top : tops) {
      Imgproc.rectangle(paper, new Rect(0, top, 400, 3), new Scalar(tone), Imgproc.FILLED);
    }
    return paper;
  }

  @Test
  void aLineThatLiesOffItsPlaceIsFoundWhereItIs() {
    try (Mats mats = new Mats()) {
      // Its middle is 1.15 mm below the place where it should be.
      List<Sighting> seen = LineFinder.find(paper(mats, 120, 110), TEN_PIXELS, LEVEL, 2);

      assertThat(seen).hasSize(1);
      assertThat(Math.abs(seen.get(0).offMm(TEN_PIXELS))).isCloseTo(1.15, within(0.03));
    }
  }

  @Test
  void aFaintLineOnAColouredPictureIsFoundToo() {
    try (Mats mats = new Mats()) {
      Mat colour = mats.mat();
      Imgproc.cvtColor(paper(mats, 200, 96), colour, Imgproc.COLOR_GRAY2BGR);

      assertThat(LineFinder.find(colour, TEN_PIXELS, LEVEL, 2)).hasSize(1);
    }
  }

  @Test
  void whichOfTwoLinesIsMeantIsNotGuessed() {
    try (Mats mats = new Mats()) {
      assertThat(LineFinder.find(paper(mats, 120, 90, 112), TEN_PIXELS, LEVEL, 2)).isEmpty();
    }
  }

  @Test
  void whereNothingIsPrintedNothingIsSeen() {
    try (Mats mats = new Mats()) {
      assertThat(LineFinder.find(paper(mats, 120), TEN_PIXELS, LEVEL, 2)).isEmpty();
    }
  }
}
