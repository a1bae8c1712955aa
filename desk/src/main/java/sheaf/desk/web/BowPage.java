package sheaf.desk.web;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import sheaf.core.job.JobId;
import sheaf.core.page.MmRect;
import sheaf.core.picture.DriftPicture;
import sheaf.core.picture.Picture;
import sheaf.core.record.Drifted;
import sheaf.core.record.Visit;
import sheaf.core.result.Verdict;
import sheaf.desk.store.BowVisits;
import sheaf.desk.web.http.Refusal;
import sheaf.desk.web.http.Reply;
import sheaf.desk.web.http.Request;
import sheaf.desk.web.view.VisitRow;

/** A bow over its visits, and what moved in between. */
final class BowPage {

  private static final MmRect PLOT = new MmRect(0, 0, 90, 60);

  private final Works works;
  private final Look look;
  private final Stores stores;

  BowPage(Works works, Look look, Stores stores) {
    this.works = works;
    this.look = look;
    this.stores = stores;
  }

  Reply show(Request request) {
    JobId job = Jobs.id(request);
    return stores.with(
        store -> {
          BowVisits bow = BowVisits.of(job, store, Jobs.known(job, store));
          Map<String, Object> told = new HashMap<>();
          told.put("job", job.spoken());
          told.put("bow", bow.last().bow());
          told.put("visits", rows(bow.visits()));
          return look.page(request, "bow", "The bow of job " + job.spoken(), "", told);
        });
  }

  private List<VisitRow> rows(List<Visit> visits) {
    Map<String, Drifted.Tolerance> tolerances = works.profile().get().driftTolerances();
    List<VisitRow> rows = new ArrayList<>();
    for (int i = 0; i < visits.size(); i++) {
      Visit visit = visits.get(i);
      List<Drifted> drifted =
          i == 0 ? List.of() : Drifted.between(visits.get(i - 1), visit, tolerances);
      Optional<Picture> plot =
          drifted.isEmpty()
              ? Optional.empty()
              : Optional.of(DriftPicture.of(drifted, tolerances, PLOT));
      rows.add(
          new VisitRow(
              visit.job().spoken(),
              visit.day(),
              visit.pairAsLeft().map(Verdict::of).orElse(""),
              i > 0,
              drifted,
              plot));
    }
    return rows;
  }

  /** Notes that the bow was here before. */
  Reply link(Request request) {
    JobId job = Jobs.id(request);
    JobId earlier = Jobs.id(request.form().get("earlier"));
    if (earlier.equals(job)) {
      throw new Refusal(400, "A visit cannot come after itself: type the id of another job.");
    }
    return stores.with(
        store -> {
          Jobs.known(job, store);
          Jobs.known(earlier, store);
          if (!store.before(job).equals(Optional.of(earlier))) {
            store.visits(job, Optional.of(earlier), works.program());
          }
          return Reply.seeOther("/bow/" + job.spoken());
        });
  }
}
