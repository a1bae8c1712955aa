package sheaf.core.job;

/**
 * The hybrid check character of ISO/IEC 7064, MOD 37-36, over digits and capital letters.
 *
 * <p>It catches every single wrong character and nearly every swap of two neighbours.
 */
final class CheckCharacter {

  private static final int MODULUS = 36;

  private CheckCharacter() {}

  /** The check character for a text of digits and capital letters. */
  static char of(String text) {
    int carry = MODULUS;
    for (char c : text.toCharArray()) {
      int sum = (carry + Character.digit(c, MODULUS)) % MODULUS;
      carry = (sum == 0 ? MODULUS : sum) * 2 % (MODULUS + 1);
    }
    int check = (MODULUS + 1 - carry) % MODULUS;
    return Character.toUpperCase(Character.forDigit(check, MODULUS));
  }
}
