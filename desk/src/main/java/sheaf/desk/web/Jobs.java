package sheaf.desk.web;

import java.util.List;
import java.util.Optional;
import sheaf.core.job.JobId;
import sheaf.core.result.Overview;
import sheaf.desk.store.Store;
import sheaf.desk.store.StoredJob;
import sheaf.desk.web.http.Refusal;
import sheaf.desk.web.http.Request;

/** Jobs that requests name. */
final class Jobs {

  private Jobs() {}

  /** The job in a part of the path. */
  static JobId id(Request request) {
    return id(request.part("job"));
  }

  /** A job as somebody typed or followed it. */
  static JobId id(String typed) {
    return JobId.parse(typed)
        .orElseThrow(
            () ->
                Refusal.notFound(
                    "That is no job id. It stands on each paper, such as 7G4KQ-2M8XE-0."));
  }

  /** A job that is known. */
  static StoredJob known(JobId job, Store store) {
    return store
        .job(job)
        .orElseThrow(
            () ->
                Refusal.notFound(
                    "Nothing of job %s has been read yet: drop its papers first.".formatted(job)));
  }

  /** A job at a glance. */
  static Optional<Overview> overview(JobId job, Store store) {
    return store.find(List.of(job.text()), false, 1).stream().findFirst();
  }
}
