package sheaf.desk.work;

import java.util.List;
import java.util.Optional;
import sheaf.core.job.JobId;
import sheaf.core.record.BowRecord;
import sheaf.core.record.Visit;
import sheaf.core.tune.BowSetup;
import sheaf.core.tune.Plan;
import sheaf.core.tune.Planner;
import sheaf.core.tune.ShopPrior;
import sheaf.desk.store.Store;
import sheaf.desk.store.StoredJob;

/** What to move next on a bow, from its own sheets and from what the shop's earlier bows taught. */
public final class NextMove {

  /** More earlier jobs would teach little more, and take long to look through. */
  private static final int MOST_EARLIER = 200;

  private NextMove() {}

  /** The plan for a job. */
  public static Plan of(JobId job, StoredJob stored, Store store) {
    return of(job, BowSetup.of(stored.record(), Optional.empty()), stored, store);
  }

  /** The plan for a job on a bow of which more is known than its record says. */
  public static Plan of(JobId job, BowSetup setup, StoredJob stored, Store store) {
    return Planner.plan(stored.record().last(), setup, ShopPrior.of(earlier(job, setup, store)));
  }

  /** The last visits of other bows of the same kind. */
  private static List<Visit> earlier(JobId job, BowSetup setup, Store store) {
    return store.jobs(MOST_EARLIER).stream()
        .filter(other -> !other.equals(job))
        .flatMap(other -> store.job(other).stream())
        .map(StoredJob::record)
        .filter(record -> BowSetup.of(record, Optional.empty()).isLike(setup))
        .map(BowRecord::last)
        .toList();
  }
}
