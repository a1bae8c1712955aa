package sheaf.desk.web.http;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.security.MessageDigest;

/** The token that a visitor's forms carry, to be held against what a form brings. */
public record Token(String expected) {

  /** The form field. */
  public static final String FIELD = "token";

  /** The header by which a page's script says the same. */
  static final String HEADER = "X-Sheaf-Token";

  /** Whether a form brought this one. */
  public boolean is(String brought) {
    return MessageDigest.isEqual(expected.getBytes(UTF_8), brought.getBytes(UTF_8));
  }

  /** What is said of a form that brings another or none. */
  static Refusal refusal() {
    return new Refusal(
        403,
        "This form is too old or came from another site: open the page again, then repeat it.");
  }
}
