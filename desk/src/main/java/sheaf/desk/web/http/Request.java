package sheaf.desk.web.http;

import static java.nio.charset.StandardCharsets.UTF_8;

import com.sun.net.httpserver.HttpExchange;
import java.io.IOException;
import java.io.InputStream;
import java.net.InetAddress;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What somebody asks. */
public final class Request {

  /** No form of ours is as long, in bytes. */
  private static final int LONGEST_FORM = 256 * 1024;

  private final HttpExchange exchange;
  private final Visitor visitor;
  private final List<String> path;
  private Map<String, String> parts = Map.of();
  private String text;

  Request(HttpExchange exchange, Visitor visitor, List<String> path) {
    this.exchange = exchange;
    this.visitor = visitor;
    this.path = path;
  }

  /** GET or POST; what is asked with HEAD is a GET. */
  public String method() {
    String method = exchange.getRequestMethod();
    return method.equals("HEAD") ? "GET" : method;
  }

  /** The parts of the path between its slashes, decoded; the last is empty behind a slash. */
  List<String> path() {
    return path;
  }

  void parts(Map<String, String> found) {
    parts = new HashMap<>(found);
  }

  /** A part of the path that the route names. */
  public String part(String name) {
    return parts.get(name);
  }

  /** What stands behind the question mark. */
  public Words query() {
    return Words.parse(exchange.getRequestURI().getRawQuery());
  }

  /** A header; empty without it. */
  public Optional<String> header(String name) {
    return Optional.ofNullable(exchange.getRequestHeaders().getFirst(name));
  }

  /** Whether the page's own script asks, which wants no whole page. */
  public boolean byScript() {
    return header("X-Sheaf-Script").isPresent();
  }

  /** Who asks. */
  public Visitor visitor() {
    return visitor;
  }

  /** Where the question comes from. */
  public InetAddress address() {
    return exchange.getRemoteAddress().getAddress();
  }

  /** How long the body says it is; -1 when it does not say. */
  long length() {
    return header("Content-Length").map(Request::number).orElse(-1L);
  }

  private static long number(String text) {
    try {
      return Long.parseLong(text);
    } catch (NumberFormatException e) {
      throw new Refusal(400, "The length of what was sent is no number.");
    }
  }

  InputStream body() {
    return new PatientStream(exchange.getRequestBody());
  }

  /** The whole body as text, of at most 256 kB. */
  public String text() {
    if (text == null) {
      text = readText();
    }
    return text;
  }

  private String readText() {
    try {
      byte[] body = body().readNBytes(LONGEST_FORM + 1);
      if (body.length > LONGEST_FORM) {
        throw new Refusal(413, "The form is too long.");
      }
      return new String(body, UTF_8);
    } catch (IOException e) {
      throw new Refusal(400, "What was sent broke off: try again.");
    }
  }

  /** The body as a form. */
  public Words form() {
    return Words.parse(text());
  }
}
