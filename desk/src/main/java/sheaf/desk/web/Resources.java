package sheaf.desk.web;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Map;
import sheaf.desk.web.http.Refusal;
import sheaf.desk.web.http.Reply;
import sheaf.desk.web.http.Request;

/** Files that come with the program: styles and scripts. */
final class Resources {

  private static final Map<String, String> TYPES =
      Map.of(
          "desk.css", "text/css; charset=utf-8",
          "drop.js", "text/javascript; charset=utf-8",
          "doubts.js", "text/javascript; charset=utf-8",
          "sheet.js", "text/javascript; charset=utf-8",
          "mark.svg", "image/svg+xml");

  private static final int KEPT_SECONDS = 300;

  private Resources() {}

  /** A file by its name. */
  static Reply show(Request request) {
    return file(request.part("name"));
  }

  /** The style of record pages, which lies beside them. */
  static Reply recordStyle(Request request) {
    return file("desk.css");
  }

  private static Reply file(String name) {
    String type = TYPES.get(name);
    if (type == null) {
      throw Refusal.notFound("There is no such file.");
    }
    return new Reply(200, type, content(name), Map.of()).keptFor(KEPT_SECONDS);
  }

  /** A file's content. */
  static byte[] content(String name) {
    try (InputStream file = Resources.class.getResourceAsStream("files/" + name)) {
      return file.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Nothing of this is for search engines. */
  static Reply robots(Request request) {
    return Reply.text("User-agent: *\nDisallow: /\n");
  }
}
