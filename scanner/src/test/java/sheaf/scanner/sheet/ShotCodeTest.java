package sheaf.scanner.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import java.util.Optional;
import java.util.SplittableRandom;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.lifecycle.BeforeContainer;
import org.opencv.core.CvType;
import org.opencv.core.Mat;
import org.opencv.core.Point;
import org.opencv.core.Scalar;
import org.opencv.imgproc.Imgproc;
import sheaf.core.job.JobId;
import sheaf.core.job.SheetCode;
import sheaf.core.layout.Layouts;
import sheaf.core.layout.MarkFamily;
import sheaf.core.layout.UnitSystem;
import sheaf.core.layout.Variant;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;
import sheaf.core.page.Paper;
import sheaf.scanner.opencv.Mats;
import sheaf.scanner.opencv.NativeLibraries;
import sheaf.scanner.picture.UnreadableException;

/**
 * Codes with modules destroyed: the right sheet is named or none, never another. The symbols are
 * made by ZXing's encoder of ISO/IEC 18004, with the weaker of the two error corrections in use.
 */
class ShotCodeTest {

  private static final MarkFamily FAMILY = MarkFamily.PAIR_TWO_DOTS_LETTER;
  private static final int QUIET_ZONE = 4;

  @BeforeContainer
  static void load() {
    NativeLibraries.load();
  }

  @Example
  void anUnharmedCodeIsRead() {
    assertThat(read(3, 0, 0)).contains(code(3));
  }

  @Example
  void anUnharmedCodeThatOneDecoderDoesNotFindIsReadByTheOther() {
    assertThat(read(-61204, 0, 0)).contains(code(-61204));
  }

  @Property(tries = 400)
  void modulesFlippedAtRandomNeverNameAnotherSheet(
      @ForAll long seed, @ForAll @DoubleRange(max = 0.25) double flipped) {
    assertThat(read(seed, flipped, 0)).isIn(Optional.empty(), Optional.of(code(seed)));
  }

  @Property(tries = 400)
  void holesThroughTheCodesNeverNameAnotherSheet(
      @ForAll long seed, @ForAll @DoubleRange(max = 9) double radius) {
    assertThat(read(seed, 0, radius)).isIn(Optional.empty(), Optional.of(code(seed)));
  }

  @Property(tries = 200)
  void codesOfTwoSheetsAreRefused(@ForAll long seed) {
    try (Mats mats = new Mats()) {
      Mat page = mats.own(blank());
      draw(page, code(seed), FAMILY.codes().get(0), new SplittableRandom(seed), 0, 0);
      draw(page, code(seed + 1), FAMILY.codes().get(1), new SplittableRandom(seed), 0, 0);

      assertThat(read(page)).isEmpty();
    }
  }

  private static SheetCode code(long seed) {
    return new SheetCode(
        JobId.random(new SplittableRandom(seed)),
        (int) Math.floorMod(seed, 999L) + 1,
        Layouts.current(Variant.TWO_DOTS, Paper.LETTER, UnitSystem.INCHES).id());
  }

  /** Reads a sheet whose two codes are harmed, each in a way of its own. */
  private static Optional<SheetCode> read(long seed, double flipped, double hole) {
    try (Mats mats = new Mats()) {
      Mat page = mats.own(blank());
      SplittableRandom random = new SplittableRandom(seed);
      for (MmRect place : FAMILY.codes()) {
        draw(page, code(seed), place, random, flipped, hole);
      }
      return read(page);
    }
  }

  private static Optional<SheetCode> read(Mat page) {
    try {
      return Optional.of(CodeReader.read(page, FlatSheet::toPixel, FAMILY.codes()));
    } catch (UnreadableException e) {
      return Optional.empty();
    }
  }

  private static Mat blank() {
    Paper paper = FAMILY.paper();
    return new Mat(
        (int) (paper.height() * FlatSheet.PIXELS_PER_MM),
        (int) (paper.width() * FlatSheet.PIXELS_PER_MM),
        CvType.CV_8UC1,
        new Scalar(250));
  }

  private static void draw(
      Mat page,
      SheetCode code,
      MmRect place,
      SplittableRandom random,
      double flipped,
      double hole) {
    ByteMatrix modules = modules(code);
    double module = place.width() / (modules.getWidth() + 2 * QUIET_ZONE);
    for (int row = 0; row < modules.getHeight(); row++) {
      for (int column = 0; column < modules.getWidth(); column++) {
        boolean dark = modules.get(column, row) == 1 ^ random.nextDouble() < flipped;
        if (dark) {
          MmRect square =
              new MmRect(
                  place.x() + (QUIET_ZONE + column) * module,
                  place.y() + (QUIET_ZONE + row) * module,
                  module,
                  module);
          fill(page, square);
        }
      }
    }
    shoot(page, place, random, hole);
  }

  private static ByteMatrix modules(SheetCode code) {
    try {
      return Encoder.encode(code.text(), ErrorCorrectionLevel.Q).getMatrix();
    } catch (WriterException e) {
      throw new AssertionError(e);
    }
  }

  private static void fill(Mat page, MmRect square) {
    Point from = FlatSheet.toPixel(new MmPoint(square.x(), square.y()));
    Point to = FlatSheet.toPixel(new MmPoint(square.right(), square.bottom()));
    Imgproc.rectangle(
        page,
        new Point(Math.ceil(from.x), Math.ceil(from.y)),
        new Point(Math.ceil(to.x) - 1, Math.ceil(to.y) - 1),
        new Scalar(20),
        Imgproc.FILLED);
  }

  /** An opening in front of something black or white. */
  private static void shoot(Mat page, MmRect place, SplittableRandom random, double radius) {
    MmPoint centre =
        new MmPoint(
            random.nextDouble(place.x(), place.right()),
            random.nextDouble(place.y(), place.bottom()));
    Scalar behind = new Scalar(random.nextBoolean() ? 20 : 250);
    int reach = (int) (radius * FlatSheet.PIXELS_PER_MM);
    if (reach > 0) {
      Imgproc.circle(page, FlatSheet.toPixel(centre), reach, behind, Imgproc.FILLED);
    }
  }
}
