package sheaf.desk.web.http;

import com.sun.net.httpserver.Headers;

/**
 * The headers of every reply, as the OWASP cheat sheets on HTTP headers and on content security
 * policy advise: nothing is loaded from elsewhere, framed, sniffed, indexed or kept.
 */
final class SafeHeaders {

  private static final String POLICY =
      "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; connect-src"
          + " 'self'; form-action 'self'; base-uri 'none'; frame-ancestors 'none'";

  private static final int TWO_YEARS = 2 * 365 * 24 * 3600;

  private SafeHeaders() {}

  /**
   * Sets them.
   *
   * @param secure whether everything is encrypted on the way
   */
  static void set(Headers headers, boolean secure) {
    headers.set("Content-Security-Policy", POLICY);
    headers.set("X-Content-Type-Options", "nosniff");
    headers.set("X-Frame-Options", "DENY");
    headers.set("X-XSS-Protection", "0");
    // Forms of our own must still say where they come from; links to elsewhere say nothing.
    headers.set("Referrer-Policy", "same-origin");
    headers.set("Permissions-Policy", "camera=(), geolocation=(), microphone=(), payment=()");
    headers.set("Cross-Origin-Opener-Policy", "same-origin");
    headers.set("Cross-Origin-Resource-Policy", "same-origin");
    headers.set("X-Robots-Tag", "noindex, nofollow");
    headers.set("Cache-Control", "no-store");
    if (secure) {
      headers.set("Strict-Transport-Security", "max-age=" + TWO_YEARS);
    }
  }
}
