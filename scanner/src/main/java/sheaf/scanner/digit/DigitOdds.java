package sheaf.scanner.digit;

import sheaf.core.reading.InBox;

/**
 * How likely each digit is, and that it is none.
 *
 * @param best the likeliest digit
 * @param confidence how likely it is, 0 to 1
 */
public record DigitOdds(int best, double confidence) {

  /**
   * The network's scores are divided by this before they are taken for logarithms of odds, so that
   * what it claims comes true as often (Guo and others 2017); set on digits it had not learnt from.
   */
  private static final double TEMPERATURE = 1;

  /** Less likely than this it is left to a person; set so that rubbish is turned away. */
  public static final double LEAST = 0.9;

  /** From what the network says of ten digits and of what is none. */
  static DigitOdds of(float[] scores) {
    int best = 0;
    double largest = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < scores.length; i++) {
      largest = Math.max(largest, scores[i]);
      best = i < 10 && scores[i] > scores[best] ? i : best;
    }
    double sum = 0;
    for (float score : scores) {
      sum += Math.exp((score - largest) / TEMPERATURE);
    }
    return new DigitOdds(best, Math.exp((scores[best] - largest) / TEMPERATURE) / sum);
  }

  /** The digit, or that there is none that can be told. */
  public InBox verdict() {
    return confidence < LEAST ? new InBox.Unclear() : new InBox.Digit(best, confidence);
  }
}
