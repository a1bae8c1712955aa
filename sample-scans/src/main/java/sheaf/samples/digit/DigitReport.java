package sheaf.samples.digit;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import sheaf.samples.Terminal;
import sheaf.scanner.digit.DigitReader;
import sheaf.scanner.opencv.NativeLibraries;

/** Says how well handwritten digits are read in the boxes of made cards, scanned at 300 dpi. */
public final class DigitReport {

  /** What no digit of the report shares with how the recogniser was made. */
  private static final long SEED = 21;

  /** Cards of rubbish: some 2000 boxes. */
  private static final int RUBBISH_CARDS = 24;

  /** Blank cards: some 10,000 boxes. */
  private static final int BLANK_CARDS = 112;

  private DigitReport() {}

  /**
   * Writes all test digits into cards, scans and reads them, and prints how that went.
   *
   * @param args the folder of the set's idx files
   */
  public static void main(String[] args) throws IOException {
    NativeLibraries.load();
    DigitSet test = DigitSet.test(Path.of(args[0]));
    print(
        SeenBoxes.digits(test, SEED),
        SeenBoxes.rubbish(test, RUBBISH_CARDS, SEED + 1),
        SeenBoxes.blank(BLANK_CARDS, SEED + 2),
        DigitReader.bundled());
  }

  static void print(
      List<SeenBoxes> digits, List<SeenBoxes> rubbish, List<SeenBoxes> blank, DigitReader reader) {
    DigitFigures written = DigitFigures.of(digits, reader);
    Terminal.out().println("Digits, each in a box, at the reader's own threshold:");
    Terminal.out().println("  " + written.said());
    Terminal.out().println("Rejected and wrong for other thresholds (% of all, % of those read):");
    Terminal.out().print(written.curve());
    Terminal.out().println("What was claimed and how often it was right:");
    Terminal.out().print(written.reliability());
    Terminal.out().println("Fields of four digits: " + DigitFigures.fields(digits, reader));
    Terminal.out().println("Rubbish: " + DigitFigures.of(rubbish, reader).taken());
    Terminal.out().println("Blank boxes: " + DigitFigures.of(blank, reader).taken());
  }
}
