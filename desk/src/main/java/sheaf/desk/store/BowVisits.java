package sheaf.desk.store;

import java.time.LocalDate;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import sheaf.core.job.JobId;
import sheaf.core.record.BowRecord;
import sheaf.core.record.Visit;

/**
 * A bow over all its visits that are known to belong together: by return cards that were printed
 * from an earlier job, by what was told later, and by records that hold several.
 *
 * @param last the record of the visit that came last
 * @param visits the earliest first
 */
public record BowVisits(BowRecord last, List<Visit> visits) {

  /** Copies the list. */
  public BowVisits {
    visits = List.copyOf(visits);
  }

  /**
   * Gathers them.
   *
   * @param job any visit's
   * @param store that knows it
   * @param known the job, as it was looked up
   */
  public static BowVisits of(JobId job, Store store, StoredJob known) {
    Map<JobId, Visit> visits = new LinkedHashMap<>();
    BowRecord last = known.record();
    for (JobId one : connected(first(job, store), store)) {
      BowRecord record = store.job(one).map(StoredJob::record).orElse(null);
      if (record != null) {
        record.visits().forEach(visit -> visits.put(visit.job(), visit));
        last = record;
      }
    }
    List<Visit> inOrder = new ArrayList<>(visits.values());
    // Visits without a day keep their place.
    if (inOrder.stream().allMatch(visit -> visit.day().isPresent())) {
      inOrder.sort(Comparator.comparing(visit -> visit.day().orElse(LocalDate.MIN)));
    }
    return new BowVisits(last, inOrder);
  }

  private static JobId first(JobId job, Store store) {
    Set<JobId> seen = new LinkedHashSet<>();
    JobId first = job;
    while (seen.add(first)) {
      first = store.before(first).filter(earlier -> !seen.contains(earlier)).orElse(first);
    }
    return first;
  }

  private static Set<JobId> connected(JobId first, Store store) {
    Set<JobId> all = new LinkedHashSet<>();
    Deque<JobId> coming = new ArrayDeque<>(List.of(first));
    while (!coming.isEmpty()) {
      JobId one = coming.remove();
      if (all.add(one)) {
        coming.addAll(store.after(one));
      }
    }
    return all;
  }
}
