package sheaf.scanner.proof;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.opencv.core.CvType;
import org.opencv.core.Mat;
import org.opencv.core.MatOfByte;
import org.opencv.core.Scalar;
import org.opencv.imgcodecs.Imgcodecs;
import sheaf.core.layout.Field;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;
import sheaf.core.reading.PageReading;
import sheaf.core.reading.Reason;
import sheaf.core.reading.ReasonCode;
import sheaf.scanner.hole.SlitLine;
import sheaf.scanner.opencv.Mats;
import sheaf.scanner.opencv.NativeLibraries;
import sheaf.scanner.sheet.FlatSheet;

class ProofPictureTest {

  private static final double PIXELS_PER_MM = ProofPicture.WIDTH / 215.9;
  private static final MmPoint DOUBTED = new MmPoint(110, 120);
  private static final SlitLine SLIT = new SlitLine(new MmPoint(153, 160), new MmPoint(165, 160));
  private static final PageReading READING =
      Proofs.pair(List.of(Reason.at(ReasonCode.HOLE_UNSURE, "Is this a hole?", DOUBTED)));

  /** Darker than this on white paper is drawn, in colour as in grey. */
  private static final double DRAWN = 170;

  @BeforeAll
  static void load() {
    NativeLibraries.load();
  }

  @Test
  void aHoleIsARingACrossAWordAndADottedLineToItsDot() {
    List<ProofMark> marks =
        ProofMarks.of(
            Proofs.LAYOUT, READING, List.of(SLIT), ProofLegend.of(Proofs.LAYOUT, READING));

    assertThat(marks)
        .contains(
            new ProofMark.Shaft(Proofs.FIELD, 6),
            new ProofMark.Word(Proofs.FIELD, 3, "field"),
            new ProofMark.Line(
                Proofs.FIELD, Proofs.LAYOUT.dots().get(0).centre(), ProofMark.Style.DOTTED),
            new ProofMark.Word(Proofs.BROADHEAD, 3, "broadhead"),
            new ProofMark.Line(SLIT.rim(), SLIT.tip(), ProofMark.Style.SOLID),
            new ProofMark.Frame(ticked().grow(0.5)),
            new ProofMark.Doubt(DOUBTED, 1));
  }

  private static MmRect ticked() {
    return ((Field.Choice) Proofs.LAYOUT.field("distance"))
        .options().stream().filter(o -> o.value().equals("20")).findAny().orElseThrow().box();
  }

  @Test
  void aFoundShaftIsAWholeRingAndADoubtABrokenOne() {
    try (Mats mats = new Mats()) {
      Mat proof = mats.own(proof());

      assertThat(share(proof, Proofs.FIELD, 3 * PIXELS_PER_MM)).isGreaterThan(0.95);
      assertThat(share(proof, DOUBTED, 6.5 * PIXELS_PER_MM)).isBetween(0.45, 0.8);
    }
  }

  @Test
  void aProofIsAsWideAsPhonesNeedAndHasRoomForItsWords() {
    try (Mats mats = new Mats()) {
      Mat proof = mats.own(proof());

      assertThat(proof.cols()).isEqualTo(1080);
      assertThat(proof.rows()).isGreaterThan((int) (279.4 * PIXELS_PER_MM) + 200);
    }
  }

  private static Mat proof() {
    try (Mats mats = new Mats()) {
      Mat white = mats.own(new Mat(2794, 2159, CvType.CV_8UC1, new Scalar(255)));
      FlatSheet sheet = new FlatSheet(white, Optional.empty(), 8);
      byte[] jpeg = ProofPicture.jpeg(sheet, Proofs.LAYOUT, READING, List.of(SLIT));
      return Imgcodecs.imdecode(mats.own(new MatOfByte(jpeg)), Imgcodecs.IMREAD_GRAYSCALE);
    }
  }

  /** Share of a circle on which something dark is drawn; the sheet starts below the heading. */
  private static double share(Mat proof, MmPoint centre, double radius) {
    int heading = ProofPicture.above(ProofLegend.of(Proofs.LAYOUT, READING)).rows();
    int drawn = 0;
    for (int degree = 0; degree < 360; degree++) {
      double darkest = 255;
      for (double off = -2; off <= 2; off++) {
        double angle = Math.toRadians(degree);
        double x = centre.x() * PIXELS_PER_MM + (radius + off) * Math.cos(angle);
        double y = heading + centre.y() * PIXELS_PER_MM + (radius + off) * Math.sin(angle);
        darkest = Math.min(darkest, proof.get((int) y, (int) x)[0]);
      }
      drawn += darkest < DRAWN ? 1 : 0;
    }
    return drawn / 360.0;
  }
}
