package sheaf.desk.web.http;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What is sent back.
 *
 * @param status of HTTP
 * @param type of the body, as a media type
 * @param body all of it
 * @param headers besides those that every reply has
 */
public record Reply(int status, String type, byte[] body, Map<String, String> headers) {

  /** Copies the headers. */
  public Reply {
    headers = Map.copyOf(headers);
  }

  /** A page. */
  public static Reply html(int status, String text) {
    return new Reply(status, "text/html; charset=utf-8", text.getBytes(UTF_8), Map.of());
  }

  /** An answer for the page's own script. */
  public static Reply json(int status, String text) {
    return new Reply(status, "application/json", text.getBytes(UTF_8), Map.of());
  }

  /** Plain text. */
  public static Reply text(String text) {
    return new Reply(200, "text/plain; charset=utf-8", text.getBytes(UTF_8), Map.of());
  }

  /**
   * A file to look at or to save.
   *
   * @param name that it is saved by; letters, digits, dots and dashes only
   */
  public static Reply file(String type, byte[] content, String name) {
    return new Reply(
        200, type, content, Map.of("Content-Disposition", "inline; filename=\"" + name + "\""));
  }

  /** Go there instead, with a GET. */
  public static Reply seeOther(String path) {
    return new Reply(303, "text/plain; charset=utf-8", new byte[0], Map.of("Location", path));
  }

  /** The same reply with one more header. */
  public Reply with(String name, String value) {
    Map<String, String> more = new LinkedHashMap<>(headers);
    more.put(name, value);
    return new Reply(status, type, body, more);
  }

  /** The same reply, which whoever asked may keep for so long. */
  public Reply keptFor(int seconds) {
    return with("Cache-Control", "private, max-age=" + seconds);
  }
}
