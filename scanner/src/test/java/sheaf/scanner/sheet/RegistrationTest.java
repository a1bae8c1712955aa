package sheaf.scanner.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.opencv.core.Core;
import org.opencv.core.CvType;
import org.opencv.core.Mat;
import org.opencv.core.MatOfPoint2f;
import org.opencv.core.Point;
import org.opencv.imgproc.Imgproc;
import sheaf.core.layout.MarkFamily;
import sheaf.core.page.MmPoint;
import sheaf.core.reading.ReasonCode;
import sheaf.scanner.opencv.Mats;
import sheaf.scanner.opencv.NativeLibraries;
import sheaf.scanner.picture.UnreadableException;

class RegistrationTest {

  private static final MarkFamily LETTER = MarkFamily.PAIR_TWO_DOTS_LETTER;
  private static final List<MmPoint> PLACES =
      List.of(new MmPoint(60, 60), new MmPoint(108, 140), new MmPoint(180, 220));

  @BeforeAll
  static void load() {
    NativeLibraries.load();
  }

  @Test
  void aPlaceOnThePageIsFoundToATenthOfAMillimetre() throws UnreadableException {
    try (Mats mats = new Mats()) {
      Registration.Marks marks = Registration.of(mats.own(DrawnSheet.of(LETTER)));
      Geometry geometry = new Geometry(LETTER, Registration.flat(marks), marks.marks().size());

      assertThat(marks.family()).isEqualTo(LETTER);
      assertThat(geometry.marks()).isEqualTo(8);
      assertThat(geometry.pixelsPerMm()).isBetween(7.95, 8.05);
      for (MmPoint place : PLACES) {
        assertThat(off(geometry.toPixel(place), DrawnSheet.at(place))).isLessThan(0.1);
      }
    }
  }

  @Test
  void fourMarksThatSpanTheSheetAreEnough() throws UnreadableException {
    try (Mats mats = new Mats()) {
      Registration.Marks marks = Registration.of(mats.own(DrawnSheet.of(LETTER, 1, 3, 5, 7)));

      assertThat(marks.marks()).hasSize(4);
      for (MmPoint place : PLACES) {
        assertThat(off(Registration.flat(marks).toPixel(place), DrawnSheet.at(place)))
            .isLessThan(0.15);
      }
    }
  }

  @Test
  void aSlantOfAThirdAcrossThePageIsTakenOut() throws UnreadableException {
    try (Mats mats = new Mats()) {
      Mat drawn = mats.own(DrawnSheet.of(LETTER));
      double w = drawn.cols();
      double h = drawn.rows();
      MatOfPoint2f square =
          mats.own(
              new MatOfPoint2f(new Point(0, 0), new Point(w, 0), new Point(w, h), new Point(0, h)));
      MatOfPoint2f leaning =
          mats.own(
              new MatOfPoint2f(
                  new Point(w * 0.15, 60),
                  new Point(w * 0.85, 20),
                  new Point(w - 5, h - 5),
                  new Point(5, h - 40)));
      Mat map = mats.own(Imgproc.getPerspectiveTransform(square, leaning));
      FlatPage flat = Registration.flat(Registration.of(mats.own(DrawnSheet.slanted(drawn, map))));

      for (MmPoint place : PLACES) {
        MatOfPoint2f seen = mats.own(new MatOfPoint2f());
        Core.perspectiveTransform(mats.own(new MatOfPoint2f(DrawnSheet.at(place))), seen, map);
        assertThat(off(flat.toPixel(place), seen.toArray()[0])).isLessThan(0.15);
      }
      assertThat(flat.foreshortening(LETTER.paper())).isGreaterThan(0.1);
    }
  }

  @Test
  void threeMarksAreRefusedWithTheNumberSeen() {
    refuses(
        DrawnSheet.of(LETTER, 0, 1, 2, 3, 4), ReasonCode.TOO_FEW_MARKS, "3 of the sheet's eight");
  }

  @Test
  void twoMarksAreRefusedWithTheNumberSeenAndWhatToDo() {
    refuses(
        DrawnSheet.of(LETTER, 0, 1, 2, 3, 4, 5),
        ReasonCode.TOO_FEW_MARKS,
        "2 of the sheet's eight register marks are seen, four are needed: take the whole sheet, flat, sharp and evenly lit.");
  }

  @Test
  void threeMarksOnOneSideAreRefused() {
    refuses(
        DrawnSheet.of(LETTER, 3, 4, 5, 6, 7),
        ReasonCode.TOO_FEW_MARKS,
        "3 of the sheet's eight register marks are seen, four are needed");
  }

  @Test
  void aColourPictureShowsTheSameMarksAsAGreyOne() throws UnreadableException {
    try (Mats mats = new Mats()) {
      Mat grey = mats.own(DrawnSheet.of(LETTER));
      Mat colour = mats.mat();
      Imgproc.cvtColor(grey, colour, Imgproc.COLOR_GRAY2BGR);

      assertThat(Registration.of(colour)).isEqualTo(Registration.of(grey));
    }
  }

  @Test
  void marksAlongOneEdgeOnlyAreRefused() {
    refuses(DrawnSheet.of(LETTER, 3, 4, 5, 6), ReasonCode.TOO_FEW_MARKS, "only a part");
  }

  @Test
  void aMirroredPictureIsCalledMirrored() {
    Mat drawn = DrawnSheet.of(LETTER);
    Core.flip(drawn, drawn, 1);

    refuses(drawn, ReasonCode.MIRRORED, "mirrored");
  }

  @Test
  void twoSheetsInOnePictureAreRefused() {
    Mat both = new Mat();
    Mat one = DrawnSheet.of(LETTER);
    Mat other = DrawnSheet.of(MarkFamily.BENCH_CARD_FRONT_LETTER);
    Core.hconcat(List.of(one, other), both);

    refuses(
        both,
        ReasonCode.TWO_SHEETS,
        "More than one sheet is in this picture: take one picture of each.");
  }

  @Test
  void twoSheetsOfOneKindInOnePictureAreRefused() {
    Mat both = new Mat();
    Core.hconcat(List.of(DrawnSheet.of(LETTER), DrawnSheet.of(LETTER)), both);

    refuses(both, ReasonCode.TWO_SHEETS, "More than one sheet");
  }

  @Test
  void aPictureOfSomethingElseIsNoSheet() {
    Mat grey = new Mat(1200, 900, CvType.CV_8UC1);
    Core.randu(grey, 0, 255);

    refuses(grey, ReasonCode.NO_SHEET, "No Sheaf sheet");
  }

  private static void refuses(Mat picture, ReasonCode code, String words) {
    try (Mats mats = new Mats()) {
      mats.own(picture);
      assertThatThrownBy(() -> Registration.of(picture))
          .isInstanceOfSatisfying(
              UnreadableException.class,
              refused -> {
                assertThat(refused.reason().code()).isEqualTo(code);
                assertThat(refused.reason().message()).contains(words);
              });
    }
  }

  /** Distance in millimetres. */
  private static double off(Point a, Point b) {
    return Math.hypot(a.x - b.x, a.y - b.y) / DrawnSheet.PIXELS_PER_MM;
  }
}
