package sheaf.desk.web.http;

import com.sun.net.httpserver.HttpExchange;
import com.sun.net.httpserver.HttpServer;
import com.sun.net.httpserver.HttpsConfigurator;
import com.sun.net.httpserver.HttpsServer;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.BindException;
import java.net.InetSocketAddress;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import javax.net.ssl.SSLContext;
import sheaf.desk.outcome.Trouble;

/** Listens, lets every request pass the same checks, and gives every reply the same headers. */
public final class WebServer implements AutoCloseable {

  /** Requests that are worked on at a time; more wait. One that stands still takes one of them. */
  private static final int MOST_AT_A_TIME = 200;

  /** What is left of a refused body is taken for so long, so that the refusal can be read. */
  private static final long MOST_DRAINED = 80_000_000;

  private final HttpServer server;
  private final ExecutorService threads;
  private final Rules rules;

  /**
   * What holds for all requests.
   *
   * @param routes which path leads to what
   * @param hosts the names by which the server may be called
   * @param visitors who asks
   * @param log who changed what
   * @param faces how refusals look
   */
  public record Rules(Routes routes, Hosts hosts, Visitors visitors, AuditLog log, Faces faces) {}

  /** How what is not a page of its own looks. */
  public interface Faces {
    /** A refusal, for a person or for a page's script. */
    Reply refusal(Optional<Request> request, int status, String sentence);

    /** Where the passphrase is asked for. */
    Reply entrance(Request request);
  }

  private WebServer(HttpServer server, Rules rules) {
    this.server = server;
    this.rules = rules;
    ThreadPoolExecutor pool =
        new ThreadPoolExecutor(
            MOST_AT_A_TIME,
            MOST_AT_A_TIME,
            30,
            TimeUnit.SECONDS,
            new LinkedBlockingQueue<>(),
            WebServer::thread);
    pool.allowCoreThreadTimeOut(true);
    this.threads = pool;
  }

  private static Thread thread(Runnable work) {
    Thread thread = new Thread(work, "desk");
    thread.setDaemon(true);
    return thread;
  }

  /**
   * Starts to listen.
   *
   * @param encryption of everything on the way; empty for none
   * @throws Trouble when the port cannot be had
   */
  public static WebServer start(
      InetSocketAddress at, Optional<SSLContext> encryption, Rules rules) {
    // Without it each small reply waits 40 ms for an acknowledgement.
    System.setProperty("sun.net.httpserver.nodelay", "true");
    // Whoever stands still in the middle of a request is let go after so many seconds.
    System.setProperty("sun.net.httpserver.maxReqTime", "180");
    System.setProperty("sun.net.httpserver.idleInterval", "30");
    try {
      HttpServer server =
          encryption.isPresent() ? encrypted(encryption.get()) : HttpServer.create();
      server.bind(at, 0);
      WebServer web = new WebServer(server, rules);
      server.createContext("/", web::handle);
      server.setExecutor(web.threads);
      server.start();
      return web;
    } catch (BindException e) {
      throw Trouble.environment(
          "Port %d cannot be had, since something else uses it: name another with --port."
              .formatted(at.getPort()),
          e);
    } catch (IOException e) {
      throw Trouble.environment("The desk cannot listen: " + Trouble.inWords(e) + ".", e);
    }
  }

  private static HttpServer encrypted(SSLContext encryption) throws IOException {
    HttpsServer server = HttpsServer.create();
    server.setHttpsConfigurator(new HttpsConfigurator(encryption));
    return server;
  }

  /** The port that it listens at. */
  public int port() {
    return server.getAddress().getPort();
  }

  private boolean secure() {
    return server instanceof HttpsServer;
  }

  private void handle(HttpExchange exchange) throws IOException {
    try (exchange) {
      SafeHeaders.set(exchange.getResponseHeaders(), secure());
      Reply reply = reply(exchange);
      drain(exchange);
      send(exchange, reply);
    }
  }

  private Reply reply(HttpExchange exchange) {
    Optional<Request> request = Optional.empty();
    try {
      checkHost(exchange);
      request = Optional.of(new Request(exchange, rules.visitors().of(exchange), path(exchange)));
      return reply(request.get(), exchange);
    } catch (Refusal e) {
      return refused(request, e.status(), e.getMessage());
    } catch (Trouble e) {
      int status =
          switch (e.status()) {
            case MISUSE -> 404;
            case REFUSED -> 409;
            default -> 503;
          };
      return refused(request, status, e.getMessage());
    } catch (RuntimeException e) {
      System.getLogger(WebServer.class.getName())
          .log(System.Logger.Level.ERROR, "a page failed", e);
      return refused(
          request, 500, "The desk failed at this by a fault of its own: go back and try again.");
    }
  }

