package sheaf.desk.web;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** Digests that tell things from each other. */
final class Digests {

  private static final int SHORT = 16;

  private Digests() {}

  /** SHA-256 as hexadecimal digits. */
  static String of(byte[] content) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(content));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  /** The first digits of it: 64 bits, which tell a few hundred things apart. */
  static String shortOf(String text) {
    return of(text.getBytes(UTF_8)).substring(0, SHORT);
  }
}
