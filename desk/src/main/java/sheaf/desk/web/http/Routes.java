package sheaf.desk.web.http;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Which path leads to what. */
public final class Routes {

  /** Answers a request. */
  @FunctionalInterface
  public interface Page {
    /** The answer. */
    Reply reply(Request request);
  }

  /** What a body is. */
  enum Body {
    /** A form or a script's message, whose token is looked at before anything else. */
    FORM,
    /** Files, which are never taken without their token: {@link Uploads}. */
    FILES
  }

  /** Who may come there. */
  public enum Door {
    /** Anybody: the path itself is the secret, or there is none. */
    OPEN,
    /** Those who gave the passphrase, where one is asked for. */
    SHOP
  }

  private record Route(String method, List<String> path, Door door, Body body, Page page) {}

  /** Where a request leads. */
  record Found(Door door, Body body, Page page) {}

  private final List<Route> routes = new ArrayList<>();

  /**
   * Adds a page that changes nothing.
   *
   * @param path such as {@code /job/{id}}, where a part in braces stands for any
   */
  public Routes get(String path, Door door, Page page) {
    return add("GET", path, door, Body.FORM, page);
  }

  /** Adds one that changes something; its forms must carry the visitor's token. */
  public Routes post(String path, Door door, Page page) {
    return add("POST", path, door, Body.FORM, page);
  }

  /** Adds one that takes files. */
  public Routes files(String path, Door door, Page page) {
    return add("POST", path, door, Body.FILES, page);
  }

  private Routes add(String method, String path, Door door, Body body, Page page) {
    routes.add(new Route(method, List.of(path.substring(1).split("/", -1)), door, body, page));
    return this;
  }

  /**
   * Where a request leads; its parts are told to it.
   *
   * @throws Refusal when nothing is there, or not for this method
   */
  Found find(Request request) {
    boolean there = false;
    for (Route route : routes) {
      Optional<Map<String, String>> parts = match(route.path(), request.path());
      there |= parts.isPresent();
      if (parts.isPresent() && route.method().equals(request.method())) {
        request.parts(parts.get());
        return new Found(route.door(), route.body(), route.page());
      }
    }
    throw there
        ? new Refusal(405, "That cannot be done here: go back and try again.")
        : Refusal.notFound("There is no such page.");
  }

  private static Optional<Map<String, String>> match(List<String> pattern, List<String> path) {
    if (pattern.size() != path.size()) {
      return Optional.empty();
    }
    Map<String, String> parts = new HashMap<>();
    for (int i = 0; i < pattern.size(); i++) {
      String part = pattern.get(i);
      if (part.startsWith("{")) {
        if (path.get(i).isEmpty()) {
          return Optional.empty();
        }
        parts.put(part.substring(1, part.length() - 1), path.get(i));
      } else if (!part.equals(path.get(i))) {
        return Optional.empty();
      }
    }
    return Optional.of(parts);
  }
}
