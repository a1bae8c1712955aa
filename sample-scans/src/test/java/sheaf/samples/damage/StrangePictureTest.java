package sheaf.samples.damage;

import static org.assertj.core.api.Assertions.assertThat;
import static sheaf.samples.damage.Pictures.blurred;
import static sheaf.samples.damage.Pictures.clamp;
import static sheaf.samples.damage.Pictures.mirrored;
import static sheaf.samples.damage.Pictures.part;
import static sheaf.samples.damage.Pictures.scaled;
import static sheaf.samples.damage.Pictures.together;
import static sheaf.samples.damage.Pictures.toned;

import java.awt.image.BufferedImage;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import sheaf.core.job.SheetCode;
import sheaf.core.page.Paper;
import sheaf.core.reading.PageReading;
import sheaf.core.reading.ReadingState;
import sheaf.core.reading.ReasonCode;
import sheaf.samples.CommittedSamples.CommittedSample;
import sheaf.samples.scan.ScanFile;
import sheaf.samples.scene.Backdrop;
import sheaf.samples.scene.Behind;
import sheaf.samples.scene.Page;

/** Pictures of something else than one whole sheet, face up. */
@Tag("slow")
class StrangePictureTest {

  private static final CommittedSample PAIR = Readings.sample("job-2-first-pair-backing.jpg");
  private static final BufferedImage SHEET = Pictures.of(PAIR.file());
  private static final BufferedImage CARD =
      Pictures.of(Readings.sample("job-1-bench-card.jpg").file());
  private static final BufferedImage ANOTHER =
      Pictures.of(Readings.sample("job-4-last-pair-backing.jpg").file());

  @Test
  void aMirroredPictureIsCalledMirrored() {
    Readings.assertRefused(
        Readings.of(mirrored(SHEET)), ReasonCode.MIRRORED, "The picture is mirrored");
  }

  @Test
  void aSheetSeenThroughFromBehindIsCalledSo() {
    BufferedImage behind = toned(blurred(mirrored(SHEET), 1.2), g -> clamp(225 - (255 - g) * 0.25));

    Readings.assertRefused(Readings.of(behind), ReasonCode.MIRRORED, "the sheet from behind");
  }

  @Test
  void aNegativeIsCalledANegative() {
    Readings.assertRefused(
        Readings.of(toned(SHEET, grey -> 255 - grey)), ReasonCode.NEGATIVE, "a negative");
  }

  @Test
  void aBlankPageIsCalledBlank() {
    BufferedImage blank = part(SHEET, 0.55, 0.2, 0.25, 0.15);

    Readings.assertRefused(Readings.of(scaled(blank, 4, 6)), ReasonCode.NO_SHEET, "is blank");
  }

  @ParameterizedTest
  @ValueSource(strings = {"WOOD", "FOAM", "BACKING"})
  void aPictureOfSomethingElseIsNoSheet(String what) {
    Backdrop thing = Backdrop.of(Behind.valueOf(what), 1, Paper.LETTER, new SplittableRandom(3));
    BufferedImage picture = new BufferedImage(1200, 1600, BufferedImage.TYPE_INT_RGB);
    float[] rgb = new float[3];
    for (int y = 0; y < picture.getHeight(); y++) {
      for (int x = 0; x < picture.getWidth(); x++) {
        thing.light(x / 5.5, y / 5.5, rgb);
        picture.setRGB(x, y, clamp(rgb[0]) << 16 | clamp(rgb[1]) << 8 | clamp(rgb[2]));
      }
    }

    Readings.assertRefused(Readings.of(picture), ReasonCode.NO_SHEET, "No Sheaf sheet is seen");
  }

  @ParameterizedTest
  @CsvSource({"0, 0, 1, 0.5", "0, 0.5, 1, 0.5", "0, 0, 0.5, 1", "0.5, 0, 0.5, 1"})
  void halfASheetIsRefused(double x, double y, double width, double height) {
    Readings.assertRefused(
        Readings.of(part(SHEET, x, y, width, height)),
        ReasonCode.TOO_FEW_MARKS,
        "take the whole sheet");
  }

  @ParameterizedTest
  @CsvSource({"0, 0, 1, 0.6", "0, 0.4, 1, 0.6", "0, 0, 0.6, 1", "0.45, 0, 0.55, 1"})
  void aSheetWithPartsBeyondTheEdgeIsRefusedThoughEnoughMarksAreSeen(
      double x, double y, double width, double height) {
    for (BufferedImage sheet : new BufferedImage[] {SHEET, CARD}) {
      Readings.assertRefused(
          Readings.of(part(sheet, x, y, width, height)),
          ReasonCode.PARTLY_OUTSIDE,
          "outside the picture");
    }
  }

  @Test
  void aSheetWhoseEmptyMarginIsBeyondTheEdgeIsReadRightly() {
    Readings.assertRight(Readings.of(part(SHEET, 0, 0, 1, 0.9)), PAIR.truth());
  }

  @ParameterizedTest
  @CsvSource({"1.02, 0", "0.5, 0", "0, 0.5", "0.3, 0.3", "0.1, 0.1", "0.05, 0.6"})
  void twoSheetsBesideOrOverEachOtherAreRefused(double x, double y) {
    int right = (int) (x * SHEET.getWidth());
    int down = (int) (y * SHEET.getHeight());

    Readings.assertRefused(
        Readings.of(together(SHEET, ANOTHER, right, down)),
        ReasonCode.TWO_SHEETS,
        "More than one sheet");
    Readings.assertRefused(
        Readings.of(together(SHEET, CARD, right, down)),
        ReasonCode.TWO_SHEETS,
        "More than one sheet");
  }

  @ParameterizedTest
  @ValueSource(ints = {0, 15, 60})
  void halvesOfTwoSheetsPutTogetherAreNoSheet(int shift) {
    BufferedImage left = part(SHEET, 0, 0, 0.5, 1);
    BufferedImage right = part(ANOTHER, 0.5, 0, 0.5, 1);

    PageReading reading = Readings.of(together(left, right, left.getWidth(), shift));

    Readings.assertRefused(reading, ReasonCode.CODE_AGAINST_MARKS, "take one picture of each");
  }

  @Test
  void aScreenshotOfThePapersIsRefusedOrABlankSheet() {
    SheetCode code = SheetCode.parse(PAIR.truth().code()).orElseThrow();

    Readings.assertRefused(
        Readings.of(screenshot(code, 900)), ReasonCode.TOO_COARSE, "scan at 150 dpi");
    PageReading large = Readings.of(screenshot(code, 2000));
    assertThat(large.state()).isEqualTo(ReadingState.READ);
    assertThat(large.sheet()).contains(code);
    assertThat(large.holes()).isEmpty();
    assertThat(large.fields()).allMatch(field -> field.text().isEmpty());
  }

  private static BufferedImage screenshot(SheetCode code, int height) {
    Page page = Page.print(code, height / code.layout().paper().height());
    BufferedImage screen =
        new BufferedImage(page.width(), page.height(), BufferedImage.TYPE_INT_RGB);
    screen.setRGB(0, 0, page.width(), page.height(), page.pixels(), 0, page.width());
    return screen;
  }

  @Test
  void aScanStretchedOneWayIsAskedAbout() {
    byte[] stretched = ScanFile.jpeg(scaled(SHEET, 0.95, 1), 88, PAIR.truth().dpi());

    Readings.assertAsks(Readings.of(stretched), ReasonCode.SCALE_UNEVEN, "95.0 % of its width");
  }
}
