package sheaf.core.job;

/**
 * Crockford's base 32: digits and letters without I, L, O and U, so that nothing is misread aloud.
 *
 * <p>Source: Douglas Crockford, "Base 32", crockford.com/base32.html (alphabet, check symbol modulo
 * 37, reading O as 0 and I and L as 1).
 */
final class Crockford {

  /** Thirty-two symbols for digits, then five that only a check symbol can be. */
  private static final String SYMBOLS = "0123456789ABCDEFGHJKMNPQRSTVWXYZ*~$=U";

  static final int RADIX = 32;
  private static final int CHECK_MODULUS = 37;

  private Crockford() {}

  /** The value of a typed symbol, or -1; case and the usual misreadings are forgiven. */
  static int value(char typed) {
    char c = Character.toUpperCase(typed);
    return switch (c) {
      case 'O' -> 0;
      case 'I', 'L' -> 1;
      default -> SYMBOLS.indexOf(c);
    };
  }

  static char symbol(int value) {
    return SYMBOLS.charAt(value);
  }

  static char checkSymbol(long number) {
    return SYMBOLS.charAt((int) (number % CHECK_MODULUS));
  }
}
