package sheaf.samples.digit;

import java.awt.Color;
import java.util.List;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import sheaf.core.job.SheetCode;
import sheaf.core.reading.PrintScale;
import sheaf.samples.scan.FlatbedScan;
import sheaf.samples.scan.ScanFile;
import sheaf.samples.scene.Backdrop;
import sheaf.samples.scene.Behind;
import sheaf.samples.scene.Page;
import sheaf.samples.scene.PaperLook;

/** Sheets whose boxes were written in or ticked, scanned by a flatbed. */
public final class FilledCard {

  /** A person's pen: how much of red, green and blue it takes away where it is darkest. */
  private static final List<Color> PENS =
      List.of(
          new Color(25, 40, 120),
          new Color(20, 20, 25),
          new Color(40, 70, 170),
          new Color(110, 110, 115));

  private static final int WHITE = 255;

  private FilledCard() {}

  /**
   * Prints, writes and scans.
   *
   * @param hands what is written where
   * @param dpi of the scan, which it states
   * @param seed of all that is random
   */
  public static byte[] scan(SheetCode code, List<Hand> hands, int dpi, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Page page = Page.print(code, Math.max(300, dpi) / 25.4);
    page.look(PaperLook.draw(random), random.split());
    write(page, hands, random.split());
    FlatbedScan scanner =
        new FlatbedScan(
            dpi,
            random.nextBoolean(),
            random.nextInt(4),
            random.nextDouble(-3, 3),
            PrintScale.TRUE_SIZE,
            random.nextDouble(0.35, 0.85),
            random.nextDouble(0.8, 3),
            random.nextDouble(0.9, 1.15),
            random.nextDouble(0.001),
            random.nextInt(0, 40),
            random.nextLong());
    Backdrop backdrop = Backdrop.of(Behind.WHITE, 0.95, code.layout().paper(), random.split());
    return ScanFile.jpeg(scanner.scan(page, backdrop), random.nextInt(60, 96), dpi);
  }

  /** One person writes it all with one pen. */
  private static void write(Page page, List<Hand> hands, RandomGenerator random) {
    Color pen = PENS.get(random.nextInt(PENS.size()));
    float[] tint = {
      1 - pen.getRed() / (float) WHITE,
      1 - pen.getGreen() / (float) WHITE,
      1 - pen.getBlue() / (float) WHITE
    };
    double pressed = random.nextDouble(0.8, 1);
    for (Hand hand : hands) {
      page.tint(hand.room(), (x, y) -> pressed * hand.at(x, y), tint);
    }
  }
}
