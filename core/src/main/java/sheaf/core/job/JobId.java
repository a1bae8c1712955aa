package sheaf.core.job;

import java.util.Optional;
import java.util.random.RandomGenerator;

/**
 * The name of a job: one bow, one visit. Random, printed on every paper of the job, and no secret.
 *
 * <p>Ten symbols of Crockford base 32 (50 bits) and their check symbol. Only numbers whose check
 * symbol is a letter or digit are ever drawn, so that an id can be read out and fits the QR code's
 * compact alphanumeric mode.
 *
 * @param text the eleven symbols without separators, upper case
 */
public record JobId(String text) {

  private static final int DIGITS = 10;
  private static final int BITS = 50;
  private static final int GROUP = 5;

  /** Throws when the text is not the plain form of a valid id; see {@link #parse} for input. */
  public JobId {
    if (!canonical(text).equals(Optional.of(text))) {
      throw new IllegalArgumentException("not a job id: " + text);
    }
  }

  /** A new id. Use a source of randomness that does not repeat between machines. */
  public static JobId random(RandomGenerator random) {
    while (true) {
      long number = random.nextLong() >>> (Long.SIZE - BITS);
      char check = Crockford.checkSymbol(number);
      if (Character.isLetterOrDigit(check)) {
        return new JobId(digits(number) + check);
      }
    }
  }

  /**
   * Reads an id as a person types it: any case, with or without dashes and spaces, O for 0, I or L
   * for 1. Empty when a symbol is missing, unknown or wrong (the check symbol catches any one).
   */
  public static Optional<JobId> parse(String typed) {
    return canonical(typed.replaceAll("[-\\s]", "")).map(JobId::new);
  }

  /** The id in groups for reading out: {@code 7G4KQ-2M8XE-0}. */
  public String spoken() {
    return text.substring(0, GROUP)
        + "-"
        + text.substring(GROUP, 2 * GROUP)
        + "-"
        + text.substring(2 * GROUP);
  }

  @Override
  public String toString() {
    return spoken();
  }

  private static Optional<String> canonical(String symbols) {
    if (symbols.length() != DIGITS + 1) {
      return Optional.empty();
    }
    long number = 0;
    for (int i = 0; i < DIGITS; i++) {
      int value = Crockford.value(symbols.charAt(i));
      if (value < 0 || value >= Crockford.RADIX) {
        return Optional.empty();
      }
      number = number * Crockford.RADIX + value;
    }
    char check = Crockford.checkSymbol(number);
    return Crockford.value(symbols.charAt(DIGITS)) == Crockford.value(check)
        ? Optional.of(digits(number) + check)
        : Optional.empty();
  }

  private static String digits(long number) {
    StringBuilder digits = new StringBuilder();
    for (int shift = (DIGITS - 1) * 5; shift >= 0; shift -= 5) {
      digits.append(Crockford.symbol((int) (number >>> shift) & (Crockford.RADIX - 1)));
    }
    return digits.toString();
  }
}
