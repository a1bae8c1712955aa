package sheaf.desk.web;

import static java.nio.charset.StandardCharsets.UTF_8;

import gg.jte.ContentType;
import gg.jte.TemplateEngine;
import gg.jte.output.StringOutput;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import sheaf.desk.profile.ShopProfile;
import sheaf.desk.web.http.Reply;
import sheaf.desk.web.http.Request;
import sheaf.desk.web.http.WebServer.Faces;
import sheaf.desk.web.view.View;

/** Writes pages with the templates, which escape whatever they are told. */
final class Look implements Faces {

  private static final String TEMPLATES = "sheaf.desk.web.jte";

  private final TemplateEngine engine =
      TemplateEngine.createPrecompiled(null, ContentType.Html, null, TEMPLATES);
  private final Supplier<ShopProfile> profile;
  private final boolean guarded;

  /**
   * Pages of a shop.
   *
   * @param guarded whether a passphrase is asked for
   */
  Look(Supplier<ShopProfile> profile, boolean guarded) {
    this.profile = profile;
    this.guarded = guarded;
  }

  /** A template's text. */
  String text(String template, Map<String, Object> told) {
    StringOutput out = new StringOutput();
    engine.render(template + ".jte", told, out);
    return out.toString();
  }

  /** What stands around a page. */
  View view(Request request, String title, String section) {
    return new View(
        title,
        section,
        request.visitor().token(),
        request.visitor().initials(),
        profile.get().shop().name().orElse(""),
        guarded);
  }

  /** A page of the desk. */
  Reply page(Request request, String template, String title, String section, Map<String, ?> told) {
    return page(200, view(request, title, section), template, told);
  }

  private Reply page(int status, View view, String template, Map<String, ?> told) {
    Map<String, Object> all = new HashMap<>(told);
    all.put("view", view);
    return Reply.html(status, text(template, all));
  }

  /** A part of a page, for the page's own script. */
  Reply part(String template, Map<String, Object> told) {
    return Reply.html(200, text(template, told));
  }

  @Override
  public Reply refusal(Optional<Request> request, int status, String sentence) {
    if (request.filter(Request::byScript).isPresent()) {
      return new Reply(status, "text/plain; charset=utf-8", sentence.getBytes(UTF_8), Map.of());
    }
    boolean inside = request.filter(asked -> asked.visitor().mayEnter()).isPresent();
    return Reply.html(
        status, text("problem", Map.of("status", status, "sentence", sentence, "inside", inside)));
  }

  @Override
  public Reply entrance(Request request) {
    if (request.byScript()) {
      return refusal(Optional.of(request), 401, "Give the passphrase again: open the desk anew.");
    }
    return entrance(request, 401, "");
  }

  /** Where the passphrase is asked for, with what was wrong before; empty for nothing. */
  Reply entrance(Request request, int status, String wrong) {
    return page(status, view(request, "Enter", ""), "enter", Map.of("wrong", wrong));
  }
}
