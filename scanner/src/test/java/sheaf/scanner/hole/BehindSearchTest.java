package sheaf.scanner.hole;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.opencv.core.CvType;
import org.opencv.core.Mat;
import org.opencv.core.Point;
import org.opencv.core.Rect;
import org.opencv.core.Scalar;
import org.opencv.core.Size;
import org.opencv.imgproc.Imgproc;
import sheaf.scanner.opencv.NativeLibraries;

/** On cream paper, 100 mm square, at ten pixels a millimetre. */
class BehindSearchTest {

  private static final int SIDE = 1000;
  private static final Scalar PAPER = new Scalar(215, 228, 236);
  private static final Scalar WOOD = new Scalar(72, 122, 166);
  private static final Scalar SKY = new Scalar(228, 220, 212);
  private static final Scalar BLUE_PEN = new Scalar(120, 50, 35);

  private Mat sheet;

  @BeforeEach
  void draw() {
    NativeLibraries.load();
    sheet = new Mat(SIDE, SIDE, CvType.CV_8UC3, PAPER);
  }

  @AfterEach
  void release() {
    sheet.release();
  }

  private void holes(int count, Scalar behind) {
    for (int i = 0; i < count; i++) {
      Imgproc.circle(sheet, new Point(150 + 200 * i, 400), 28, behind, -1);
    }
  }

  private Optional<BehindColour> found() {
    Rect all = new Rect(0, 0, SIDE, SIDE);
    return BehindSearch.in(sheet, PaperTone.of(sheet), all, 3);
  }

  private static float share(BehindColour behind, Scalar colour) {
    return behind.share(
        behind.amount(
            (float) (colour.val[0] / PAPER.val[0]),
            (float) (colour.val[1] / PAPER.val[1]),
            (float) (colour.val[2] / PAPER.val[2])));
  }

  @Test
  void woodIsFoundBehindThreeHoles() {
    holes(3, WOOD);
    assertThat(share(found().orElseThrow(), WOOD)).isEqualTo(1);
  }

  @Test
  void skyIsFoundThoughItIsHardlyDarkerThanPaper() {
    holes(3, SKY);
    assertThat(share(found().orElseThrow(), SKY)).isEqualTo(1);
  }

  @Test
  void woodHalfInShadowIsOneColour() {
    holes(2, WOOD);
    Imgproc.circle(sheet, new Point(700, 700), 28, new Scalar(55, 94, 128), -1);
    assertThat(share(found().orElseThrow(), WOOD)).isEqualTo(1);
  }

  @Test
  void twoSpotsOfSixAreNoColourBehind() {
    holes(2, WOOD);
    assertThat(found()).isEmpty();
  }

  @Test
  void greyHolesShowNoColour() {
    holes(3, new Scalar(108, 114, 118));
    assertThat(found()).isEmpty();
  }

  @Test
  void aPensBlurredLinesAreTooNarrow() {
    for (int i = 0; i < 6; i++) {
      Point from = new Point(120 + 140 * i, 300);
      Imgproc.line(sheet, from, new Point(140 + 140 * i, 380), BLUE_PEN, 8);
    }
    Imgproc.blur(sheet, sheet, new Size(9, 9));
    assertThat(found()).isEmpty();
  }

  @Test
  void tapeIsTooLarge() {
    for (int i = 0; i < 3; i++) {
      Imgproc.rectangle(sheet, new Rect(50 + 320 * i, 300, 150, 300), WOOD, -1);
    }
    assertThat(found()).isEmpty();
  }
}
