package sheaf.samples.digit;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import sheaf.core.reading.InBox;
import sheaf.core.reading.NumberJudge;
import sheaf.samples.digit.SeenBoxes.SeenBox;
import sheaf.scanner.digit.DigitOdds;
import sheaf.scanner.digit.DigitReader;

/**
 * How digits were read.
 *
 * @param boxes what was meant and what the reader said
 */
record DigitFigures(List<Read> boxes) {

  private static final double[] THRESHOLDS = {
    0, 0.5, 0.8, 0.9, 0.95, 0.97, 0.98, 0.99, 0.995, 0.999
  };

  private static final double[] CLAIMS = {0.5, 0.8, 0.9, 0.95, 0.98, 0.99, 0.995, 0.999, 1.001};

  /**
   * One box.
   *
   * @param meant the digit, 10 for what is none, -1 for nothing
   * @param odds what the reader takes it for; null for blank
   */
  private record Read(int meant, DigitOdds odds) {
    boolean right() {
      return odds != null && odds.best() == meant;
    }

    boolean surerThan(double least) {
      return odds != null && odds.confidence() >= least;
    }
  }

  static DigitFigures of(List<SeenBoxes> cards, DigitReader reader) {
    List<Read> read = new ArrayList<>();
    for (SeenBoxes card : cards) {
      card.fields().forEach(field -> read.addAll(read(field, reader)));
    }
    // Places left over on the last card were meant for nothing.
    boolean written = read.stream().anyMatch(box -> box.meant >= 0);
    return new DigitFigures(
        written ? read.stream().filter(box -> box.meant >= 0).toList() : List.copyOf(read));
  }

  private static List<Read> read(List<SeenBox> field, DigitReader reader) {
    List<Read> read = new ArrayList<>();
    for (SeenBox box : field) {
      DigitOdds odds = box.picture().map(one -> reader.odds(List.of(one)).get(0)).orElse(null);
      read.add(new Read(box.meant(), odds));
    }
    return read;
  }

  /** Of digits: how many were rejected and how many of the others wrong. */
  String said() {
    long blank = boxes.stream().filter(box -> box.odds == null).count();
    return at(DigitOdds.LEAST) + ", %d of %d taken for blank".formatted(blank, boxes.size());
  }

  /** The same for other thresholds. */
  String curve() {
    StringBuilder curve = new StringBuilder();
    for (double threshold : THRESHOLDS) {
      curve.append("  from %.3f: %s%n".formatted(threshold, at(threshold)));
    }
    return curve.toString();
  }

  private String at(double threshold) {
    List<Read> taken = boxes.stream().filter(box -> box.surerThan(threshold)).toList();
    long wrong = taken.stream().filter(box -> !box.right()).count();
    return String.format(
        Locale.ROOT,
        "%.2f %% rejected, %.3f %% wrong (%d of %d)",
        100.0 * (boxes.size() - taken.size()) / boxes.size(),
        100.0 * wrong / Math.max(1, taken.size()),
        wrong,
        taken.size());
  }

  /** How often claims came true. */
  String reliability() {
    StringBuilder table = new StringBuilder();
    for (int i = 0; i + 1 < CLAIMS.length; i++) {
      double from = CLAIMS[i];
      double to = CLAIMS[i + 1];
      List<Read> claimed =
          boxes.stream().filter(box -> box.surerThan(from) && !box.surerThan(to)).toList();
      double claim = claimed.stream().mapToDouble(box -> box.odds.confidence()).average().orElse(0);
      long right = claimed.stream().filter(Read::right).count();
      table.append(
          String.format(
              Locale.ROOT,
              "  %.3f to %.3f: claimed %.4f, right %.4f of %d%n",
              from,
              Math.min(1, to),
              claim,
              right / Math.max(1.0, claimed.size()),
              claimed.size()));
    }
    return table.toString();
  }

  /** Of what is no digit: how much was taken for one all the same. */
  String taken() {
    long sure = boxes.stream().filter(box -> box.surerThan(NumberJudge.USUALLY_SURE)).count();
    long guessed = boxes.stream().filter(box -> box.surerThan(DigitOdds.LEAST)).count() - sure;
    long asked = boxes.stream().filter(box -> box.odds != null).count() - sure - guessed;
    return String.format(
        Locale.ROOT,
        "%d of %d taken for a sure digit (%.3f %%); asked about: %d with a guess, %d without",
        sure,
        boxes.size(),
        100.0 * sure / boxes.size(),
        guessed,
        asked);
  }

  /** Fields with four boxes, all written in. */
  static String fields(List<SeenBoxes> cards, DigitReader reader) {
    int all = 0;
    int accepted = 0;
    int wrong = 0;
    for (SeenBoxes card : cards) {
      for (List<SeenBox> field : card.fields()) {
        if (field.size() != 4 || field.stream().anyMatch(box -> box.meant() < 0)) {
          continue;
        }
        List<Read> read = read(field, reader);
        all++;
        boolean digits =
            read.stream()
                .allMatch(box -> box.odds != null && box.odds.verdict() instanceof InBox.Digit);
        double confidence =
            digits
                ? read.stream().mapToDouble(box -> box.odds.confidence()).reduce(1, (a, b) -> a * b)
                : 0;
        if (confidence >= NumberJudge.USUALLY_SURE) {
          accepted++;
          wrong += read.stream().allMatch(Read::right) ? 0 : 1;
        }
      }
    }
    return String.format(
        Locale.ROOT,
        "%.1f %% of %d accepted, %d of these wrong (%.2f %%)",
        100.0 * accepted / Math.max(1, all),
        all,
        wrong,
        100.0 * wrong / Math.max(1, accepted));
  }
}