  private Reply refused(Optional<Request> request, int status, String sentence) {
    request
        .filter(asked -> asked.method().equals("POST") || status == 403 || status == 429)
        .ifPresent(asked -> rules.log().write(asked, told(asked), status));
    Reply reply = rules.faces().refusal(request, status, sentence);
    return status == 429 || status == 503 ? reply.with("Retry-After", "300") : reply;
  }

  /** What was asked for, without the secret in a record's address. */
  private static String told(Request request) {
    List<String> path = request.path();
    String what = path.get(0).equals("r") ? "r/(secret)" : String.join("/", path);
    return request.method() + " /" + what.replaceAll("[^\\w/.()-]", "?");
  }

  private void checkHost(HttpExchange exchange) {
    String host = Optional.ofNullable(exchange.getRequestHeaders().getFirst("Host")).orElse("");
    if (!rules.hosts().include(host)) {
      throw new Refusal(421, "The desk does not go by this name.");
    }
  }

  private static List<String> path(HttpExchange exchange) {
    String raw = exchange.getRequestURI().getRawPath();
    if (raw == null || !raw.startsWith("/") || raw.length() > 400) {
      throw new Refusal(400, "This is no address of the desk.");
    }
    try {
      List<String> path =
          Arrays.stream(raw.substring(1).split("/", -1))
              .map(part -> URLDecoder.decode(part.replace("+", "%2B"), StandardCharsets.UTF_8))
              .toList();
      if (path.stream().anyMatch(part -> part.matches("(?s)\\.{1,2}|.*[\\\\/\\p{Cntrl}].*"))) {
        throw Refusal.notFound("There is no such page.");
      }
      return path;
    } catch (IllegalArgumentException e) {
      throw new Refusal(400, "This is no address of the desk.");
    }
  }

  private Reply reply(Request request, HttpExchange exchange) {
    Routes.Found found = rules.routes().find(request);
    boolean changes = request.method().equals("POST");
    if (changes) {
      checkOrigin(request, exchange);
    }
    if (found.door() == Routes.Door.SHOP && !request.visitor().mayEnter()) {
      return rules.faces().entrance(request);
    }
    if (changes && found.body() == Routes.Body.FORM) {
      checkToken(request);
    }
    Reply reply = found.page().reply(request);
    if (changes) {
      rules.log().write(request, told(request), reply.status());
    }
    return reply;
  }

  /** Another site's page cannot hide where its form comes from. */
  private static void checkOrigin(Request request, HttpExchange exchange) {
    String host = exchange.getRequestHeaders().getFirst("Host");
    boolean foreign =
        request
            .header("Origin")
            .filter(
                origin ->
                    !origin.equalsIgnoreCase("http://" + host)
                        && !origin.equalsIgnoreCase("https://" + host))
            .isPresent();
    boolean elsewhere =
        request
            .header("Sec-Fetch-Site")
            .filter(site -> !site.matches("same-origin|none"))
            .isPresent();
    if (foreign || elsewhere) {
      throw Token.refusal();
    }
  }

  private static void checkToken(Request request) {
    Token token = new Token(request.visitor().token());
    boolean byHeader = request.header(Token.HEADER).filter(token::is).isPresent();
    if (!byHeader && !token.is(request.form().get(Token.FIELD))) {
      throw Token.refusal();
    }
  }

  /** Takes what is left of a body, within limits: a browser shows no reply before it sent all. */
  private static void drain(HttpExchange exchange) {
    try {
      InputStream body = new PatientStream(exchange.getRequestBody());
      byte[] away = new byte[64 * 1024];
      long left = MOST_DRAINED;
      int some = 0;
      while (some >= 0 && left > 0) {
        some = body.read(away);
        left -= some;
      }
    } catch (IOException | Refusal e) {
      // Then the reply may not arrive, and the connection is closed with it.
      exchange.getResponseHeaders().set("Connection", "close");
    }
  }

  private static void send(HttpExchange exchange, Reply reply) throws IOException {
    reply
        .headers()
        .forEach(
            (name, value) -> {
              if (name.equals("Set-Cookie")) {
                exchange.getResponseHeaders().add(name, value);
              } else {
                exchange.getResponseHeaders().set(name, value);
              }
            });
    exchange.getResponseHeaders().set("Content-Type", reply.type());
    boolean head = exchange.getRequestMethod().equals("HEAD");
    int length = reply.body().length;
    exchange.sendResponseHeaders(reply.status(), head || length == 0 ? -1 : length);
    if (!head && length > 0) {
      try (OutputStream out = exchange.getResponseBody()) {
        out.write(reply.body());
      }
    }
  }

  @Override
  public void close() {
    server.stop(0);
    threads.shutdownNow();
  }
}
