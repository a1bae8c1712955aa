package sheaf.desk.cli;

import java.time.Clock;
import java.util.Optional;
import sheaf.core.job.JobId;
import sheaf.core.job.RecordKey;
import sheaf.core.result.JobSummary;
import sheaf.desk.home.HomeFolder;
import sheaf.desk.outcome.Trouble;
import sheaf.desk.store.Store;

/**
 * A job as the store knows it.
 *
 * @param summary what its papers say
 * @param key opens its record: a secret
 */
record StoredJob(JobSummary summary, RecordKey key) {

  /**
   * Looks a job up.
   *
   * @throws Trouble a misuse when no sheet of it has been read
   */
  static StoredJob find(JobId job, HomeFolder home, Clock clock) {
    Optional<Store> existing = Store.openExisting(home, clock);
    if (existing.isEmpty()) {
      throw unknown(job);
    }
    try (Store store = existing.get()) {
      RecordKey key = store.recordKey(job).orElseThrow(() -> unknown(job));
      return new StoredJob(JobSummary.of(job, store.readings(job)), key);
    }
  }

  private static Trouble unknown(JobId job) {
    return Trouble.misuse(
        "Job " + job + " is not known: none of its sheets has been read with 'sheaf read'.");
  }
}
