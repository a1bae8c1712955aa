package sheaf.desk.web;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sheaf.core.job.JobId;
import sheaf.desk.web.http.Reply;
import sheaf.desk.web.http.Request;

/** Finds jobs by what is known of them. */
final class FindPage {

  private static final int MOST = 100;
  private static final int MOST_WORDS = 8;

  private final Look look;
  private final Stores stores;

  FindPage(Look look, Stores stores) {
    this.look = look;
    this.stores = stores;
  }

  Reply show(Request request) {
    String typed = request.query().find("q").orElse("");
    Optional<JobId> whole = JobId.parse(typed);
    if (whole.isPresent()) {
      return Reply.seeOther("/job/" + whole.get().spoken());
    }
    List<String> words =
        Arrays.stream(typed.split("\\s+"))
            .filter(word -> !word.isEmpty())
            .limit(MOST_WORDS)
            .toList();
    return stores.with(
        store ->
            look.page(
                request,
                "find",
                "Find",
                "/find",
                Map.of("typed", typed, "jobs", store.find(words, false, MOST))));
  }
}
