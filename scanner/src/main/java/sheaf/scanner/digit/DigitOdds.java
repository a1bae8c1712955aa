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
   * Less likely than this nothing is told; set on validation digits. What is told is sure only from
   * a shop's own threshold on.
   */
  public static final double LEAST = 0.8;

  /** What is none of the digits. */
  private static final int NONE = 10;

  /**
   * The network learns from more of what is no digit than is ever written into boxes, so that its
   * score for that is too high by this; set on validation digits and rubbish.
   */
  public static final float TOO_MANY_NONE = 1;

  /**
   * From what the network says of ten digits and of what is none: logarithms of odds. They are not
   * scaled otherwise (Guo and others 2017): by validation digits no other temperature than one is
   * likelier.
   */
  static DigitOdds of(float[] said) {
    float[] scores = said.clone();
    scores[NONE] -= TOO_MANY_NONE;
    int best = 0;
    double largest = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < scores.length; i++) {
      largest = Math.max(largest, scores[i]);
      best = i < NONE && scores[i] > scores[best] ? i : best;
    }
    double sum = 0;
    for (float score : scores) {
      sum += Math.exp(score - largest);
    }
    return new DigitOdds(best, Math.exp(scores[best] - largest) / sum);
  }

  /** The digit, or that there is none that can be told. */
  public InBox verdict() {
    return confidence < LEAST ? new InBox.Unclear() : new InBox.Digit(best, confidence);
  }
}
