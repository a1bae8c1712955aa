package sheaf.desk.web.http;

import static java.nio.charset.StandardCharsets.UTF_8;

import com.sun.net.httpserver.HttpExchange;
import java.net.URLDecoder;
import java.net.URLEncoder;
import java.security.GeneralSecurityException;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import javax.crypto.Mac;
import javax.crypto.spec.SecretKeySpec;

/**
 * Knows visitors by a random cookie. Nothing is kept of those who have not given the passphrase:
 * the token of their forms follows from the cookie and a secret of this process.
 */
public final class Visitors {

  /** A working day with its evening; then the passphrase is asked for again. */
  private static final Duration STAYS = Duration.ofHours(14);

  /** More people than a shop has; beyond, those who came first are asked again. */
  private static final int MOST = 1000;

  private static final int RANDOM_BYTES = 32;
  private static final int LONGEST_INITIALS = 12;
  private static final int A_YEAR = 365 * 24 * 3600;

  private final Optional<byte[]> passphrase;
  private final boolean secure;
  private final SecureRandom random;
  private final Clock clock;
  private final byte[] secret = new byte[RANDOM_BYTES];
  private final Map<String, Instant> entered = new ConcurrentHashMap<>();

  /**
   * Visitors of one server.
   *
   * @param passphrase that is asked for; empty for none
   * @param secure whether everything is encrypted on the way, so that cookies must be
   */
  public Visitors(Optional<String> passphrase, boolean secure, SecureRandom random, Clock clock) {
    this.random = random;
    this.clock = clock;
    this.secure = secure;
    random.nextBytes(secret);
    this.passphrase = passphrase.map(this::signed);
  }

  private String idCookie() {
    return secure ? "__Host-sheaf" : "sheaf";
  }

  private static final String INITIALS = "initials";

  /** Who asks; somebody new gets a cookie with the reply. */
  Visitor of(HttpExchange exchange) {
    String id =
        cookie(exchange, idCookie())
            .filter(known -> known.matches("[\\w-]{43}"))
            .orElseGet(() -> welcome(exchange));
    String initials =
        cookie(exchange, INITIALS)
            .map(text -> URLDecoder.decode(text.replaceAll("%(?![0-9A-Fa-f]{2})", ""), UTF_8))
            .map(Visitors::initials)
            .orElse("");
    return new Visitor(token(id), passphrase.isEmpty() || hasEntered(id), initials);
  }

  private String welcome(HttpExchange exchange) {
    byte[] bytes = new byte[RANDOM_BYTES];
    random.nextBytes(bytes);
    String id = Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    exchange.getResponseHeaders().add("Set-Cookie", idCookie() + "=" + id + attributes());
    return id;
  }

  private String attributes() {
    return "; Path=/; HttpOnly; SameSite=Lax" + (secure ? "; Secure" : "");
  }

  private boolean hasEntered(String id) {
    Instant since = entered.get(keyOf(id));
    return since != null && since.plus(STAYS).isAfter(clock.instant());
  }

  /**
   * Lets a visitor enter who knows the passphrase; with a new cookie, so that one that somebody
   * else planted opens nothing.
   *
   * @return the header that sets the cookie; empty when the passphrase is another
   */
  public Optional<String> enter(String typed) {
    boolean right =
        passphrase.isPresent() && MessageDigest.isEqual(passphrase.get(), signed(typed));
    if (!right) {
      return Optional.empty();
    }
    byte[] bytes = new byte[RANDOM_BYTES];
    random.nextBytes(bytes);
    String id = Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    makeRoom();
    entered.put(keyOf(id), clock.instant());
    return Optional.of(idCookie() + "=" + id + attributes());
  }

  private void makeRoom() {
    entered.values().removeIf(since -> since.plus(STAYS).isBefore(clock.instant()));
    while (entered.size() >= MOST) {
      entered.entrySet().stream()
          .min(Map.Entry.comparingByValue())
          .ifPresent(first -> entered.remove(first.getKey()));
    }
  }

  /** Forgets a visitor: everyone who was let in on this cookie must give the passphrase again. */
  public void leave(Visitor visitor) {
    entered.remove(visitor.token());
  }

  /** The header that keeps somebody's initials. */
  public static String keepInitials(String typed) {
    return INITIALS
        + "="
        + URLEncoder.encode(initials(typed), UTF_8).replace("+", "%20")
        + "; Path=/; HttpOnly; SameSite=Lax; Max-Age="
        + A_YEAR;
  }

  private static String initials(String text) {
    String plain = text.replaceAll("[^\\p{L}\\p{N}. -]", "").strip();
    return plain.substring(0, Math.min(LONGEST_INITIALS, plain.length()));
  }

  /**
   * The token serves as the key too: it tells visitors apart and does not give their cookie away.
   */
  private String keyOf(String id) {
    return token(id);
  }

  private String token(String id) {
    return Base64.getUrlEncoder().withoutPadding().encodeToString(signed(id));
  }

  private byte[] signed(String text) {
    try {
      Mac mac = Mac.getInstance("HmacSHA256");
      mac.init(new SecretKeySpec(secret, "HmacSHA256"));
      return mac.doFinal(text.getBytes(UTF_8));
    } catch (GeneralSecurityException e) {
      throw new IllegalStateException("every Java has HmacSHA256", e);
    }
  }

  private static Optional<String> cookie(HttpExchange exchange, String name) {
    for (String line : exchange.getRequestHeaders().getOrDefault("Cookie", List.of())) {
      for (String pair : line.split(";")) {
        String[] both = pair.strip().split("=", 2);
        if (both.length == 2 && both[0].equals(name)) {
          return Optional.of(both[1]);
        }
      }
    }
    return Optional.empty();
  }
}
