package sheaf.samples.digit;

import java.awt.Color;
import java.util.List;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import sheaf.core.job.SheetCode;
import sheaf.core.page.MmPoint;
import sheaf.core.page.MmRect;
import sheaf.core.reading.PrintScale;
import sheaf.samples.scan.FlatbedScan;
import sheaf.samples.scan.ScanFile;
import sheaf.samples.scene.Backdrop;
import sheaf.samples.scene.Behind;
import sheaf.samples.scene.Page;
import sheaf.samples.scene.PaperLook;
import sheaf.samples.scene.Writing;

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

  /** Height of a letter in notes, in millimetres. */
  private static final double LETTER = 4.5;

  private FilledCard() {}

  /**
   * How clean the sheet and the scanner's glass are.
   *
   * @param smudges of greasy or dusty fingers on the sheet
   * @param dust specks on the glass, at most
   */
  public record Dirt(int smudges, int dust) {
    /** As usual. */
    public static final Dirt LITTLE = new Dirt(0, 40);

    /** A bench with grease on it, and a glass that nobody wipes. */
    public static final Dirt MUCH = new Dirt(25, 600);
  }

  /**
   * Prints, writes and scans on a clean desk.
   *
   * @param hands what is written where
   * @param dpi of the scan, which it states
   * @param seed of all that is random
   */
  public static byte[] scan(SheetCode code, List<Hand> hands, int dpi, long seed) {
    return scan(code, hands, dpi, Dirt.LITTLE, seed);
  }

  /** The same, more or less clean. */
  public static byte[] scan(SheetCode code, List<Hand> hands, int dpi, Dirt dirt, long seed) {
    return scan(code, hands, new Notes(List.of(), new MmPoint(0, 0)), dpi, dirt, seed);
  }

  /**
   * Words written freely, line by line, in letters that {@link Writing} knows.
   *
   * @param lines of them
   * @param start the first line's upper left corner
   */
  record Notes(List<String> lines, MmPoint start) {}

  /** The same with words written freely. */
  static byte[] scan(SheetCode code, List<Hand> hands, Notes notes, int dpi, Dirt dirt, long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Page page = Page.print(code, Math.max(300, dpi) / 25.4);
    page.look(PaperLook.draw(random), random.split());
    write(page, hands, random.split());
    write(page, notes, random.split());
    smudge(page, dirt.smudges(), random.split());
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
            random.nextInt(0, dirt.dust()),
            random.nextLong());
    Backdrop backdrop = Backdrop.of(Behind.WHITE, 0.95, code.layout().paper(), random.split());
    return ScanFile.jpeg(scanner.scan(page, backdrop), random.nextInt(60, 96), dpi);
  }

  private static void write(Page page, Notes notes, RandomGenerator random) {
    Writing writing = new Writing(page, random);
    double y = notes.start().y();
    for (String line : notes.lines()) {
      double x = notes.start().x();
      for (String word : line.split(" ")) {
        writing.note(new MmPoint(x, y), word, LETTER);
        x += LETTER * (word.length() + 1);
      }
      y += 2 * LETTER;
    }
  }

  /** Fingers leave grey patches, darker toward their middle, many of them on what is written. */
  private static void smudge(Page page, int count, RandomGenerator random) {
    double width = page.width() / page.pixelsPerMm();
    double height = page.height() / page.pixelsPerMm();
    for (int i = 0; i < count; i++) {
      double x = random.nextDouble(width);
      double y = random.nextDouble(height);
      double wide = random.nextDouble(1.5, 8);
      double depth = random.nextDouble(0.03, 0.22);
      page.tint(
          MmRect.square(new MmPoint(x, y), 4 * wide),
          (px, py) -> {
            double off = Math.hypot(px - x, 0.7 * (py - y)) / wide;
            return depth * Math.exp(-off * off);
          },
          new float[] {0.9f, 0.95f, 1});
    }
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
