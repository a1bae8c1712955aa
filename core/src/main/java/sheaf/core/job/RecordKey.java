package sheaf.core.job;

import java.security.SecureRandom;
import java.util.regex.Pattern;

/**
 * The secret that opens a customer's record: 160 random bits, unrelated to the job id, because a
 * job id hangs on a wall and a record does not.
 *
 * <p>At least 120 bits from a secure source is the advice of the W3C's "Good Practices for
 * Capability URLs".
 *
 * @param text 32 symbols of Crockford base 32
 */
public record RecordKey(String text) {

  private static final int SYMBOLS = 32;
  private static final Pattern FORM = Pattern.compile("[0-9A-HJKMNP-TV-Z]{" + SYMBOLS + "}");

  /** Throws when the text is not a key. */
  public RecordKey {
    if (!FORM.matcher(text).matches()) {
      throw new IllegalArgumentException("not a record key");
    }
  }

  /** A new key. */
  public static RecordKey random(SecureRandom random) {
    StringBuilder text = new StringBuilder(SYMBOLS);
    for (int i = 0; i < SYMBOLS; i++) {
      text.append(Crockford.symbol(random.nextInt(Crockford.RADIX)));
    }
    return new RecordKey(text.toString());
  }

  /** Never the secret itself: this text lands in logs. */
  @Override
  public String toString() {
    return "RecordKey(secret)";
  }
}
