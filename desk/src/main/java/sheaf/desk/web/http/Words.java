package sheaf.desk.web.http;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.net.URLDecoder;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Names with values, as addresses and forms carry them.
 *
 * @param all values of each name, in order
 */
public record Words(Map<String, List<String>> all) {

  /** No form of ours has as many. */
  private static final int MOST = 500;

  /**
   * Reads what is written as {@code application/x-www-form-urlencoded}.
   *
   * @throws Refusal when it is not
   */
  static Words parse(String text) {
    Map<String, List<String>> all = new LinkedHashMap<>();
    if (text == null || text.isEmpty()) {
      return new Words(all);
    }
    String[] pairs = text.split("&", MOST + 1);
    if (pairs.length > MOST) {
      throw new Refusal(400, "The form has too many fields.");
    }
    for (String pair : pairs) {
      int equals = pair.indexOf('=');
      String name = equals < 0 ? pair : pair.substring(0, equals);
      String value = equals < 0 ? "" : pair.substring(equals + 1);
      all.computeIfAbsent(decoded(name), any -> new ArrayList<>()).add(decoded(value));
    }
    return new Words(all);
  }

  private static String decoded(String text) {
    try {
      return URLDecoder.decode(text, UTF_8);
    } catch (IllegalArgumentException e) {
      throw new Refusal(400, "The address or form is damaged: go back and try again.");
    }
  }

  /**
   * The first value of a name, without blanks around it; empty when there is none or it is blank.
   */
  public Optional<String> find(String name) {
    return all.getOrDefault(name, List.of()).stream()
        .map(String::strip)
        .filter(value -> !value.isEmpty())
        .findFirst();
  }

  /** The first value of a name, as it was sent; empty text when there is none. */
  public String get(String name) {
    return all.getOrDefault(name, List.of("")).get(0);
  }
}
