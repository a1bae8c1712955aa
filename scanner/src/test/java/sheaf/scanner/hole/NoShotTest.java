package sheaf.scanner.hole;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.opencv.core.Core;
import org.opencv.core.CvType;
import org.opencv.core.Mat;
import org.opencv.core.Point;
import org.opencv.core.Rect;
import org.opencv.core.Scalar;
import org.opencv.core.Size;
import org.opencv.imgproc.Imgproc;
import sheaf.scanner.opencv.NativeLibraries;

class NoShotTest {

  private static final double PER_MM = 5;
  private static final Scalar OPEN = new Scalar(255);

  private Mat page;

  @BeforeEach
  void draw() {
    NativeLibraries.load();
    page = Mat.zeros(300, 240, CvType.CV_8U);
  }

  @AfterEach
  void release() {
    page.release();
  }

  /** A ragged hole is as wide as a punched one, and not round. */
  private void shoot() {
    Imgproc.ellipse(page, new Point(120, 150), new Size(18, 13), 30, 0, 360, OPEN, -1);
  }

  private int left() {
    NoShot.clear(page, PER_MM);
    return Core.countNonZero(page);
  }

  @Test
  void aRaggedHoleStays() {
    shoot();
    int open = Core.countNonZero(page);
    assertThat(left()).isEqualTo(open);
  }

  @Test
  void aPunchedHoleGoes() {
    Imgproc.circle(page, new Point(120, 150), 15, OPEN, -1);
    assertThat(left()).isZero();
  }

  @Test
  void halfAPunchedHoleNearTheEdgeGoesWithIt() {
    Imgproc.circle(page, new Point(60, 150), 15, OPEN, -1);
    Imgproc.rectangle(page, new Rect(40, 130, 17, 40), new Scalar(0), -1);
    assertThat(left()).isZero();
  }

  @Test
  void aHoleWithATearNearTheEdgeStays() {
    Imgproc.circle(page, new Point(60, 150), 15, OPEN, -1);
    Imgproc.line(page, new Point(60, 150), new Point(84, 160), OPEN, 6);
    int open = Core.countNonZero(page);
    assertThat(left()).isEqualTo(open);
  }

  @Test
  void aTornEdgeGoes() {
    Imgproc.circle(page, new Point(2, 100), 20, OPEN, -1);
    assertThat(left()).isZero();
  }

  @Test
  void wherePaperIsMissingAllAroundOnlyTheHoleStays() {
    shoot();
    int open = Core.countNonZero(page);
    Imgproc.rectangle(page, new Rect(0, 0, 240, 300), OPEN, 12);
    assertThat(left()).isEqualTo(open);
  }
}
