package sheaf.samples.scan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import sheaf.core.job.JobId;
import sheaf.core.job.SheetCode;
import sheaf.core.layout.Layout;
import sheaf.core.layout.Layouts;
import sheaf.core.layout.UnitSystem;
import sheaf.core.layout.Variant;
import sheaf.core.page.MmRect;
import sheaf.core.page.Paper;
import sheaf.core.reading.PrintScale;
import sheaf.samples.scene.Backdrop;
import sheaf.samples.scene.Behind;
import sheaf.samples.scene.Page;

class FlatbedScanTest {

  private static final int DPI = 100;
  private static final double PER_MM = DPI / 25.4;

  /** The glass that is scanned beyond the sheet. */
  private static final double BEYOND = 4;

  private static final Layout LAYOUT =
      Layouts.current(Variant.TWO_DOTS, Paper.LETTER, UnitSystem.INCHES);

  private static BufferedImage scan(int turns, PrintScale scale) {
    SplittableRandom random = new SplittableRandom(1);
    Page page = Page.print(new SheetCode(JobId.random(random), 1, LAYOUT.id()), 150 / 25.4);
    Backdrop lid = Backdrop.of(Behind.WHITE, 1, Paper.LETTER, random);
    return new FlatbedScan(DPI, false, turns, 0, scale, 0.3, 0, 1, 0, 0, 1).scan(page, lid);
  }

  private static int grey(BufferedImage image, double x, double y) {
    int column = (int) Math.round(x * PER_MM);
    int row = (int) Math.round(y * PER_MM);
    return image.getRaster().getSample(column, row, 0);
  }

  /** Where a row of pixels turns dark for the first time, in millimetres from its left end. */
  private static double firstDark(BufferedImage image, double from, double y) {
    for (double x = from; ; x += 0.05) {
      if (grey(image, x, y) < 128) {
        return x;
      }
    }
  }

  @Test
  void aMarkLiesOnTheGlassWhereTheLayoutPutsIt() {
    MmRect mark = LAYOUT.marks().get(0).square();
    BufferedImage image = scan(0, PrintScale.TRUE_SIZE);
    double left = firstDark(image, BEYOND + 3, BEYOND + mark.y() + 1);
    assertThat(left).isCloseTo(BEYOND + mark.x(), within(0.2));
    assertThat(image.getWidth()).isEqualTo((int) Math.round((215.9 + 2 * BEYOND) * PER_MM));
  }

  @Test
  void aPrinterThatShrinksMovesTheMarks() {
    MmRect mark = LAYOUT.marks().get(3).square();
    BufferedImage image = scan(0, new PrintScale(0.95, 0.95));
    double y = BEYOND + (mark.y() + 1) * 0.95;
    double left = firstDark(image, BEYOND + (mark.x() - 3) * 0.95, y);
    assertThat(left).isCloseTo(BEYOND + mark.x() * 0.95, within(0.25));
  }

  @Test
  void aSheetThatLiesUpsideDownIsScannedUpsideDown() {
    BufferedImage upright = scan(0, PrintScale.TRUE_SIZE);
    BufferedImage turned = scan(2, PrintScale.TRUE_SIZE);
    double difference = 0;
    int width = upright.getWidth();
    int height = upright.getHeight();
    for (int y = 0; y < height; y += 7) {
      for (int x = 0; x < width; x += 7) {
        int there = turned.getRaster().getSample(width - 1 - x, height - 1 - y, 0);
        difference += Math.abs(upright.getRaster().getSample(x, y, 0) - there);
      }
    }
    assertThat(difference / (width * height / 49.0)).isLessThan(3);
  }
}
