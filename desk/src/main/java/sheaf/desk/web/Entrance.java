package sheaf.desk.web;

import java.util.Optional;
import sheaf.desk.web.http.AttemptLimit;
import sheaf.desk.web.http.Reply;
import sheaf.desk.web.http.Request;
import sheaf.desk.web.http.Visitors;

/** Where the passphrase is given, and who one is. */
final class Entrance {

  private static final int LONGEST = 200;

  private final Look look;
  private final Visitors visitors;
  private final AttemptLimit attempts;

  Entrance(Look look, Visitors visitors, AttemptLimit attempts) {
    this.look = look;
    this.visitors = visitors;
    this.attempts = attempts;
  }

  Reply enter(Request request) {
    attempts.check(request.address());
    String typed = request.form().get("passphrase");
    Optional<String> cookie = typed.length() > LONGEST ? Optional.empty() : visitors.enter(typed);
    if (cookie.isEmpty()) {
      attempts.failed(request.address());
      return look.entrance(request, 403, "That is not the passphrase.");
    }
    return Reply.seeOther("/").with("Set-Cookie", cookie.get());
  }

  Reply leave(Request request) {
    visitors.leave(request.visitor());
    return Reply.seeOther("/");
  }

  /** Keeps somebody's initials in a cookie. */
  Reply who(Request request) {
    String back = request.form().find("back").filter(path -> path.matches("/[\\w/-]*")).orElse("/");
    return Reply.seeOther(back)
        .with("Set-Cookie", Visitors.keepInitials(request.form().get("initials")));
  }
}
