package sheaf.desk.home;

import java.net.URI;
import java.net.URISyntaxException;
import java.util.Locale;
import java.util.Set;
import sheaf.core.job.RecordKey;

/**
 * Where the shop's record pages are on the web; a customer's link is this and the record's key.
 *
 * @param text a web address that the key is put right behind
 */
public record RecordAddress(String text) {

  /** What a web address may be spoken with. */
  private static final Set<String> SCHEMES = Set.of("https", "http");

  /** So that the link's code stays coarse enough to print small, in characters. */
  private static final int LONGEST = 110;

  /** Throws, saying what is wrong in words that go behind "the record address". */
  public RecordAddress {
    if (text.length() > LONGEST) {
      throw new IllegalArgumentException("must have at most " + LONGEST + " characters");
    }
    if (!isWebAddress(text)) {
      throw new IllegalArgumentException(
          "must be a web address such as https://records.example/b/, not '" + text + "'");
    }
    if (!text.endsWith("/") && !text.endsWith("=")) {
      throw new IllegalArgumentException(
          "must end with / or =, because the record's key is put right behind it: " + text);
    }
  }

  private static boolean isWebAddress(String text) {
    try {
      URI uri = new URI(text);
      return uri.getScheme() != null
          && SCHEMES.contains(uri.getScheme().toLowerCase(Locale.ROOT))
          && uri.getHost() != null
          && uri.getUserInfo() == null;
    } catch (URISyntaxException e) {
      return false;
    }
  }

  /** The link that opens a record: a secret. */
  public String link(RecordKey key) {
    return text + key.text();
  }

  /** Whether others on the way can read the link. */
  public boolean isOpen() {
    return text.toLowerCase(Locale.ROOT).startsWith("http:");
  }
}
